package org.potlife.planning;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * What a search may use: time, a number of evaluations, or both. Says how much of it is used, so
 * that a search can cool by it. With evaluations alone a search is repeatable; a look at a change
 * that is not simulated counts as a small part of one.
 */
final class Budget {

  private static final int ASK_EVERY = 32;

  private static final int LOOKS_PER_ASK = 256;

  /** Looks that take about as long as a short simulation; found by trial. */
  private static final int LOOKS_PER_EVALUATION = 20;

  private final LongSupplier clock;
  private final long begun;
  private final double limitNs;
  private final double mostEvaluations;
  private final BooleanSupplier stopRequested;
  private long evaluations;
  private long looks;
  private int sinceAsked;
  private double usedTime;
  private boolean stopped;

  private Budget(
      LongSupplier clock, double limitNs, double mostEvaluations, BooleanSupplier stopRequested) {
    this.clock = clock;
    begun = clock.getAsLong();
    this.limitNs = limitNs;
    this.mostEvaluations = mostEvaluations;
    this.stopRequested = stopRequested;
  }

  static Budget ofSeconds(double seconds, BooleanSupplier stopRequested) {
    return ofSeconds(seconds, System::nanoTime, stopRequested);
  }

  /**
   * @param clock counts nanoseconds, for instance those that the thread was given
   */
  static Budget ofSeconds(double seconds, LongSupplier clock, BooleanSupplier stopRequested) {
    return new Budget(clock, seconds * 1e9, Double.MAX_VALUE, stopRequested);
  }

  static Budget ofEvaluations(long most) {
    return new Budget(() -> 0, Double.MAX_VALUE, most, () -> false);
  }

  /** Counts an evaluation. */
  void evaluated() {
    evaluations++;
    if (++sinceAsked >= ASK_EVERY) {
      ask();
    }
  }

  /** Counts something that takes little time. */
  void glanced() {
    if (++looks % LOOKS_PER_ASK == 0) {
      ask();
    }
  }

  private void ask() {
    sinceAsked = 0;
    usedTime = limitNs == Double.MAX_VALUE ? 0 : (clock.getAsLong() - begun) / limitNs;
    stopped |= stopRequested.getAsBoolean();
  }

  /** From 0 to 1, and at least 1 when the search must end. */
  double used() {
    return stopped ? Math.max(1, usedTime) : Math.max(usedTime, work() / mostEvaluations);
  }

  boolean over() {
    return used() >= 1;
  }

  /** Evaluations and looks so far, in evaluations. */
  double work() {
    return evaluations + (double) looks / LOOKS_PER_EVALUATION;
  }

  long evaluations() {
    return evaluations;
  }
}
