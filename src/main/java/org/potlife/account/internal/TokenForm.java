package org.potlife.account.internal;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.potlife.platform.access.Role;

/** What was typed in of a token. */
public record TokenForm(String plant, String name, Set<String> roles) {

  private static final int LONGEST = 60;

  static TokenForm empty() {
    return new TokenForm("", "", Set.of());
  }

  static TokenForm of(String plant, String name, List<String> roles) {
    return new TokenForm(
        plant == null ? "" : plant,
        name == null ? "" : name.strip(),
        roles == null ? Set.of() : new TreeSet<>(roles));
  }

  public boolean has(String role) {
    return roles.contains(role);
  }

  FormFaults check(List<String> plants) {
    FormFaults faults = FormFaults.none();
    if (!plants.contains(plant)) {
      faults.add("plant", "must be one of those listed");
    }
    if (name.isEmpty()
        || name.length() > LONGEST
        || name.chars().anyMatch(Character::isISOControl)) {
      faults.add("name", "must have 1 to " + LONGEST + " characters");
    }
    Set<String> known = Role.ofTokens().stream().map(Role::word).collect(Collectors.toSet());
    if (roles.isEmpty() || !known.containsAll(roles)) {
      faults.add("roles", "must be one at least of those listed");
    }
    return faults;
  }
}
