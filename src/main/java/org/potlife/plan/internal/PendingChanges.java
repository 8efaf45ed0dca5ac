package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.potlife.shop.PlantChanged;

/**
 * Changes of plants that no plan has been asked for yet: one row per plant, written in the
 * transaction of the change, and a job that looks after it. Whoever asks for the plan removes the
 * row in the same transaction; the next change writes a new one with a job of its own. So no change
 * is forgotten, whichever instance ends when.
 */
@ApplicationScoped
class PendingChanges {

  private final EntityManager entities;
  private final Instance<SolveJobs> jobs;

  @Inject
  PendingChanges(EntityManager entities, Instance<SolveJobs> jobs) {
    this.entities = entities;
    this.jobs = jobs;
  }

  /**
   * What is pending of a plant.
   *
   * @param firstAt when the first change was stored
   * @param lastAt when the last one was
   */
  record Pending(String plant, Instant firstAt, Instant lastAt) {}

  void changed(@Observes PlantChanged change) {
    note(change.plant(), change.at());
  }

  /** Notes a change, if a plan is in force that it could concern. */
  void note(String plant, Instant at) {
    String task = UUID.randomUUID().toString();
    List<?> looksAfterIt =
        entities
            .createNativeQuery(
                "insert into plan_pending (plant, task, first_at, last_at)"
                    + " select :plant, :task, :at, :at where exists"
                    + " (select 1 from plan where plant = :plant and state = 'published')"
                    + " on conflict (plant) do update"
                    + " set last_at = greatest(plan_pending.last_at, excluded.last_at)"
                    + " returning task")
            .setParameter("plant", plant)
            .setParameter("task", task)
            .setParameter("at", at)
            .getResultList();
    if (looksAfterIt.contains(task)) {
      jobs.get().scheduleFollowing(task);
    }
  }

  /** What the job with this name looks after; empty when that is done. */
  Optional<Pending> find(String task) {
    List<?> rows =
        entities
            .createNativeQuery(
                "select plant, first_at, last_at from plan_pending where task = :task")
            .setParameter("task", task)
            .getResultList();
    return rows.stream().<Pending>map(PendingChanges::pending).findFirst();
  }

  private static Pending pending(Object row) {
    Object[] columns = (Object[]) row;
    return new Pending((String) columns[0], (Instant) columns[1], (Instant) columns[2]);
  }

  /** A plan is asked for, or none is needed. */
  void done(String plant) {
    entities
        .createNativeQuery("delete from plan_pending where plant = :plant")
        .setParameter("plant", plant)
        .executeUpdate();
  }
}
