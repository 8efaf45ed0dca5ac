package org.potlife.closeout.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.closeout.CloseOut;
import org.potlife.closeout.CloseOuts;
import org.potlife.closeout.DayFigures;
import org.potlife.closeout.KeptPromises;
import org.potlife.closeout.LostInk;
import org.potlife.closeout.PressFigures;
import org.potlife.floor.DayRun;
import org.potlife.floor.Floor;
import org.potlife.floor.FloorReport;
import org.potlife.order.Order;
import org.potlife.order.OrderQuery;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.StoredOrder;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.room.InkBook;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Reads together what a close-out is made from. */
@ApplicationScoped
class DayBooks implements CloseOuts {

  /** A batch comes into the book this long before its pot life ends, at most. */
  private static final Duration BATCHES_BEFORE = Duration.ofDays(14);

  private final Shops shops;
  private final Plans plans;
  private final Orders orders;
  private final Floor floor;
  private final InkBook ink;
  private final Clock clock;

  @Inject
  DayBooks(Shops shops, Plans plans, Orders orders, Floor floor, InkBook ink, Clock clock) {
    this.shops = shops;
    this.plans = plans;
    this.orders = orders;
    this.floor = floor;
    this.ink = ink;
    this.clock = clock;
  }

  @Override
  @Transactional
  public CloseOut closeOut(String plant, LocalDate day) {
    Shop shop = shops.getShop(plant).shop();
    Instant now = clock.instant();
    Instant from = day.atStartOfDay(shop.timeZone()).toInstant();
    Instant to = day.plusDays(1).atStartOfDay(shop.timeZone()).toInstant();
    List<Order> due = due(plant, from, to);
    FloorReport report = floor.reportAt(plant, due.stream().map(Order::reference).toList(), now);
    List<DayRun> told = floor.listRuns(plant, from, to, now);
    DayFigures figures = new DayFigures(shop, day, report, told, planned(plant));
    List<PressFigures> presses = figures.presses();
    return new CloseOut(
        plant,
        day,
        now.atZone(shop.timeZone()).toOffsetDateTime(),
        figures.runs(),
        presses,
        DayFigures.total(presses),
        KeptPromises.of(due, report, shop.cloth().spoilagePercent(), overTheBelt(told)),
        LostInk.of(ink.listBatches(plant, from.minus(BATCHES_BEFORE)), shop, from, to, now),
        figures.carryOver());
  }

  private List<RunLine> planned(String plant) {
    Optional<PlanSheet> sheet = plans.findCurrent(plant).flatMap(StoredPlan::sheet);
    return sheet.map(PlanSheet::runs).orElse(List.of());
  }

  private static Duration overTheBelt(List<DayRun> told) {
    return told.stream()
        .map(run -> Duration.between(run.planned().printEnd(), run.planned().offBelt()))
        .max(Duration::compareTo)
        .orElse(Duration.ZERO);
  }

  /** Orders due on the day that are not cancelled. */
  private List<Order> due(String plant, Instant from, Instant to) {
    List<Order> due = new ArrayList<>();
    Optional<OrderQuery.After> after = Optional.of(new OrderQuery.After(from, ""));
    List<StoredOrder> page;
    do {
      page =
          orders.listOrders(
              plant,
              new OrderQuery(Optional.empty(), Optional.of(to), after, OrderQuery.LARGEST_PAGE));
      for (StoredOrder stored : page) {
        if (stored.state() != OrderState.CANCELLED) {
          due.add(stored.order());
        }
      }
      if (!page.isEmpty()) {
        Order last = page.get(page.size() - 1).order();
        after = Optional.of(new OrderQuery.After(last.dueAt().toInstant(), last.reference()));
      }
    } while (page.size() == OrderQuery.LARGEST_PAGE);
    return due;
  }
}
