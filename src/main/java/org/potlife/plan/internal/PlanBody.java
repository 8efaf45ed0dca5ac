package org.potlife.plan.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanWish;
import org.potlife.platform.problem.FieldError;

/**
 * A plan that a client asks for.
 *
 * @param day local day from whose start presses may work; default tomorrow
 * @param solveSeconds search time after the first plan, seconds; default 10
 * @param seed seed of the search; default 1
 */
record PlanBody(
    @Schema(description = "Local day from whose start presses may work; default tomorrow")
        LocalDate day,
    @Schema(description = "Search time after the first plan, seconds; default 10")
        Integer solveSeconds,
    @Schema(description = "Seed of the search; default 1") Long seed) {

  /** How far ahead a plan may be asked for, days. */
  private static final int FURTHEST = 366;

  /**
   * @param today the present day in the plant's zone
   * @param longestSolveSeconds what the plant allows
   */
  List<FieldError> check(LocalDate today, int longestSolveSeconds) {
    List<FieldError> errors = new ArrayList<>();
    if (day != null && (day.isBefore(today) || day.isAfter(today.plusDays(FURTHEST)))) {
      errors.add(
          new FieldError(
              "/day",
              "must lie between today, "
                  + today
                  + " in the plant's zone, and "
                  + today.plusDays(FURTHEST)
                  + ", was "
                  + day));
    }
    if (solveSeconds != null && (solveSeconds < 1 || solveSeconds > longestSolveSeconds)) {
      errors.add(
          new FieldError(
              "/solveSeconds",
              "must lie between 1 and "
                  + longestSolveSeconds
                  + ", the plant's longestSolveSeconds, was "
                  + solveSeconds));
    }
    return errors;
  }

  PlanWish wish(LocalDate today, int longestSolveSeconds) {
    return new PlanWish(
        day == null ? today.plusDays(1) : day,
        solveSeconds == null
            ? Math.min(PlanWish.DEFAULT_SOLVE_SECONDS, longestSolveSeconds)
            : solveSeconds,
        seed == null ? PlanWish.DEFAULT_SEED : seed,
        PlanOrigin.PLANNER,
        false);
  }
}
