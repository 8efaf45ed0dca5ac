package org.potlife.plan.internal;

import java.util.List;
import org.potlife.plan.Stability;
import org.potlife.planning.WhatIf;
import org.potlife.planning.WhatIf.OrderChange;
import org.potlife.sheet.PlanSheet;

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

  static InstructionEffect of(PlanSheet now, PlanSheet then) {
    return new InstructionEffect(
        Worth.of(now),
        Worth.of(then),
        WhatIf.between(now, then).changes(),
        Stability.of(now, then).runsMoved());
  }
}
