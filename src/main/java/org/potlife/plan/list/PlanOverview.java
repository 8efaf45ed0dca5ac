package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.PlanScore;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * The plan at a glance: its worth, its days, and what becomes of each order.
 *
 * @param currency ISO 4217 code of all costs
 * @param days the days with work on a press
 * @param promises every order with a run on the plan, by due date
 */
public record PlanOverview(
    PlanScore score, String currency, List<Day> days, List<Promise> promises) {

  /**
   * One working day.
   *
   * @param runs runs that start on it
   * @param pieces their pieces
   * @param activatedG ink that is activated on it, agent included, g
   * @param screens screens that are taped on it
   */
  public record Day(LocalDate day, int runs, int pieces, int activatedG, int screens) {}

  /**
   * When an order is done.
   *
   * @param dueAt null when the order is unknown
   * @param plannedFinish when its last placed garment is off the belt
   * @param lateMinutes minutes after the due date; 0 when in time
   * @param complete false when a part of the order has no place
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Promise(
      String order,
      String customer,
      OffsetDateTime dueAt,
      OffsetDateTime plannedFinish,
      long lateMinutes,
      boolean complete) {}

  /** The overview of a plan. */
  public static PlanOverview of(PlanIndex plan) {
    return new PlanOverview(
        plan.sheet().score(), plan.shop().currency(), days(plan), promises(plan));
  }

  private static List<Day> days(PlanIndex plan) {
    TreeSet<LocalDate> days = new TreeSet<>();
    plan.sheet().runs().forEach(run -> days.add(plan.dayOf(run.setUpStart())));
    return days.stream().map(day -> day(plan, day)).toList();
  }

  private static Day day(PlanIndex plan, LocalDate day) {
    List<RunLine> runs =
        plan.sheet().runs().stream()
            .filter(run -> plan.dayOf(run.setUpStart()).equals(day))
            .toList();
    return new Day(
        day,
        runs.size(),
        runs.stream().mapToInt(RunLine::quantity).sum(),
        plan.sheet().batches().stream()
            .filter(b -> b.agentG() > 0 && plan.dayOf(b.activatedAt()).equals(day))
            .mapToInt(b -> b.massG() + b.agentG())
            .sum(),
        (int)
            plan.sheet().screens().stream()
                .filter(s -> !s.kept() && plan.dayOf(s.readyAt()).equals(day))
                .count());
  }

  private static List<Promise> promises(PlanIndex plan) {
    List<Promise> promises = new ArrayList<>();
    plan.sheet().runs().stream()
        .map(RunLine::order)
        .distinct()
        .forEach(order -> promises.add(promise(plan, order)));
    promises.sort(
        Comparator.comparing(
                (Promise p) -> p.dueAt() == null ? null : p.dueAt().toInstant(),
                Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Promise::order));
    return List.copyOf(promises);
  }

  private static Promise promise(PlanIndex plan, String reference) {
    List<RunLine> runs =
        plan.sheet().runs().stream().filter(run -> run.order().equals(reference)).toList();
    return new Promise(
        reference,
        runs.get(0).customer(),
        plan.findOrder(reference).map(Order::dueAt).orElse(null),
        runs.stream()
            .map(RunLine::offBelt)
            .max(Comparator.comparing(OffsetDateTime::toInstant))
            .orElseThrow(),
        plan.findLate(reference).map(LateLine::minutes).orElse(0L),
        plan.sheet().unplaced().stream().noneMatch(u -> u.order().equals(reference)));
  }
}
