package org.potlife.account.internal;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages of accounts. */
@CheckedTemplate(basePath = "account")
final class AccountTemplates {

  private AccountTemplates() {}

  static native TemplateInstance signin(String name, String to, String fault, boolean none);

  static native TemplateInstance setup(String secret, AccountForm form, FormFaults faults);

  static native TemplateInstance notice(String title, String text);

  static native TemplateInstance notallowed(String text);

  static native TemplateInstance password(Account account, FormFaults faults);

  static native TemplateInstance accounts(
      List<Account> accounts, AccountForm form, FormFaults faults);

  static native TemplateInstance account(Account account, AccountForm form, FormFaults faults);

  static native TemplateInstance newpassword(Account account, String password);

  static native TemplateInstance tokens(
      List<AccessToken> tokens, List<String> plants, TokenForm form, FormFaults faults);

  static native TemplateInstance tokenmade(AccessToken token, String secret);

  static native TemplateInstance trail(
      List<TrailEntry> entries, String plant, String who, Long older);
}
