package org.potlife.planning;

import java.util.stream.IntStream;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;

/**
 * What a minute of set-up is worth, in weighted late minutes: a share of the weight of all runs
 * that are late behind it on its press. Minutes that a change saves often come to nothing at first,
 * since no further run fits before closing; priced, they count as what they come to together. A
 * press that never closes has no prices: it loses none of what it saves.
 */
final class ShadowPrices {

  private final Problem problem;
  private final Lines lines;
  private final DispatchTimes times;

  /** By run, weighted late minutes a minute. */
  private final int[] perMinute;

  private boolean none = true;

  ShadowPrices(Problem problem, Lines lines, DispatchTimes times) {
    this.problem = problem;
    this.lines = lines;
    this.times = times;
    perMinute = new int[problem.movable()];
  }

  /** Whether set-ups have a price on any press. */
  boolean exist() {
    return IntStream.range(0, problem.presses().length).anyMatch(this::closes);
  }

  private boolean closes(int press) {
    return problem.presses()[press].staffed().closes();
  }

  /**
   * Prices the set-ups by the lines as they are.
   *
   * @param share of the lateness behind a run, 0 for no price
   */
  void set(double share, LineGuess guess) {
    none = share == 0;
    for (int press = 0; press < problem.presses().length; press++) {
      double shareHere = closes(press) ? share : 0;
      double lateBehind = 0;
      for (int place = lines.length(press) - 1; place >= 0; place--) {
        int run = lines.run(press, place);
        if (guess.late(run, guess.endOf(run)) > 0) {
          lateBehind += problem.orders()[problem.runs()[run].order()].weight();
        }
        perMinute[run] = (int) Math.round(shareHere * lateBehind);
      }
    }
  }

  /** What so much set-up of a run is worth, weighted late minutes. */
  long of(int run, int setUpS) {
    return (long) setUpS * perMinute[run] / 60;
  }

  /** What all set-ups of the lines are worth, weighted late minutes. */
  long ofLines() {
    if (none) {
      return 0;
    }
    long sum = 0;
    for (int press = 0; press < problem.presses().length; press++) {
      int before = problem.presses()[press].mounted();
      for (int place = 0; place < lines.length(press); place++) {
        int run = lines.run(press, place);
        sum += of(run, times.setUpS(before, run, press));
        before = run;
      }
    }
    return sum;
  }
}
