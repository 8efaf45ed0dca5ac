package org.potlife.planning;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;

/**
 * For each run the runs after which, or before which, least of its set-up is such as another
 * neighbour would avoid: of all set-up it would be those with few screens. Worked out when first
 * asked for, so that a search of a large day starts at once.
 */
final class Kin {

  private static final int MOST = 40;

  private final Problem problem;
  private final DispatchTimes times;
  private final int[][] before;
  private final int[][] after;

  Kin(Problem problem, DispatchTimes times) {
    this.problem = problem;
    this.times = times;
    before = new int[problem.movable()][];
    after = new int[problem.movable()][];
  }

  /** Runs that are good predecessors, the best first. */
  int[] before(int run) {
    if (before[run] == null) {
      int press = firstPress(run);
      before[run] = nearest(run, other -> times.avoidableSetUpS(other, run, press));
    }
    return before[run];
  }

  /** Runs that are good successors, the best first. */
  int[] after(int run) {
    if (after[run] == null) {
      int press = firstPress(run);
      after[run] = nearest(run, other -> times.avoidableSetUpS(run, other, press));
    }
    return after[run];
  }

  private int firstPress(int run) {
    boolean[] presses = problem.runs()[run].presses();
    int press = 0;
    while (press < presses.length - 1 && !presses[press]) {
      press++;
    }
    return press;
  }

  private int[] nearest(int run, IntUnaryOperator setUpS) {
    int[] nearest = new int[MOST];
    int[] seconds = new int[MOST];
    int count = 0;
    for (int other = 0; other < problem.movable(); other++) {
      int time = other == run ? Integer.MAX_VALUE : setUpS.applyAsInt(other);
      if (other == run || (count == MOST && time >= seconds[MOST - 1])) {
        continue;
      }
      int at = count < MOST ? count++ : MOST - 1;
      for (; at > 0 && seconds[at - 1] > time; at--) {
        seconds[at] = seconds[at - 1];
        nearest[at] = nearest[at - 1];
      }
      seconds[at] = time;
      nearest[at] = other;
    }
    return Arrays.copyOf(nearest, count);
  }
}
