package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Failures to sign in, in a row. An attempt is booked as a failure before the password is looked
 * at, so that many at once gain nothing.
 */
@ApplicationScoped
class Failures {

  private static final Duration KEPT = Duration.ofDays(2);

  private final EntityManager entities;
  private final Clock clock;

  @Inject
  Failures(EntityManager entities, Clock clock) {
    this.entities = entities;
    this.clock = clock;
  }

  /**
   * Books an attempt.
   *
   * @return how long is to be waited before the next; zero when this one is booked and may go on
   */
  @Transactional
  Duration book(Counted attempt) {
    Instant now = clock.instant();
    forgetOld(now);
    Duration wait = Duration.ZERO;
    // in the order of their keys: two attempts never wait for each other in a circle
    for (var rule : attempt.rules().entrySet()) {
      Duration left = left(rule.getKey(), rule.getValue(), now);
      wait = left.compareTo(wait) > 0 ? left : wait;
    }
    if (wait.isZero()) {
      attempt.rules().forEach((key, rule) -> count(key, rule, now));
    }
    return wait;
  }

  /** Takes the attempt back: the password was right. Others' failures stay counted. */
  @Transactional
  void succeed(Counted attempt) {
    attempt.rules().forEach(this::succeed);
  }

  private void succeed(String key, LockOut rule) {
    String sql =
        rule.equals(LockOut.OF_ADDRESS)
            ? "update sign_in_failure set failures = greatest(failures - 1, 0) where kept = ?1"
            : "delete from sign_in_failure where kept = ?1";
    entities.createNativeQuery(sql).setParameter(1, key).executeUpdate();
  }

  /** Forgets all failures of an account. */
  @Transactional
  void forget(String name) {
    entities
        .createNativeQuery("delete from sign_in_failure where kept like ?1")
        .setParameter(1, Counted.accountKey(name) + "%")
        .executeUpdate();
  }

  private Duration left(String key, LockOut rule, Instant now) {
    entities
        .createNativeQuery(
            "insert into sign_in_failure (kept, failures, last_at) values (?1, 0, ?2)"
                + " on conflict (kept) do update set kept = excluded.kept")
        .setParameter(1, key)
        .setParameter(2, now)
        .executeUpdate();
    Row row = row(key);
    return rule.left(row.failures(), row.last(), now);
  }

  private void count(String key, LockOut rule, Instant now) {
    Row row = row(key);
    entities
        .createNativeQuery("update sign_in_failure set failures = ?2, last_at = ?3 where kept = ?1")
        .setParameter(1, key)
        .setParameter(2, rule.counting(row.failures(), row.last(), now) + 1)
        .setParameter(3, now)
        .executeUpdate();
  }

  private record Row(int failures, Instant last) {}

  private Row row(String key) {
    List<?> rows =
        entities
            .createNativeQuery(
                "select failures, last_at from sign_in_failure where kept = ?1 for update",
                Object[].class)
            .setParameter(1, key)
            .getResultList();
    Object[] row = (Object[]) rows.get(0);
    return new Row(((Number) row[0]).intValue(), (Instant) row[1]);
  }

  private void forgetOld(Instant now) {
    entities
        .createNativeQuery(
            // only a sender's too many failures are kept, and these have the longer keys
            "delete from sign_in_failure where last_at < ?1 and (length(kept) = 64 or failures < "
                + LockOut.MOST_IN_A_ROW
                + ")")
        .setParameter(1, now.minus(KEPT))
        .executeUpdate();
  }
}
