package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.floor.Floor;
import org.potlife.floor.FloorReport;
import org.potlife.order.Order;
import org.potlife.order.Orders;
import org.potlife.plan.PlanBasis;
import org.potlife.planning.PlanRequest;
import org.potlife.platform.problem.ProblemException;
import org.potlife.room.InkBook;
import org.potlife.room.RoomState;
import org.potlife.room.Rooms;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** What a plan would be made from at this moment. */
@ApplicationScoped
class PlantNow {

  /** So long the garments and screens of a finished order may still be about. */
  private static final Duration FINISHED_KEPT = Duration.ofHours(24);

  private final PlanRows rows;
  private final PlanMapping mapping;
  private final Shops shops;
  private final Orders orders;
  private final Rooms rooms;
  private final InkBook ink;
  private final Floor floor;
  private final InstructionBook instructions;
  private final Clock clock;

  @Inject
  PlantNow(
      PlanRows rows,
      PlanMapping mapping,
      Shops shops,
      Orders orders,
      Rooms rooms,
      InkBook ink,
      Floor floor,
      InstructionBook instructions,
      Clock clock) {
    this.rows = rows;
    this.mapping = mapping;
    this.shops = shops;
    this.orders = orders;
    this.rooms = rooms;
    this.ink = ink;
    this.floor = floor;
    this.instructions = instructions;
    this.clock = clock;
  }

  /**
   * A plant at one moment.
   *
   * @param dataStamp stamp of the plant's data
   * @param published the plan in force
   * @param stale whether it knows less than this
   */
  record Stand(
      long dataStamp,
      Instant plannedAt,
      PlanBasis basis,
      Optional<PlanSheet> published,
      boolean stale) {

    /** The request for a plan from this. */
    PlanRequest request(LocalDate day, int solveSeconds, long seed) {
      return new PlanRequest(
          basis.shop(),
          basis.orders(),
          day,
          plannedAt,
          published,
          solveSeconds,
          seed,
          basis.rooms(),
          basis.ink(),
          basis.floor(),
          basis.instructions());
    }

    LocalDate today() {
      return LocalDate.ofInstant(plannedAt, basis.shop().timeZone());
    }

    /** The day of another plan, or today when it is over. */
    LocalDate dayLike(PlanSheet other) {
      return other.day().isBefore(today()) ? today() : other.day();
    }
  }

  /**
   * Reads it.
   *
   * @throws ProblemException 404 when there is no such plant
   */
  @Transactional
  Stand read(String plant) {
    // the stamp before the orders: a change in between makes the plan stale, never unnoticed
    StoredShop shop = shops.getShop(plant);
    Optional<PlanEntity> published = rows.findPublished(plant);
    Instant plannedAt = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    RoomState reported = rooms.stateAt(plant, plannedAt);
    List<Order> toPlan = new ArrayList<>(orders.listOpen(plant));
    toPlan.addAll(orders.listFinishedSince(plant, plannedAt.minus(FINISHED_KEPT)));
    FloorReport told =
        floor.reportAt(plant, toPlan.stream().map(Order::reference).toList(), plannedAt);
    PlanBasis basis =
        new PlanBasis(
            told.standing(reported.standing(shop.shop())),
            toPlan,
            published.map(p -> p.id).orElse(null),
            reported,
            ink.reportAt(plant, plannedAt),
            told,
            instructions.get(plant).instructions());
    boolean stale = published.filter(p -> p.dataStamp != shop.dataStamp()).isPresent();
    return new Stand(shop.dataStamp(), plannedAt, basis, published.flatMap(mapping::sheet), stale);
  }
}
