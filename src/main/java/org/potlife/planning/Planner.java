package org.potlife.planning;

import java.util.Optional;
import org.potlife.sheet.PlanSheet;

/** Makes a plan. */
public interface Planner {

  /**
   * Makes the best plan that it finds within the request's time. Blocks; stops early when the watch
   * asks for it, and keeps the best.
   */
  PlanSheet solve(PlanRequest request, SolveWatch watch);

  /**
   * Like {@link #solve(PlanRequest, SolveWatch)}, beginning with a plan that was found for nearly
   * the same, if it is the better beginning.
   */
  PlanSheet solve(PlanRequest request, Optional<PlanSheet> found, SolveWatch watch);

  /**
   * Without search, the plan that keeps press and order of another one: what is frozen stays, and
   * what the other plan does not have goes where it fits best.
   */
  PlanSheet keeping(PlanRequest request, PlanSheet other);

  /** The plan that dispatching by earliest due date gives, to compare with. */
  PlanSheet earliestDueDate(PlanRequest request);
}
