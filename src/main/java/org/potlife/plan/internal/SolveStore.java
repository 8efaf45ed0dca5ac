package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.order.Orders;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanState;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.room.InkBook;
import org.potlife.room.RoomState;
import org.potlife.room.Rooms;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** What the solving job reads and writes, each step in one transaction. */
@ApplicationScoped
class SolveStore {

  /** A plan whose search ended the process this often is given up. */
  static final int MOST_ATTEMPTS = 5;

  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Shops shops;
  private final Orders orders;
  private final Rooms rooms;
  private final InkBook ink;
  private final InstructionBook instructions;
  private final Event<PlanChange> changes;
  private final Clock clock;

  @Inject
  SolveStore(
      EntityManager entities,
      PlanMapping mapping,
      Shops shops,
      Orders orders,
      Rooms rooms,
      InkBook ink,
      InstructionBook instructions,
      Event<PlanChange> changes,
      Clock clock) {
    this.entities = entities;
    this.mapping = mapping;
    this.shops = shops;
    this.orders = orders;
    this.rooms = rooms;
    this.ink = ink;
    this.instructions = instructions;
    this.changes = changes;
    this.clock = clock;
  }

  /** A plan whose search begins. */
  record Begun(PlanRequest request, PlanBasis basis, boolean publishWhenSound) {}

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
    // the stamp before the orders: a change in between makes the plan stale, never unnoticed
    StoredShop shop = shops.getShop(e.plant);
    Optional<PlanEntity> published = findPublished(e.plant);
    Instant plannedAt = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    RoomState reported = rooms.stateAt(e.plant, plannedAt);
    PlanBasis basis =
        new PlanBasis(
            reported.standing(shop.shop()),
            orders.listOpen(e.plant),
            published.map(p -> p.id).orElse(null),
            reported,
            ink.reportAt(e.plant, plannedAt),
            instructions.get(e.plant).instructions());
    e.attempts++;
    e.dataStamp = shop.dataStamp();
    e.plannedAt = plannedAt;
    e.basis = mapping.write(basis);
    PlanRequest request =
        new PlanRequest(
            basis.shop(),
            basis.orders(),
            e.day,
            plannedAt,
            published.flatMap(mapping::sheet),
            e.solveSeconds,
            e.seed,
            basis.rooms(),
            basis.ink(),
            basis.instructions());
    return Optional.of(new Begun(request, basis, e.publishWhenSound));
  }

  /**
   * Writes the curve so far down.
   *
   * @return whether the search is to stop
   */
  @Transactional
  boolean noteProgress(String id, List<Progress> progress) {
    List<?> stop =
        entities
            .createNativeQuery(
                "update plan set progress = cast(:progress as jsonb)"
                    + " where id = :id and state = 'solving' returning stop_requested")
            .setParameter("progress", mapping.write(progress))
            .setParameter("id", id)
            .getResultList();
    // no row: the plan is gone, nobody waits for it
    return stop.isEmpty() || Boolean.TRUE.equals(stop.get(0));
  }

  /** Stores the plan that was found. */
  @Transactional
  void finish(String id, PlanSheet sheet, AuditReport audit) {
    findSolving(id, LockModeType.PESSIMISTIC_WRITE)
        .ifPresent(
            e -> {
              e.state = PlanState.DRAFT.word();
              e.finishedAt = clock.instant();
              e.sheet = mapping.write(sheet);
              e.score = mapping.write(sheet.score());
              e.audit = mapping.write(audit);
              e.auditPassed = audit.passed();
              fire(e, PlanChange.Kind.DRAFTED);
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

  private Optional<PlanEntity> findPublished(String plant) {
    return entities
        .createQuery(
            "select p from PlanEntity p where p.plant = :plant and p.state = 'published'",
            PlanEntity.class)
        .setParameter("plant", plant)
        .getResultStream()
        .findFirst();
  }
}
