package org.potlife.shop;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;

/**
 * How the plant's plans follow what happens. Without a plan in force nothing is followed.
 *
 * @param automatic whether a plan is made by itself when the one in force is stale; null as the
 *     service is configured, which is on
 * @param settleSeconds rest after the last change before it is made, seconds, 0 to 3600, default 20
 * @param settleAtMostSeconds longest wait after the first change, however many follow, seconds, 0
 *     to 7200, default 120
 * @param solveSeconds search time of such a plan, seconds, 1 to 3600, default 10; never more than
 *     the plant's longestSolveSeconds
 * @param publish when it comes into force, default by-planner
 * @param fewerThanRuns with when-no-promise-gets-worse: a plan that moves so many runs or more
 *     waits for the planner, default 5
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Following(
    Boolean automatic,
    @Min(0) @Max(3600) Integer settleSeconds,
    @Min(0) @Max(7200) Integer settleAtMostSeconds,
    @Min(1) @Max(3600) Integer solveSeconds,
    Publish publish,
    @Min(0) @Max(10_000) Integer fewerThanRuns) {

  /** Who puts a plan that was made by itself into force. */
  public enum Publish {
    /** The planner. */
    @JsonProperty("by-planner")
    BY_PLANNER,
    /** The service, when the audit passes, no promise gets worse and few runs move. */
    @JsonProperty("when-no-promise-gets-worse")
    WHEN_NO_PROMISE_GETS_WORSE
  }

  public Following {
    settleSeconds = settleSeconds == null ? 20 : settleSeconds;
    settleAtMostSeconds =
        settleAtMostSeconds == null ? Math.max(120, settleSeconds) : settleAtMostSeconds;
    solveSeconds = solveSeconds == null ? 10 : solveSeconds;
    publish = publish == null ? Publish.BY_PLANNER : publish;
    fewerThanRuns = fewerThanRuns == null ? 5 : fewerThanRuns;
  }

  /** All defaults. */
  static Following defaults() {
    return new Following(null, null, null, null, null, null);
  }
}
