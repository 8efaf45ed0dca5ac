package org.potlife.planning;

import org.potlife.sheet.PlanSheet;

/** Makes a plan. */
public interface Planner {

  /**
   * Makes the best plan that it finds within the request's time. Blocks; stops early when the watch
   * asks for it, and keeps the best.
   */
  PlanSheet solve(PlanRequest request, SolveWatch watch);

  /** The plan that dispatching by earliest due date gives, to compare with. */
  PlanSheet earliestDueDate(PlanRequest request);
}
