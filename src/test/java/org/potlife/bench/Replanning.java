package org.potlife.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.order.Order;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SolveWatch;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/** A rush order comes in while a plan is in force: how soon the next plan is good again. */
final class Replanning {

  private Replanning() {}

  static void measure(Settings settings, Report report) {
    int longSeconds = (int) settings.seconds("seconds", 60);
    Table table =
        new Table(
            "Replanning after one rush order, weighted late minutes",
            "runs",
            "instance",
            "long solve",
            "after 1 s",
            "after 10 s",
            "ratio 1 s",
            "ratio 10 s",
            "other press after 10 s %");
    for (int size : settings.sizes(500)) {
      for (int instance = 1; instance <= settings.instances(); instance++) {
        PlanRequest first = BenchPlant.request(size, instance, longSeconds);
        PlanSheet published = settings.planner().solve(first, SolveWatch.none());
        PlanRequest event = afterRushOrder(first, published, instance);
        double whole = late(solve(settings, event, longSeconds));
        PlanSheet soon = solve(settings, event, 1);
        PlanSheet later = solve(settings, event, 10);
        table.add(
            size,
            instance,
            whole,
            late(soon),
            late(later),
            Figures.ratio(late(soon), whole),
            Figures.ratio(late(later), whole),
            100 * moved(published, later));
        report.say(table.markdown());
      }
    }
    report.table("replan", table);
  }

  private static PlanSheet solve(Settings settings, PlanRequest event, int seconds) {
    return settings
        .planner()
        .solve(
            new PlanRequest(
                event.shop(),
                event.orders(),
                event.day(),
                event.plannedAt(),
                event.published(),
                seconds,
                event.seed()),
            SolveWatch.none());
  }

  /** An hour later an order of the second half of the list is due two days sooner, first of all. */
  static PlanRequest afterRushOrder(PlanRequest first, PlanSheet published, int instance) {
    List<Order> orders = new ArrayList<>(first.orders());
    int at = orders.size() / 2 + instance;
    Order order = orders.get(at);
    orders.set(
        at,
        new Order(
            order.reference(),
            order.customer(),
            1,
            order.dueAt().minusDays(2),
            order.printsInListedOrder(),
            order.garments(),
            order.prints()));
    return new PlanRequest(
        first.shop(),
        orders,
        first.day(),
        first.plannedAt().plus(Duration.ofHours(1)),
        Optional.of(published),
        first.solveSeconds(),
        first.seed());
  }

  private static double late(PlanSheet sheet) {
    return sheet.score().weightedLateMinutes();
  }

  /** Share of the published runs that stand on another press. */
  static double moved(PlanSheet before, PlanSheet after) {
    Map<String, RunLine> old =
        before.runs().stream().collect(Collectors.toMap(RunLine::id, Function.identity()));
    List<RunLine> kept = after.runs().stream().filter(run -> old.containsKey(run.id())).toList();
    long moved =
        kept.stream().filter(run -> !old.get(run.id()).press().equals(run.press())).count();
    return (double) moved / Math.max(1, kept.size());
  }
}
