package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.potlife.outbox.internal.Webhook.Key;

/**
 * The tables webhook and dead_letter, as the worker of a hook sees them. Every step names the
 * position from which it goes on: a worker that was taken for dead and lives on changes nothing.
 */
@ApplicationScoped
class Hooks {

  private final EntityManager entities;

  @Inject
  Hooks(EntityManager entities) {
    this.entities = entities;
  }

  /** The hook as it is now. */
  @Transactional
  Optional<Webhook> find(Key key) {
    return Optional.ofNullable(entities.find(Webhook.class, key));
  }

  @Transactional
  List<Key> listKeys() {
    return entities.createQuery("select w.key from Webhook w", Key.class).getResultList();
  }

  /** Hooks of a plant that are behind a number and whose next event has not failed yet. */
  @Transactional
  List<Key> listBehind(String plant) {
    List<?> names =
        entities
            .createNativeQuery(
                "select w.name from webhook w join outbox_head h on h.plant = w.plant"
                    + " where w.plant = :plant and w.tries = 0 and w.position < h.last_seq",
                String.class)
            .setParameter("plant", plant)
            .getResultList();
    return names.stream().map(name -> new Key(plant, name.toString())).toList();
  }

  /** The oldest dead letter of a hook that is to be tried again. */
  @Transactional
  Optional<DeadLetter> findDue(Key key) {
    return entities
        .createQuery(
            "select d from DeadLetter d where d.key.plant = :plant and d.key.name = :name"
                + " and d.redelivery order by d.key.seq",
            DeadLetter.class)
        .setParameter("plant", key.plant())
        .setParameter("name", key.name())
        .setMaxResults(1)
        .getResultStream()
        .findFirst();
  }

  /**
   * All up to a number is done.
   *
   * @param delivered when the last of it was delivered; null when it was only passed over
   * @return whether the hook still stood where the worker thought
   */
  @Transactional
  boolean advance(Key key, long from, long to, Instant delivered) {
    Optional<Webhook> hook = lock(key, from);
    hook.ifPresent(
        w -> {
          w.position = to;
          w.tries = 0;
          if (delivered != null) {
            w.lastDeliveredAt = delivered;
            w.lastFailure = null;
          }
        });
    return hook.isPresent();
  }

  /** The next event failed and will be tried again. */
  @Transactional
  boolean failed(Key key, long from, int tries, String failure) {
    Optional<Webhook> hook = lock(key, from);
    hook.ifPresent(
        w -> {
          w.tries = tries;
          w.lastFailure = failure;
        });
    return hook.isPresent();
  }

  private Optional<Webhook> lock(Key key, long from) {
    return Optional.ofNullable(entities.find(Webhook.class, key, LockModeType.PESSIMISTIC_WRITE))
        .filter(hook -> hook.position == from);
  }

  /** The next event is set aside, so that those behind it go on. */
  @Transactional
  boolean setAside(Key key, long from, OutboxEvent event, int tries, String failure, Instant now) {
    Optional<Webhook> hook = lock(key, from);
    if (hook.isEmpty()) {
      return false;
    }
    hook.get().position = event.seq();
    hook.get().tries = 0;
    hook.get().lastFailure = failure;
    DeadLetter letter = new DeadLetter();
    letter.key = new DeadLetter.Key(key.plant(), key.name(), event.seq());
    letter.type = event.type();
    letter.event = event.event();
    letter.tries = tries;
    letter.lastFailure = failure;
    letter.lastTryAt = now;
    entities.persist(letter);
    return true;
  }

  /** A dead letter was taken at last. */
  @Transactional
  void redelivered(DeadLetter.Key key) {
    Optional.ofNullable(entities.find(DeadLetter.class, key)).ifPresent(entities::remove);
  }

  /** A dead letter failed again and waits to be asked for again. */
  @Transactional
  void failedAgain(DeadLetter.Key key, String failure, Instant now) {
    DeadLetter letter = entities.find(DeadLetter.class, key);
    if (letter != null) {
      letter.tries++;
      letter.lastFailure = failure;
      letter.lastTryAt = now;
      letter.redelivery = false;
    }
  }

  /**
   * Removes events that are older than what is kept; those that a hook still has to get, and dead
   * letters, when they are older than what is kept for hooks.
   *
   * @param kept age in seconds
   * @param keptForHooks age in seconds
   * @return how many events
   */
  @Transactional
  int removeOlderThan(long kept, long keptForHooks) {
    entities
        .createNativeQuery(
            "delete from dead_letter where last_try_at < now() - :seconds * interval '1 second'")
        .setParameter("seconds", keptForHooks)
        .executeUpdate();
    return entities
        .createNativeQuery(
            "delete from outbox_event e where e.recorded_at < now() - :kept * interval '1 second'"
                + " and (e.seq <= coalesce((select min(w.position) from webhook w"
                + " where w.plant = e.plant), e.seq)"
                + " or e.recorded_at < now() - :hooks * interval '1 second')")
        .setParameter("kept", kept)
        .setParameter("hooks", keptForHooks)
        .executeUpdate();
  }
}
