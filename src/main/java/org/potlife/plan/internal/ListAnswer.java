package org.potlife.plan.internal;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;

/**
 * A list with the plan it is taken from.
 *
 * @param timeZone the plant's zone, in which the day begins and ends
 * @param list the list, its parts beside the plan's
 */
record ListAnswer<T>(
    String plan,
    int version,
    PlanState state,
    boolean stale,
    String timeZone,
    @JsonUnwrapped T list) {

  static <T> ListAnswer<T> of(PlanSummary plan, String timeZone, T list) {
    return new ListAnswer<>(plan.id(), plan.version(), plan.state(), plan.stale(), timeZone, list);
  }
}
