package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Closure;
import org.potlife.shop.Press;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;

/**
 * What a change would do to the plan in force. The plan is made anew under the change, starting
 * from the one in force, and compared with that as it stands now; nothing is kept.
 */
public final class WhatIf {

  /** Something that might happen or be done. */
  public sealed interface Question permits DueAt, PressDown, FurtherShift {}

  /** An order would be due at another time. */
  public record DueAt(String order, OffsetDateTime dueAt) implements Question {}

  /** A press would be down for a time; runs that are frozen in it stay where they are. */
  public record PressDown(String press, OffsetDateTime from, OffsetDateTime to)
      implements Question {}

  /** A press would be staffed in a further shift, every week on its days. */
  public record FurtherShift(String press, Shift shift) implements Question {}

  /**
   * Lateness of an order now and under the change, minutes.
   *
   * @param minutesNow 0 if on time
   * @param minutesThen 0 if on time
   */
  public record OrderChange(String order, long minutesNow, long minutesThen) {}

  /**
   * The plan in force against the plan under the change.
   *
   * @param weightedLateMinutesNow weighted late minutes of the plan in force
   * @param weightedLateMinutesThen the same under the change
   * @param costNow total cost, plant currency
   * @param costThen the same under the change
   * @param unplacedNow prints without a place
   * @param unplacedThen the same under the change
   * @param becomeLate orders on time now and late then
   * @param becomeOnTime orders late now and on time then
   * @param losePlace orders with a print without a place then, but not now
   * @param findPlace orders with a print without a place now, but not then
   * @param changes all orders whose lateness differs
   * @param inForce the plan in force as it stands at the moment of the question
   * @param plan the plan under the change
   */
  public record Answer(
      long weightedLateMinutesNow,
      long weightedLateMinutesThen,
      double costNow,
      double costThen,
      int unplacedNow,
      int unplacedThen,
      List<String> becomeLate,
      List<String> becomeOnTime,
      List<String> losePlace,
      List<String> findPlace,
      List<OrderChange> changes,
      PlanSheet inForce,
      PlanSheet plan) {}

  private WhatIf() {}

  /**
   * Answers within the request's search time and what a first plan takes.
   *
   * @param request must carry the plan in force as its published plan
   * @throws IllegalArgumentException if there is no plan in force, or if the question names an
   *     order or a press that there is not
   */
  public static Answer of(Planner planner, PlanRequest request, Question question) {
    PlanSheet published =
        request
            .published()
            .orElseThrow(() -> new IllegalArgumentException("there is no plan in force"));
    // counted from the same moment, and with all that is known by now, as the other
    PlanSheet now = planner.keeping(request, published);
    PlanSheet then = planner.solve(under(request, question), SolveWatch.none());
    return between(now, then);
  }

  /** The request as it would be under the change. */
  public static PlanRequest under(PlanRequest request, Question question) {
    if (question instanceof DueAt due) {
      return with(request, request.shop(), due(request.orders(), due));
    }
    if (question instanceof PressDown down) {
      return with(request, with(request.shop(), down.press(), closed(down)), request.orders());
    }
    FurtherShift further = (FurtherShift) question;
    return with(
        request,
        with(request.shop(), further.press(), press -> staffed(press, further.shift())),
        request.orders());
  }

  private static List<Order> due(List<Order> orders, DueAt due) {
    if (orders.stream().noneMatch(order -> order.reference().equals(due.order()))) {
      throw new IllegalArgumentException("no open order " + due.order());
    }
    return orders.stream()
        .map(order -> order.reference().equals(due.order()) ? order.dueAt(due.dueAt()) : order)
        .toList();
  }

  private static UnaryOperator<Press> closed(PressDown down) {
    return press -> {
      List<Closure> closures = new ArrayList<>(press.closures());
      closures.add(new Closure(down.from(), down.to(), "down"));
      return press.withTimes(closures, press.extraShifts());
    };
  }

  private static Press staffed(Press press, Shift shift) {
    List<Shift> shifts = new ArrayList<>(press.shifts());
    shifts.add(shift);
    return press.withShifts(shifts);
  }

  private static Shop with(Shop shop, String id, UnaryOperator<Press> change) {
    if (shop.findPress(id).isEmpty()) {
      throw new IllegalArgumentException("no press " + id);
    }
    return shop.withPresses(
        shop.presses().stream()
            .map(press -> press.id().equals(id) ? change.apply(press) : press)
            .toList());
  }

  private static PlanRequest with(PlanRequest request, Shop shop, List<Order> orders) {
    return new PlanRequest(
        shop,
        orders,
        request.day(),
        request.plannedAt(),
        request.published(),
        request.solveSeconds(),
        request.seed(),
        request.rooms(),
        request.ink(),
        request.floor(),
        request.instructions());
  }

  /** Two plans that are counted from the same moment, the one against the other. */
  public static Answer between(PlanSheet now, PlanSheet then) {
    Map<String, Long> lateNow = late(now);
    Map<String, Long> lateThen = late(then);
    Set<String> placelessNow = placeless(now);
    Set<String> placelessThen = placeless(then);
    List<OrderChange> changes = new ArrayList<>();
    for (String order : new TreeSet<>(union(lateNow, lateThen))) {
      long minutesNow = lateNow.getOrDefault(order, 0L);
      long minutesThen = lateThen.getOrDefault(order, 0L);
      if (minutesNow != minutesThen) {
        changes.add(new OrderChange(order, minutesNow, minutesThen));
      }
    }
    return new Answer(
        now.score().weightedLateMinutes(),
        then.score().weightedLateMinutes(),
        now.score().totalCost(),
        then.score().totalCost(),
        now.score().unplaced(),
        then.score().unplaced(),
        orders(changes, c -> c.minutesNow() == 0 && !placelessNow.contains(c.order())),
        orders(changes, c -> c.minutesThen() == 0 && !placelessThen.contains(c.order())),
        without(placelessThen, placelessNow),
        without(placelessNow, placelessThen),
        changes,
        now,
        then);
  }

  private static List<String> union(Map<String, Long> some, Map<String, Long> others) {
    List<String> all = new ArrayList<>(some.keySet());
    all.addAll(others.keySet());
    return all;
  }

  private static List<String> orders(List<OrderChange> changes, Predicate<OrderChange> wanted) {
    return changes.stream().filter(wanted).map(OrderChange::order).toList();
  }

  private static Set<String> placeless(PlanSheet sheet) {
    return sheet.unplaced().stream()
        .map(PlanSheet.UnplacedLine::order)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> without(Set<String> some, Set<String> others) {
    return some.stream().filter(order -> !others.contains(order)).toList();
  }

  private static Map<String, Long> late(PlanSheet sheet) {
    Map<String, Long> minutes = new HashMap<>();
    sheet.late().forEach(line -> minutes.put(line.order(), line.minutes()));
    return minutes;
  }
}
