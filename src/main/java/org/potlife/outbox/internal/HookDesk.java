package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.potlife.outbox.internal.Webhook.Key;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;

/** The plants' webhooks as their owners see them. */
@ApplicationScoped
class HookDesk {

  /** Each one costs a request per event. */
  private static final int MOST_PER_PLANT = 50;

  private final EntityManager entities;
  private final OutboxReader outbox;
  private final HookJobs jobs;

  @Inject
  HookDesk(EntityManager entities, OutboxReader outbox, HookJobs jobs) {
    this.entities = entities;
    this.outbox = outbox;
    this.jobs = jobs;
  }

  /** Whether the hook is new, and what it is now. */
  record Put(boolean created, HookView hook) {}

  /**
   * Makes or changes a hook. A new one is told what happens from now on; a changed one goes on
   * where it was. Needs the plant's lock.
   *
   * @param allow sees the version that is there and may refuse
   */
  @Transactional(Transactional.TxType.MANDATORY)
  Put put(Key key, HookBody body, Consumer<OptionalLong> allow) {
    Webhook present = entities.find(Webhook.class, key, LockModeType.PESSIMISTIC_WRITE);
    allow.accept(present == null ? OptionalLong.empty() : OptionalLong.of(present.version));
    Webhook hook = present == null ? fresh(key, body) : present;
    hook.url = body.url();
    hook.types = String.join(",", body.wanted().names());
    if (body.secret() != null) {
      hook.secret = body.secret();
    }
    hook.version++;
    entities.persist(hook);
    entities.flush();
    jobs.serve(key);
    return new Put(present == null, view(hook));
  }

  private Webhook fresh(Key key, HookBody body) {
    if (body.secret() == null) {
      throw ProblemException.invalid(
          List.of(new FieldError("/secret", "must be given for a new webhook")));
    }
    if (count("select count(w) from Webhook w where w.key.plant = ?1", key.plant())
        >= MOST_PER_PLANT) {
      throw ProblemException.conflict(
          "The plant has " + MOST_PER_PLANT + " webhooks already. Remove one first.");
    }
    Webhook hook = new Webhook();
    hook.key = key;
    hook.position = outbox.kept(key.plant()).last();
    return hook;
  }

  @Transactional
  HookView get(Key key) {
    return view(find(key));
  }

  @Transactional
  List<HookView> list(String plant) {
    return entities
        .createQuery(
            "select w from Webhook w where w.key.plant = :plant order by w.key.name", Webhook.class)
        .setParameter("plant", plant)
        .getResultStream()
        .map(this::view)
        .toList();
  }

  /** Removes a hook with its dead letters. */
  @Transactional
  void remove(Key key) {
    find(key);
    // not by the entity: its worker may be moving it right now
    entities
        .createQuery("delete from Webhook w where w.key = :key")
        .setParameter("key", key)
        .executeUpdate();
  }

  @Transactional
  List<DeadLetter> listDeadLetters(Key key, int limit) {
    find(key);
    return entities
        .createQuery(
            "select d from DeadLetter d where d.key.plant = :plant and d.key.name = :name"
                + " order by d.key.seq",
            DeadLetter.class)
        .setParameter("plant", key.plant())
        .setParameter("name", key.name())
        .setMaxResults(limit)
        .getResultList();
  }

  /** Lets a dead letter be tried once more. */
  @Transactional
  DeadLetter redeliver(Key key, long seq) {
    find(key);
    DeadLetter letter =
        Optional.ofNullable(
                entities.find(
                    DeadLetter.class,
                    new DeadLetter.Key(key.plant(), key.name(), seq),
                    LockModeType.PESSIMISTIC_WRITE))
            .orElseThrow(
                () -> ProblemException.notFound("The webhook has no dead letter " + seq + "."));
    letter.redelivery = true;
    return letter;
  }

  private Webhook find(Key key) {
    return Optional.ofNullable(entities.find(Webhook.class, key))
        .orElseThrow(
            () -> ProblemException.notFound("The plant has no webhook of the name " + key.name()));
  }

  private HookView view(Webhook hook) {
    return new HookView(
        hook.key.name(),
        hook.url,
        EventTypes.parse(hook.types).names(),
        hook.version,
        hook.position,
        outbox.kept(hook.key.plant()).last() - hook.position,
        hook.tries,
        hook.lastFailure,
        hook.lastDeliveredAt,
        count(
            "select count(d) from DeadLetter d where d.key.plant = ?1 and d.key.name = ?2",
            hook.key.plant(),
            hook.key.name()));
  }

  private long count(String query, String... parameters) {
    var counting = entities.createQuery(query, Long.class);
    for (int i = 0; i < parameters.length; i++) {
      counting.setParameter(i + 1, parameters[i]);
    }
    return counting.getSingleResult();
  }
}
