package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.Audit;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.shop.Shop;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/**
 * A plan for a small shop, made the evening before {@link SmallShop#DAY} at 18:00 by dispatch
 * alone, which has passed the audit.
 */
final class Planned {

  private final Shop shop;
  private final List<Order> orders;
  private final PlanSheet sheet;

  private Planned(Shop shop, List<Order> orders, PlanSheet sheet) {
    this.shop = shop;
    this.orders = orders;
    this.sheet = sheet;
  }

  static Planned plan(SmallShop shop, SmallOrder... orders) {
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    return plan(shop.build(), built, SmallShop.DAY, SmallShop.at(-1, "18:00"), Optional.empty());
  }

  static Planned plan(
      Shop shop,
      List<Order> orders,
      LocalDate day,
      OffsetDateTime plannedAt,
      Optional<PlanSheet> published) {
    PlanRequest request =
        new PlanRequest(shop, orders, day, plannedAt.toInstant(), published, 0, 7);
    return audited(request, SolveWatch.none());
  }

  /** Like {@link #plan(SmallShop, SmallOrder...)} after the ink room has told something. */
  static Planned plan(InkReport told, SmallShop shop, SmallOrder... orders) {
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    PlanRequest request =
        new PlanRequest(
            shop.build(),
            built,
            SmallShop.DAY,
            SmallShop.at(-1, "18:00").toInstant(),
            Optional.empty(),
            0,
            7,
            RoomState.NOTHING,
            told);
    return audited(request, SolveWatch.none());
  }

  /** The next plan after the ink room has told something. */
  Planned again(OffsetDateTime plannedAt, InkReport told) {
    PlanRequest request =
        new PlanRequest(
            shop,
            orders,
            sheet.day(),
            plannedAt.toInstant(),
            Optional.of(sheet),
            0,
            7,
            RoomState.NOTHING,
            told);
    return audited(request, SolveWatch.none());
  }

  /** The next plan after the screen room has reported something. */
  Planned again(OffsetDateTime plannedAt, RoomState rooms) {
    PlanRequest request =
        new PlanRequest(
            rooms.standing(shop),
            orders,
            sheet.day(),
            plannedAt.toInstant(),
            Optional.of(sheet),
            0,
            7,
            rooms,
            InkReport.NOTHING);
    return audited(request, SolveWatch.none());
  }

  /** The next plan after the press crew has told something. */
  Planned again(OffsetDateTime plannedAt, FloorReport told) {
    PlanRequest request =
        new PlanRequest(
            told.standing(shop),
            orders,
            sheet.day(),
            plannedAt.toInstant(),
            Optional.of(sheet),
            0,
            7,
            RoomState.NOTHING,
            InkReport.NOTHING,
            told,
            Instructions.NONE);
    return audited(request, SolveWatch.none());
  }

  /** Like {@link #plan(SmallShop, SmallOrder...)} with a second of search. */
  static Planned search(SmallShop shop, SmallOrder... orders) {
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    PlanRequest request =
        new PlanRequest(
            shop.build(),
            built,
            SmallShop.DAY,
            SmallShop.at(-1, "18:00").toInstant(),
            Optional.empty(),
            1,
            7);
    return audited(request, SolveWatch.none());
  }

  /** Solves and audits. */
  static Planned audited(PlanRequest request, SolveWatch watch) {
    PlanSheet sheet = new SearchPlanner().solve(request, watch);
    assertThat(
            Audit.of(
                    request.shop(),
                    request.orders(),
                    sheet,
                    request.published(),
                    request.rooms(),
                    request.ink(),
                    request.floor())
                .findings())
        .isEmpty();
    return new Planned(request.shop(), request.orders(), sheet);
  }

  /** The next plan, made at this time from this one as the published one. */
  Planned again(OffsetDateTime plannedAt, SmallOrder... changed) {
    List<Order> next = new ArrayList<>(orders);
    for (SmallOrder order : changed) {
      Order built = order.build();
      next.removeIf(other -> other.reference().equals(built.reference()));
      next.add(built);
    }
    return plan(shop, next, sheet.day(), plannedAt, Optional.of(sheet));
  }

  /** The same plan after an order was cancelled. */
  Planned cancel(String order) {
    List<Order> left = orders.stream().filter(o -> !o.reference().equals(order)).toList();
    return new Planned(shop, left, sheet);
  }

  PlanSheet sheet() {
    return sheet;
  }

  /** The only run of an order. */
  RunLine run(String order) {
    List<RunLine> runs = runs(order);
    assertThat(runs).as("runs of " + order).hasSize(1);
    return runs.get(0);
  }

  List<RunLine> runs(String order) {
    return sheet.runs().stream().filter(run -> run.order().equals(order)).toList();
  }

  /** The run of an order with this design. */
  RunLine run(String order, String design) {
    return runs(order).stream()
        .filter(run -> run.design().equals(design))
        .findFirst()
        .orElseThrow();
  }

  List<BatchLine> batches(String ink) {
    return sheet.batches().stream().filter(batch -> batch.ink().equals(ink)).toList();
  }

  BatchLine batch(String ink) {
    assertThat(batches(ink)).as("batches of " + ink).hasSize(1);
    return batches(ink).get(0);
  }

  ScreenLine screen(String id) {
    return sheet.screens().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  StepLine step(String screen, String step) {
    return screen(screen).steps().stream()
        .filter(s -> s.step().equals(step))
        .findFirst()
        .orElseThrow();
  }

  /** The only print without a place. */
  UnplacedLine unplaced() {
    assertThat(sheet.unplaced()).hasSize(1);
    return sheet.unplaced().get(0);
  }
}
