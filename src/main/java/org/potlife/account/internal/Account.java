package org.potlife.account.internal;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.potlife.platform.access.Roles;

/**
 * Somebody who can sign in.
 *
 * @param name what is typed in to sign in, in lower case
 * @param fullName what people read
 * @param roles names of roles, without those that they bring along
 * @param active whether it can sign in
 * @param mustChange whether its password was set by somebody else and must be changed before all
 *     else
 */
public record Account(
    long id, String name, String fullName, Set<String> roles, boolean active, boolean mustChange) {

  public Account {
    roles = Set.copyOf(roles);
  }

  /** Whether it can make accounts. */
  boolean administers() {
    return active && roles.contains(Roles.ADMINISTRATOR);
  }

  public boolean has(String role) {
    return roles.contains(role);
  }

  /** A name as it is kept and compared. */
  static String plainName(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT);
  }

  static Set<String> words(String text) {
    return new TreeSet<>(Arrays.asList(text.split(" ")));
  }

  static String text(Collection<String> words) {
    return String.join(" ", new TreeSet<>(words));
  }
}
