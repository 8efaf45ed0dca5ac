package org.potlife.planning;

import java.util.function.DoubleSupplier;
import org.potlife.simulation.Outcome;

/**
 * Where a search of rehearsed changes last stood on firm ground: the lines that were simulated with
 * the whole shop. After some changes the whole shop is simulated again: what was only rehearsed
 * stays if it comes to about the same, else it is taken back. The more often rehearsals turn out
 * right, the rarer that is.
 */
final class Settling {

  // found by trial on the cases of docs/benchmarks.md

  private static final double FIRST = 8;
  private static final double MOST = 500;
  private static final double MORE = 1.15;
  private static final double FEWER = 0.87;

  private final Lines lines;
  private final Rehearsal rehearsal;
  private final Temperatures temperatures;
  private final Lines.Copy settled;
  private Outcome settledOutcome;
  private Outcome rehearsedThen;
  private int unsettled;
  private double settleAfter = FIRST;

  Settling(Lines lines, Rehearsal rehearsal, Temperatures temperatures) {
    this.lines = lines;
    this.rehearsal = rehearsal;
    this.temperatures = temperatures;
    settled = lines.newCopy();
  }

  /** Simulates the whole shop and begins there. */
  void begin() {
    begin(rehearsal.simulate());
  }

  /** The lines have been simulated with the whole shop. */
  void begin(Outcome outcome) {
    settledOutcome = outcome;
    rehearsedThen = rehearsal.rehearseAsBase();
    if (rehearsedThen.unplaced() > 0 && !rehearsal.isWithInk()) {
      rehearsal.withInk(true);
      rehearsal.simulate();
      rehearsedThen = rehearsal.rehearseAsBase();
    }
    unsettled = 0;
    lines.copyTo(settled);
  }

  /** What the lines came to with the whole shop. */
  Outcome outcome() {
    return settledOutcome;
  }

  /** What they came to in the rehearsal then. */
  Outcome rehearsed() {
    return rehearsedThen;
  }

  /** One more change has only been rehearsed. */
  void changed() {
    unsettled++;
  }

  boolean isDue() {
    return unsettled >= settleAfter;
  }

  boolean isSettled() {
    return unsettled == 0;
  }

  /**
   * Simulates the whole shop, and takes the changes back where that shows them worse than patience
   * allows.
   *
   * @param current what the rehearsal came to
   */
  void settle(Outcome current, DoubleSupplier patience) {
    long late = current.weightedLateMinutes() - rehearsedThen.weightedLateMinutes();
    double cost = current.costMilli() - rehearsedThen.costMilli();
    Outcome outcome = rehearsal.simulate();
    boolean right = outcome.weightedLateMinutes() - settledOutcome.weightedLateMinutes() == late;
    settleAfter = right ? Math.min(MOST, settleAfter * MORE) : Math.max(1, settleAfter * FEWER);
    if (temperatures.mildPenalty(outcome, settledOutcome, late, cost) <= patience.getAsDouble()) {
      begin(outcome);
    } else {
      lines.set(settled);
      begin();
    }
  }
}
