package org.potlife.account.internal;

import io.quarkus.qute.TemplateExtension;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.potlife.platform.access.Role;

/** How times and names of roles are dressed for the pages of accounts. */
@TemplateExtension
final class AccountDress {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private AccountDress() {}

  /** To the minute, in UTC: people of several plants read these pages. */
  static String minute(Instant time) {
    return MINUTE.format(time);
  }

  /** Names of roles in a row. */
  static String inARow(Collection<String> words) {
    return String.join(", ", new TreeSet<>(words));
  }

  /** A value as a part of an address's query. */
  static String inQuery(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  /** The roles that a person can have. */
  @TemplateExtension(namespace = "roles")
  static List<Role> ofPeople() {
    return Role.ofPeople();
  }

  /** The roles that a token can have. */
  @TemplateExtension(namespace = "roles")
  static List<Role> ofTokens() {
    return Role.ofTokens();
  }
}
