package org.potlife.planning;

/** The caller's view into a running solve. Called from the solving thread. */
public interface SolveWatch {

  /** A better plan was found. */
  void improved(Progress progress);

  /** Whether to stop now and keep the best plan so far. Asked several times a second. */
  boolean stopRequested();

  /**
   * A point on the falling curve.
   *
   * @param elapsedMs since the start of the solve, milliseconds
   * @param unplaced runs without a place
   * @param weightedLateMinutes weighted late minutes
   * @param cost total cost, plant currency
   */
  record Progress(long elapsedMs, int unplaced, long weightedLateMinutes, double cost) {}

  /** Watches nothing and never stops. */
  static SolveWatch none() {
    return new SolveWatch() {
      @Override
      public void improved(Progress progress) {
        // nobody looks
      }

      @Override
      public boolean stopRequested() {
        return false;
      }
    };
  }
}
