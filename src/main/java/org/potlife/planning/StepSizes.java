package org.potlife.planning;

import java.util.Arrays;

/** How much changes make of lateness and cost, to set temperatures by. */
final class StepSizes {

  /** Steps that are measured, and the share of them that counts as smaller; found by trial. */
  static final int SAMPLES = 60;

  private static final double QUANTILE = 0.1;

  private final long[] late = new long[SAMPLES];
  private final long[] cost = new long[SAMPLES];
  private int lateCount;
  private int costCount;

  void clear() {
    lateCount = 0;
    costCount = 0;
  }

  /** A change would make the plan so much later and dearer. */
  void note(long moreLate, long moreCost) {
    if (moreLate > 0 && lateCount < SAMPLES) {
      late[lateCount++] = moreLate;
    }
    if (moreCost > 0 && costCount < SAMPLES) {
      cost[costCount++] = moreCost;
    }
  }

  boolean isEmpty() {
    return lateCount + costCount == 0;
  }

  /** Weighted late minutes of a smaller step. */
  double late() {
    return quantile(late, lateCount);
  }

  /** Cost of a smaller step, 1/1000 of the plant currency. */
  double cost() {
    return quantile(cost, costCount);
  }

  private static double quantile(long[] steps, int count) {
    Arrays.sort(steps, 0, count);
    return count == 0 ? 1 : Math.max(1, steps[(int) (count * QUANTILE)]);
  }
}
