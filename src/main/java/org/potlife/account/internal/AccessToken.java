package org.potlife.account.internal;

import java.time.Instant;
import java.util.Set;

/**
 * A program's way in, for one plant. The token itself is shown once and not kept.
 *
 * @param name what people call the program
 * @param roles names of roles
 * @param lastUsedAt to the minute; null when it never was
 * @param revokedAt null while it is valid
 */
public record AccessToken(
    long id,
    String plant,
    String name,
    Set<String> roles,
    String madeBy,
    Instant madeAt,
    Instant lastUsedAt,
    Instant revokedAt) {

  public AccessToken {
    roles = Set.copyOf(roles);
  }
}
