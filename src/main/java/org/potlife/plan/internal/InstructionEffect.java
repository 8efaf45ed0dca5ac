package org.potlife.plan.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * What instructions would do: a plan without them against one with them, both searched for the same
 * short time from the plan in force.
 *
 * @param now worth of the plan under the instructions that hold
 * @param then worth of the plan under the others
 * @param orders orders whose lateness differs
 * @param runsMoved runs that start at another time or on another press
 */
record InstructionEffect(Worth now, Worth then, List<OrderChange> orders, int runsMoved) {

  /** Kind of cost on the sheet for activated ink that no garment gets. */
  private static final String INK_LOST = "inkLost";

  /**
   * What a plan is worth.
   *
   * @param cost total cost, plant currency
   * @param inkLost the part of it that is activated ink lost, plant currency
   */
  record Worth(
      int unplaced, long lateMinutes, long weightedLateMinutes, double cost, double inkLost) {

    static Worth of(PlanSheet sheet) {
      var score = sheet.score();
      return new Worth(
          score.unplaced(),
          score.lateMinutes(),
          score.weightedLateMinutes(),
          score.totalCost(),
          score.cost().getOrDefault(INK_LOST, 0.0));
    }
  }

  /** Lateness of an order, minutes. */
  record OrderChange(String order, long minutesNow, long minutesThen) {}

  static InstructionEffect of(PlanSheet now, PlanSheet then) {
    Map<String, Long> lateNow = late(now);
    Map<String, Long> lateThen = late(then);
    TreeSet<String> orders = new TreeSet<>(lateNow.keySet());
    orders.addAll(lateThen.keySet());
    List<OrderChange> changes = new ArrayList<>();
    for (String order : orders) {
      long before = lateNow.getOrDefault(order, 0L);
      long after = lateThen.getOrDefault(order, 0L);
      if (before != after) {
        changes.add(new OrderChange(order, before, after));
      }
    }
    return new InstructionEffect(Worth.of(now), Worth.of(then), changes, moved(now, then));
  }

  private static Map<String, Long> late(PlanSheet sheet) {
    Map<String, Long> late = new HashMap<>();
    sheet.late().forEach(line -> late.put(line.order(), line.minutes()));
    return late;
  }

  private static int moved(PlanSheet now, PlanSheet then) {
    Map<String, RunLine> before = new HashMap<>();
    now.runs().forEach(run -> before.put(run.id(), run));
    return (int)
        then.runs().stream()
            .filter(run -> before.containsKey(run.id()))
            .filter(
                run ->
                    !run.press().equals(before.get(run.id()).press())
                        || !run.setUpStart().isEqual(before.get(run.id()).setUpStart()))
            .count();
  }
}
