package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Who is signed in. In the database, so that every instance of the service knows it. */
@ApplicationScoped
class Sessions {

  /** Use is noted so often; an idle session ends so much later at most. */
  private static final Duration NOTED_EVERY = Duration.ofMinutes(1);

  private final Clock clock;
  private final SignInSettings settings;

  @Inject
  Sessions(Clock clock, SignInSettings settings) {
    this.clock = clock;
    this.settings = settings;
  }

  /**
   * Begins a session.
   *
   * @return the secret for the cookie
   */
  @Transactional
  String begin(long account) {
    Instant now = clock.instant();
    SessionEntity.delete(
        "begunAt < ?1 or lastUsedAt < ?2",
        now.minus(settings.longest()),
        now.minus(settings.idle()));
    String secret = Secret.fresh();
    SessionEntity session = new SessionEntity();
    session.kept = Secret.kept(secret);
    session.account = AccountEntity.findById(account);
    session.begunAt = now;
    session.lastUsedAt = now;
    session.persist();
    return secret;
  }

  /** The account whose session this is, and notes its use. */
  @Transactional
  Optional<Account> use(String secret) {
    SessionEntity session = SessionEntity.findById(Secret.kept(secret));
    if (session == null) {
      return Optional.empty();
    }
    Instant now = clock.instant();
    if (!session.account.active || !lasts(session.begunAt, session.lastUsedAt, now, settings)) {
      session.delete();
      return Optional.empty();
    }
    if (now.isAfter(session.lastUsedAt.plus(NOTED_EVERY))) {
      session.lastUsedAt = now;
    }
    return Optional.of(session.account.value());
  }

  /** Whether a session is still good at {@code now}. */
  static boolean lasts(Instant begun, Instant lastUsed, Instant now, SignInSettings settings) {
    return now.isBefore(begun.plus(settings.longest()))
        && now.isBefore(lastUsed.plus(settings.idle()));
  }

  @Transactional
  void end(String secret) {
    SessionEntity.deleteById(Secret.kept(secret));
  }

  /** Ends all sessions of an account: its password or its rights were changed. */
  @Transactional
  void endAll(long account) {
    SessionEntity.delete("account.id", account);
  }
}
