package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What one rule looked at and found. */
final class Notes {

  private final String rule;
  private final List<Finding> findings = new ArrayList<>();
  private int checked;

  Notes(String rule) {
    this.rule = rule;
  }

  /**
   * Counts one checked fact and notes a finding when it does not hold.
   *
   * @param detail format of the message; the arguments are only turned into text when needed
   * @return whether it holds
   */
  boolean check(boolean holds, String subject, String detail, Object... arguments) {
    checked++;
    if (!holds) {
      findings.add(
          new Finding(
              rule,
              subject == null ? "plan" : subject,
              String.format(Locale.ROOT, detail, arguments)));
    }
    return holds;
  }

  RuleResult result(String title) {
    return new RuleResult(rule, title, checked, findings);
  }
}
