package org.potlife.planning;

import java.util.function.Consumer;
import org.potlife.simulation.Outcome;

/** The best plan that searches side by side have found so far. */
final class Incumbent {

  private final Consumer<Outcome> improved;
  private Dispatch.Plan best;

  /**
   * @param improved told of each better outcome, one at a time
   */
  Incumbent(Dispatch.Plan first, Consumer<Outcome> improved) {
    best = first;
    this.improved = improved;
  }

  synchronized Dispatch.Plan best() {
    return best;
  }

  synchronized void offer(Dispatch.Plan plan) {
    if (plan.outcome().compareTo(best.outcome()) < 0) {
      best = plan;
      improved.accept(plan.outcome());
    }
  }
}
