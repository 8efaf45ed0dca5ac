package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.potlife.audit.Audit;
import org.potlife.audit.AuditReport;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;

/** A random plant with its orders on some day, and what the audit says of plans for it. */
record RandomCase(
    long seed,
    Shop shop,
    List<Order> orders,
    LocalDate day,
    Instant plannedAt,
    Optional<PlanSheet> published,
    int solveSeconds,
    RoomState rooms,
    FloorReport floor) {

  private static final List<ZoneId> ZONES =
      List.of(
          ZoneId.of("Europe/Vienna"),
          ZoneId.of("Pacific/Auckland"),
          ZoneId.of("America/St_Johns"),
          ZoneId.of("UTC"));

  private static final List<LocalDate> DAYS =
      List.of(
          LocalDate.of(2026, 12, 1),
          LocalDate.of(2026, 12, 4),
          LocalDate.of(2026, 10, 24),
          LocalDate.of(2026, 10, 25),
          LocalDate.of(2027, 3, 27),
          LocalDate.of(2027, 3, 28),
          LocalDate.of(2026, 9, 27),
          LocalDate.of(2026, 11, 1));

  static RandomCase of(long seed) {
    Dice dice = new Dice(seed);
    ZoneId zone = dice.percent(60) ? ZONES.get(0) : dice.of(ZONES);
    LocalDate day = dice.of(DAYS);
    RandomOrders orders = new RandomOrders(dice, day, zone);
    Shop shop = RandomShops.shop(dice, day, zone, orders.stencils());
    Instant plannedAt =
        day.atStartOfDay(zone)
            .plusMinutes(dice.mostly(dice.in(-600, 0), dice.in(0, 900), -2500))
            .plusSeconds(dice.mostly(0, 23))
            .toInstant();
    return new RandomCase(
        seed,
        shop,
        orders.list(),
        day,
        plannedAt,
        Optional.empty(),
        0,
        RoomState.NOTHING,
        FloorReport.NOTHING);
  }

  RandomCase with(List<Order> others) {
    return new RandomCase(
        seed, shop, others, day, plannedAt, published, solveSeconds, rooms, floor);
  }

  RandomCase with(FloorReport told) {
    return new RandomCase(seed, shop, orders, day, plannedAt, published, solveSeconds, rooms, told);
  }

  RandomCase searched() {
    return new RandomCase(seed, shop, orders, day, plannedAt, published, 1, rooms, floor);
  }

  PlanRequest request() {
    return new PlanRequest(
        standing(),
        orders,
        day,
        plannedAt,
        published,
        solveSeconds,
        seed,
        rooms,
        InkReport.NOTHING,
        floor,
        Instructions.NONE);
  }

  /** The set-up as rooms and floor have it. */
  Shop standing() {
    return floor.standing(rooms.standing(shop));
  }

  PlanSheet plan() {
    return new SearchPlanner().solve(request(), solveSeconds == 0 ? SolveWatch.none() : brief());
  }

  /** Lets the search run for a moment only. */
  private static SolveWatch brief() {
    long end = System.nanoTime() + 60_000_000;
    return new SolveWatch() {
      @Override
      public void improved(Progress progress) {
        // only the plan counts
      }

      @Override
      public boolean stopRequested() {
        return System.nanoTime() > end;
      }
    };
  }

  AuditReport audit(PlanSheet sheet) {
    return Audit.of(standing(), orders, sheet, published, rooms, InkReport.NOTHING, floor);
  }

  /** What is wrong with the plan for this case; empty when it holds. */
  List<String> trouble() {
    try {
      return audit(plan()).findings().stream().map(Object::toString).toList();
    } catch (RuntimeException e) {
      List<String> lines = new ArrayList<>();
      lines.add(e.toString());
      for (StackTraceElement frame : e.getStackTrace()) {
        if (lines.size() < 6) {
          lines.add("  at " + frame);
        }
      }
      return lines;
    }
  }

  /** Leaves out orders and prints as long as the same kind of trouble remains. */
  RandomCase smallest(Function<RandomCase, List<String>> troubleOf) {
    String kind = kind(troubleOf.apply(this));
    RandomCase small = this;
    boolean smaller = true;
    while (smaller) {
      smaller = false;
      for (List<Order> fewer : fewer(small.orders())) {
        RandomCase tried = small.with(fewer);
        if (kind.equals(kind(troubleOf.apply(tried)))) {
          small = tried;
          smaller = true;
          break;
        }
      }
    }
    return small;
  }

  /** The rule broken, or the exception thrown. */
  static String kind(List<String> trouble) {
    if (trouble.isEmpty()) {
      return "";
    }
    String first = trouble.get(0);
    return first.substring(0, first.indexOf(' ') < 0 ? first.length() : first.indexOf(' '));
  }

  private static List<List<Order>> fewer(List<Order> orders) {
    List<List<Order>> choices = new ArrayList<>();
    for (int i = 0; i < orders.size(); i++) {
      List<Order> fewer = new ArrayList<>(orders);
      fewer.remove(i);
      choices.add(fewer);
    }
    for (int i = 0; i < orders.size(); i++) {
      Order order = orders.get(i);
      for (int j = 0; j < order.prints().size() && order.prints().size() > 1; j++) {
        List<Print> prints = new ArrayList<>(order.prints());
        prints.remove(j);
        List<Order> fewer = new ArrayList<>(orders);
        fewer.set(
            i,
            new Order(
                order.reference(),
                order.customer(),
                order.priority(),
                order.dueAt(),
                order.printsInListedOrder(),
                order.garments(),
                prints));
        choices.add(fewer);
      }
    }
    return choices;
  }
}
