package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import org.potlife.order.Orders;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.planning.Instructions;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.planning.SolveWatch;
import org.potlife.platform.problem.ProblemException;
import org.potlife.room.InkBook;
import org.potlife.room.RoomState;
import org.potlife.room.Rooms;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** Tries instructions out: plans with them and without, and keeps nothing. */
@ApplicationScoped
class InstructionTrial {

  /** Search time of each of the two plans, seconds. */
  private static final int SECONDS = 1;

  /** Trials at once in this process; each needs a processor for some seconds. */
  private final Semaphore turns = new Semaphore(1);

  private final Shops shops;
  private final Orders orders;
  private final Plans plans;
  private final Rooms rooms;
  private final InkBook ink;
  private final InstructionBook book;
  private final Planner planner;
  private final Clock clock;

  @Inject
  InstructionTrial(
      Shops shops,
      Orders orders,
      Plans plans,
      Rooms rooms,
      InkBook ink,
      InstructionBook book,
      Planner planner,
      Clock clock) {
    this.shops = shops;
    this.orders = orders;
    this.plans = plans;
    this.rooms = rooms;
    this.ink = ink;
    this.book = book;
    this.planner = planner;
    this.clock = clock;
  }

  /**
   * What the instructions would do.
   *
   * @throws ProblemException 404 when there is no such plant, 409 while another trial runs
   */
  InstructionEffect effect(String plant, Instructions wanted) {
    if (!turns.tryAcquire()) {
      throw ProblemException.conflict("Another trial is running. Ask again in some seconds.");
    }
    try {
      PlanRequest present = request(plant);
      return InstructionEffect.of(
          planner.solve(present, SolveWatch.none()),
          planner.solve(present.under(wanted), SolveWatch.none()));
    } finally {
      turns.release();
    }
  }

  @Transactional
  PlanRequest request(String plant) {
    StoredShop shop = shops.getShop(plant);
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    RoomState reported = rooms.stateAt(plant, now);
    Optional<StoredPlan> inForce = plans.findCurrent(plant);
    LocalDate today = LocalDate.ofInstant(now, shop.shop().timeZone());
    LocalDate day =
        inForce
            .map(plan -> plan.summary().day())
            .filter(planned -> planned.isAfter(today))
            .orElse(today);
    return new PlanRequest(
        reported.standing(shop.shop()),
        orders.listOpen(plant),
        day,
        now,
        inForce.flatMap(StoredPlan::sheet),
        SECONDS,
        PlanWish.DEFAULT_SEED,
        reported,
        ink.reportAt(plant, now),
        book.get(plant).instructions());
  }
}
