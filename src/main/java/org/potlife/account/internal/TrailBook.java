package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The trail in the table trail_entry. */
@ApplicationScoped
class TrailBook {

  private static final Duration PRUNED_EVERY = Duration.ofHours(24);

  private static final String INSERT =
      "insert into trail_entry (id, at, who, kind, method, path, plant, about, status)"
          + " values (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, cast(?9 as int)) on conflict (id) ";

  private final EntityManager entities;
  private final Clock clock;
  private final Duration keep;
  private final AtomicReference<Instant> prunedAt = new AtomicReference<>(Instant.MIN);

  @Inject
  TrailBook(
      EntityManager entities,
      Clock clock,
      @ConfigProperty(name = "potlife.trail.keep", defaultValue = "P400D") Duration keep) {
    this.entities = entities;
    this.clock = clock;
    this.keep = keep;
  }

  /** What is asked of the trail; null leaves a condition out. */
  record Question(String plant, String who, Long before, int limit) {

    Question {
      plant = storable(plant);
      who = storable(who);
    }

    /** PostgreSQL knows no text with this sign, so nothing is found that has it. */
    private static String storable(String text) {
      return text == null ? null : text.replace('\0', '?');
    }
  }

  /** What is known of a write while it goes on. */
  record Begun(
      UUID id,
      Instant at,
      String who,
      String kind,
      String method,
      String path,
      String plant,
      String about) {}

  /** Writes the entry within the present transaction, so that no write is kept without it. */
  void begin(Begun write) {
    insert(write, "do nothing", null);
  }

  /** Adds what came of it; writes the entry where no transaction of the write has kept it. */
  @Transactional
  void complete(Begun write, int status) {
    insert(write, "do update set status = excluded.status", status);
    prune();
  }

  private void insert(Begun write, String onConflict, Integer status) {
    entities
        .createNativeQuery(INSERT + onConflict)
        .setParameter(1, write.id())
        .setParameter(2, write.at())
        .setParameter(3, write.who())
        .setParameter(4, write.kind())
        .setParameter(5, write.method())
        .setParameter(6, write.path())
        .setParameter(7, write.plant())
        .setParameter(8, write.about())
        .setParameter(9, status)
        .executeUpdate();
  }

  private void prune() {
    Instant now = clock.instant();
    Instant last = prunedAt.get();
    boolean due = last == Instant.MIN || now.isAfter(last.plus(PRUNED_EVERY));
    if (due && prunedAt.compareAndSet(last, now)) {
      entities
          .createNativeQuery("delete from trail_entry where at < ?1")
          .setParameter(1, now.minus(keep))
          .executeUpdate();
    }
  }

  /** The newest entries first. */
  @Transactional
  List<TrailEntry> list(Question asked) {
    List<?> rows =
        entities
            .createNativeQuery(
                "select seq, at, who, kind, method, path, plant, about, status from trail_entry"
                    + " where (cast(?1 as text) is null or plant = ?1)"
                    + " and (cast(?2 as text) is null or who = ?2)"
                    + " and (cast(?3 as bigint) is null or seq < ?3) order by seq desc limit ?4",
                Object[].class)
            .setParameter(1, asked.plant())
            .setParameter(2, asked.who())
            .setParameter(3, asked.before())
            .setParameter(4, asked.limit())
            .getResultList();
    return rows.stream().map(row -> entry((Object[]) row)).toList();
  }

  private static TrailEntry entry(Object[] row) {
    return new TrailEntry(
        ((Number) row[0]).longValue(),
        (Instant) row[1],
        (String) row[2],
        (String) row[3],
        (String) row[4],
        (String) row[5],
        (String) row[6],
        (String) row[7],
        row[8] == null ? null : ((Number) row[8]).intValue());
  }
}
