package org.potlife.plan;

import java.time.LocalDate;

/**
 * A plan that is asked for.
 *
 * @param day local day from whose start presses may work
 * @param solveSeconds search time after the first plan, seconds
 * @param seed seed of the search
 * @param origin who asks
 * @param publishWhenSound whether it is published as soon as it stands, if the audit passes
 */
public record PlanWish(
    LocalDate day, int solveSeconds, long seed, PlanOrigin origin, boolean publishWhenSound) {

  /** Search time when none is asked for, seconds. */
  public static final int DEFAULT_SOLVE_SECONDS = 10;

  /** Seed when none is asked for: the same data give the same plan. */
  public static final long DEFAULT_SEED = 1;
}
