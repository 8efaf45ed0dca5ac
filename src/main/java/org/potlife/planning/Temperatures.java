package org.potlife.planning;

import org.potlife.simulation.Outcome;

/**
 * How much worse a search lets a plan become: lateness and cost have temperatures of their own,
 * since no cost outweighs lateness.
 */
final class Temperatures {

  private double late = 1;
  private double cost = 1;

  /**
   * @param late weighted late minutes
   * @param cost 1/1000 of the plant currency
   */
  void set(double late, double cost) {
    this.late = late;
    this.cost = cost;
  }

  /** So many more late minutes, in temperatures; not below 0. */
  double ofLate(double more) {
    return Math.max(0, more / late);
  }

  /** More late minutes than so many temperatures are; 0 or more. */
  long lateFor(double temperatures) {
    return (long) Math.ceil(temperatures * late);
  }

  /** So much more cost, in temperatures; not below 0. */
  double ofCost(double more) {
    return Math.max(0, more / cost);
  }

  /** How much worse an outcome is than another one, in temperatures. */
  double penalty(Outcome outcome, Outcome than) {
    return penalty(outcome, than, 0, 0);
  }

  /** How much worse an outcome is than another one and what was expected, in temperatures. */
  double penalty(Outcome outcome, Outcome than, long expectedLate, double expectedCost) {
    if (outcome.unplaced() != than.unplaced()) {
      return outcome.unplaced() < than.unplaced() ? 0 : Double.MAX_VALUE;
    }
    long more = outcome.weightedLateMinutes() - than.weightedLateMinutes();
    return more != expectedLate
        ? ofLate(more - expectedLate)
        : ofCost(outcome.costMilli() - than.costMilli() - expectedCost);
  }

  /** The lesser penalty: against what was, or against what was expected. */
  double mildPenalty(Outcome outcome, Outcome than, long expectedLate, double expectedCost) {
    return Math.min(penalty(outcome, than), penalty(outcome, than, expectedLate, expectedCost));
  }
}
