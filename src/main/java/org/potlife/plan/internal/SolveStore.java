package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanState;
import org.potlife.plan.Stability;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shops;

/** What the solving job reads and writes, each step in one transaction. */
@ApplicationScoped
class SolveStore {

  /** A plan whose search ended the process this often is given up. */
  static final int MOST_ATTEMPTS = 5;

  private final EntityManager entities;
  private final PlanMapping mapping;
  private final PlantNow plants;
  private final Shops shops;
  private final PendingChanges pending;
  private final Event<PlanChange> changes;
  private final Clock clock;

  @Inject
  SolveStore(
      EntityManager entities,
      PlanMapping mapping,
      PlantNow plants,
      Shops shops,
      PendingChanges pending,
      Event<PlanChange> changes,
      Clock clock) {
    this.entities = entities;
    this.mapping = mapping;
    this.plants = plants;
    this.shops = shops;
    this.pending = pending;
    this.changes = changes;
    this.clock = clock;
  }

  /** A plan whose search begins. */
  record Begun(String id, PlanRequest request, PlanBasis basis) {}

  /** What the world wants of a running search. */
  record Wanted(boolean stop, boolean restart) {}

  /** The plant of a plan that is still to be solved. */
  @Transactional
  Optional<String> findPlantOfSolving(String id) {
    return findSolving(id, LockModeType.NONE).map(e -> e.plant);
  }

  /** Reads what the plan is made from; empty when there is nothing left to solve. */
  @Transactional
  Optional<Begun> begin(String id) {
    Optional<PlanEntity> found = findSolving(id, LockModeType.PESSIMISTIC_WRITE);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    PlanEntity e = found.get();
    if (e.attempts >= MOST_ATTEMPTS) {
      failed(e, "The search was begun " + e.attempts + " times and never came to its end.");
      return Optional.empty();
    }
    PlantNow.Stand stand = plants.read(e.plant);
    if (e.restartRequested && e.plannedAt != null) {
      e.restarts++;
    } else {
      e.attempts++;
    }
    e.restartRequested = false;
    e.dataStamp = stand.dataStamp();
    e.plannedAt = stand.plannedAt();
    e.basis = mapping.write(stand.basis());
    return Optional.of(new Begun(id, stand.request(e.day, e.solveSeconds, e.seed), stand.basis()));
  }

  /** Writes the curve so far down, and reads what is wanted of the search. */
  @Transactional
  Wanted noteProgress(String id, List<Progress> progress) {
    List<?> rows =
        entities
            .createNativeQuery(
                "update plan set progress = cast(:progress as jsonb) where id = :id"
                    + " and state = 'solving' returning stop_requested, restart_requested")
            .setParameter("progress", mapping.write(progress))
            .setParameter("id", id)
            .getResultList();
    if (rows.isEmpty()) {
      // the plan is gone, nobody waits for it
      return new Wanted(true, false);
    }
    Object[] row = (Object[]) rows.get(0);
    return new Wanted(Boolean.TRUE.equals(row[0]), Boolean.TRUE.equals(row[1]));
  }

  /**
   * Stores the plan that was found, unless its search is to begin anew.
   *
   * @param stability against the plan in force when it was begun; null without one
   * @return whether it is stored
   */
  @Transactional
  boolean finish(Begun begun, PlanSheet sheet, AuditReport audit, Stability stability) {
    Optional<PlanEntity> found = findSolving(begun.id(), LockModeType.PESSIMISTIC_WRITE);
    if (found.isEmpty()) {
      return true;
    }
    PlanEntity e = found.get();
    if (e.restartRequested && !e.stopRequested) {
      return false;
    }
    e.state = PlanState.DRAFT.word();
    e.finishedAt = clock.instant();
    e.sheet = mapping.write(sheet);
    e.score = mapping.write(sheet.score());
    e.audit = mapping.write(audit);
    e.auditPassed = audit.passed();
    e.stability = stability == null ? null : mapping.write(stability);
    e.decisionDue =
        DraftDecision.isDue(
            PlanOrigin.ofWord(e.origin),
            e.publishWhenSound,
            begun.basis().shop().settings().following());
    fire(e, PlanChange.Kind.DRAFTED);
    if (e.origin.equals(PlanOrigin.EVENTS.word()) && isStale(e)) {
      // what happened while it was solved is followed by a further plan
      pending.note(e.plant, e.finishedAt);
    }
    return true;
  }

  private boolean isStale(PlanEntity e) {
    return shops.findShop(e.plant).filter(shop -> shop.dataStamp() == e.dataStamp).isEmpty();
  }

  /** Leaves a draft that could not be decided on to the planner. */
  @Transactional
  void hold(String id, String reason) {
    Optional.ofNullable(entities.find(PlanEntity.class, id, LockModeType.PESSIMISTIC_WRITE))
        .filter(e -> e.decisionDue)
        .ifPresent(
            e -> {
              e.decisionDue = false;
              e.held = reason;
            });
  }

  /** Notes that no plan came out. */
  @Transactional
  void fail(String id, String cause) {
    findSolving(id, LockModeType.PESSIMISTIC_WRITE).ifPresent(e -> failed(e, cause));
  }

  private void failed(PlanEntity e, String cause) {
    e.state = PlanState.FAILED.word();
    e.finishedAt = clock.instant();
    e.failure = cause;
    fire(e, PlanChange.Kind.FAILED);
  }

  private void fire(PlanEntity e, PlanChange.Kind kind) {
    changes.fire(new PlanChange(e.plant, e.id, e.version, kind, e.finishedAt));
  }

  private Optional<PlanEntity> findSolving(String id, LockModeType lock) {
    return Optional.ofNullable(entities.find(PlanEntity.class, id, lock))
        .filter(e -> e.state.equals(PlanState.SOLVING.word()));
  }
}
