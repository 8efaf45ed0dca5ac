package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;

/**
 * What a plan is made from.
 *
 * @param shop the plant's set-up
 * @param orders all open orders
 * @param day local day from whose start presses may work
 * @param plannedAt the present moment; no work is planned before it
 * @param published the plan in force, whose frozen runs are taken over
 * @param solveSeconds search time after the first plan, seconds
 * @param seed seed of the search
 * @param rooms what the rooms have reported up to the present moment
 * @param ink what the ink room has told up to the present moment
 * @param floor what the press crew has told up to the present moment
 * @param instructions what the planner has decided himself
 */
public record PlanRequest(
    Shop shop,
    List<Order> orders,
    LocalDate day,
    Instant plannedAt,
    Optional<PlanSheet> published,
    int solveSeconds,
    long seed,
    RoomState rooms,
    InkReport ink,
    FloorReport floor,
    Instructions instructions) {

  public PlanRequest {
    orders = List.copyOf(orders);
    instructions = instructions == null ? Instructions.NONE : instructions;
  }

  /** What has its set-up before this stays where it is (R22). */
  Instant frozenUntil() {
    return plannedAt.plusSeconds(60L * shop.settings().freezeMinutes());
  }

  /** The same request from another plan in force. */
  PlanRequest from(PlanSheet other) {
    return new PlanRequest(
        shop,
        orders,
        day,
        plannedAt,
        Optional.of(other),
        solveSeconds,
        seed,
        rooms,
        ink,
        floor,
        instructions);
  }

  /** Of a plant whose press crew has told nothing and whose planner has decided nothing himself. */
  public PlanRequest(
      Shop shop,
      List<Order> orders,
      LocalDate day,
      Instant plannedAt,
      Optional<PlanSheet> published,
      int solveSeconds,
      long seed,
      RoomState rooms,
      InkReport ink) {
    this(
        shop,
        orders,
        day,
        plannedAt,
        published,
        solveSeconds,
        seed,
        rooms,
        ink,
        FloorReport.NOTHING,
        Instructions.NONE);
  }

  /** Of a plant whose rooms have reported nothing. */
  public PlanRequest(
      Shop shop,
      List<Order> orders,
      LocalDate day,
      Instant plannedAt,
      Optional<PlanSheet> published,
      int solveSeconds,
      long seed) {
    this(
        shop,
        orders,
        day,
        plannedAt,
        published,
        solveSeconds,
        seed,
        RoomState.NOTHING,
        InkReport.NOTHING);
  }

  /** The same request under other instructions. */
  public PlanRequest under(Instructions other) {
    return new PlanRequest(
        shop, orders, day, plannedAt, published, solveSeconds, seed, rooms, ink, floor, other);
  }
}
