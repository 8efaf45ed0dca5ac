package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.potlife.platform.problem.ProblemException;

/** Tokens of programs. */
@ApplicationScoped
class Tokens {

  private static final Duration NOTED_EVERY = Duration.ofMinutes(1);

  private final Clock clock;

  @Inject
  Tokens(Clock clock) {
    this.clock = clock;
  }

  /** A new token, which is shown this once. */
  record Made(AccessToken token, String secret) {}

  @Transactional
  List<AccessToken> list() {
    return TokenEntity.<TokenEntity>list("order by plant, name, madeAt desc").stream()
        .map(TokenEntity::value)
        .toList();
  }

  /**
   * @return empty when the plant has a valid token of this name already
   */
  @Transactional
  Optional<Made> create(String plant, String name, Set<String> roles, String madeBy) {
    if (TokenEntity.count("plant = ?1 and name = ?2 and revokedAt is null", plant, name) > 0) {
      return Optional.empty();
    }
    String secret = Secret.freshToken();
    TokenEntity token = new TokenEntity();
    token.kept = Secret.kept(secret);
    token.plant = plant;
    token.name = name;
    token.roles = Account.text(roles);
    token.madeBy = madeBy;
    token.madeAt = clock.instant();
    token.persist();
    return Optional.of(new Made(token.value(), secret));
  }

  /** The token whose secret this is, and notes its use. */
  @Transactional
  Optional<AccessToken> use(String secret) {
    Optional<TokenEntity> found =
        TokenEntity.find("kept = ?1 and revokedAt is null", Secret.kept(secret))
            .firstResultOptional();
    Instant now = clock.instant();
    found
        .filter(
            token -> token.lastUsedAt == null || now.isAfter(token.lastUsedAt.plus(NOTED_EVERY)))
        .ifPresent(token -> token.lastUsedAt = now);
    return found.map(TokenEntity::value);
  }

  /**
   * Ends a token. Doing so again changes nothing.
   *
   * @throws ProblemException 404
   */
  @Transactional
  AccessToken revoke(long id) {
    TokenEntity token = TokenEntity.findById(id, LockModeType.PESSIMISTIC_WRITE);
    if (token == null) {
      throw ProblemException.notFound("There is no such token.");
    }
    if (token.revokedAt == null) {
      token.revokedAt = clock.instant();
    }
    return token.value();
  }
}
