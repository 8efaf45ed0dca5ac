package org.potlife.account.internal;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.potlife.platform.access.Role;

/**
 * What was typed in of an account.
 *
 * @param name what is typed in to sign in
 * @param fullName what people read
 * @param roles names of roles
 */
public record AccountForm(String name, String fullName, Set<String> roles) {

  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._@-]{1,59}");
  private static final int LONGEST = 80;

  static AccountForm empty() {
    return new AccountForm("", "", Set.of());
  }

  static AccountForm of(String name, String fullName, List<String> roles) {
    return new AccountForm(
        name == null ? "" : Account.plainName(name),
        fullName == null ? "" : fullName.strip(),
        roles == null ? Set.of() : new TreeSet<>(roles));
  }

  static AccountForm of(Account account) {
    return new AccountForm(account.name(), account.fullName(), account.roles());
  }

  public boolean has(String role) {
    return roles.contains(role);
  }

  FormFaults check() {
    FormFaults faults = FormFaults.none();
    checkName(faults);
    checkRest(faults);
    return faults;
  }

  void checkName(FormFaults faults) {
    if (!NAME.matcher(name).matches()) {
      faults.add(
          "name", "must have 2 to 60 letters a to z, digits, dots, dashes or @, without spaces");
    }
  }

  void checkFullName(FormFaults faults) {
    if (fullName.isEmpty()
        || fullName.length() > LONGEST
        || fullName.chars().anyMatch(Character::isISOControl)) {
      faults.add("fullName", "must have 1 to " + LONGEST + " characters");
    }
  }

  void checkRest(FormFaults faults) {
    checkFullName(faults);
    Set<String> known = Role.ofPeople().stream().map(Role::word).collect(Collectors.toSet());
    if (roles.isEmpty() || !known.containsAll(roles)) {
      faults.add("roles", "must be one at least of those listed");
    }
  }
}
