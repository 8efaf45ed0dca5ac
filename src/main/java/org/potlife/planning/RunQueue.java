package org.potlife.planning;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;

/** The runs that a press takes and that are not dispatched yet, in no order. */
final class RunQueue {

  private final Problem problem;
  private final DispatchTimes times;
  private final int press;

  /** No set-up is longer, s. */
  private final int longestSetUpS;

  private final int[] all;
  private final double[] urgencyOfAll;

  /** By run, its place; -1 if it does not stand here. */
  private final int[] placeOf;

  /** By place. */
  private final int[] runs;

  /** By place, a bound that no set-up without a common screen goes below on an empty press, s. */
  private final double[] shortestSetUpS;

  /** By place, the logarithm of weight over printing time. */
  private final double[] urgency;

  /** By place, latest start of printing that meets the due date, s. */
  private final double[] latest;

  private final double[] garmentsFrom;
  private int count;

  RunQueue(Problem problem, DispatchTimes times, int press) {
    this.problem = problem;
    this.times = times;
    this.press = press;
    longestSetUpS = times.longestSetUpS(press);
    all =
        IntStream.range(0, problem.movable())
            .filter(run -> problem.runs()[run].presses()[press])
            .toArray();
    urgencyOfAll = Arrays.stream(all).mapToDouble(this::urgency).toArray();
    placeOf = new int[problem.movable()];
    runs = new int[all.length];
    shortestSetUpS = new double[all.length];
    urgency = new double[all.length];
    latest = new double[all.length];
    garmentsFrom = new double[all.length];
  }

  /** All runs are to be dispatched again. */
  void fill() {
    Arrays.fill(placeOf, -1);
    count = all.length;
    for (int place = 0; place < count; place++) {
      int run = all[place];
      RunSpec spec = problem.runs()[run];
      runs[place] = run;
      placeOf[run] = place;
      urgency[place] = urgencyOfAll[place];
      shortestSetUpS[place] = times.shortestSetUpS(run, press);
      latest[place] = due(run) - times.printS(run, press);
      garmentsFrom[place] = spec.garmentsFrom();
    }
  }

  /** The run has been dispatched, here or elsewhere. */
  void remove(int run) {
    int place = placeOf[run];
    if (place < 0) {
      return;
    }
    placeOf[run] = -1;
    count--;
    if (place < count) {
      runs[place] = runs[count];
      shortestSetUpS[place] = shortestSetUpS[count];
      urgency[place] = urgency[count];
      latest[place] = latest[count];
      garmentsFrom[place] = garmentsFrom[count];
      placeOf[runs[place]] = place;
    }
  }

  /** The open run that is due first; -1 if there is none. */
  int dueFirst(IntPredicate isOpen) {
    int best = -1;
    for (int place = 0; place < count; place++) {
      int run = runs[place];
      boolean sooner = best < 0 || due(run) < due(best) || due(run) == due(best) && run < best;
      if (sooner && isOpen.test(run)) {
        best = run;
      }
    }
    return best;
  }

  /**
   * The open run with the highest index; of two alike the one with the lower number.
   *
   * @param now when the press is free, s
   * @param last the run that is on it
   * @return -1 if no run is open
   */
  int mostUrgent(Dispatch.Rule rule, double now, int last, IntPredicate isOpen) {
    Choice choice = new Choice(rule, now, last, isOpen);
    if (last >= 0) {
      for (int run : times.runsOfScreens(last)) {
        int place = placeOf[run];
        if (place >= 0 && choice.most(place, 0) >= choice.bestIndex) {
          choice.consider(place);
        }
      }
    }
    for (int place = 0; place < count; place++) {
      if (choice.most(place, shortestSetUpS[place] + choice.removalS) >= choice.bestIndex) {
        choice.consider(place);
      }
    }
    return choice.best;
  }

  /** Looks for the run with the highest index. */
  private final class Choice {

    private final double now;
    private final int last;
    private final IntPredicate isOpen;
    private final double perSlackS;
    private final double perSetUpS;
    private final double removalS;
    private int best = -1;
    private double bestIndex = -Double.MAX_VALUE;

    Choice(Dispatch.Rule rule, double now, int last, IntPredicate isOpen) {
      this.now = now;
      this.last = last;
      this.isOpen = isOpen;
      perSlackS = 1 / rule.lookAheadS();
      perSetUpS = 1 / rule.setUpWeightS();
      removalS = times.removalS(last, press);
    }

    /**
     * A bound that the index does not pass.
     *
     * @param leastSetUpS no set-up of the run is shorter, s
     */
    double most(int place, double leastSetUpS) {
      double start = Math.max(now, garmentsFrom[place]);
      double slack = Math.max(0, latest[place] - start - longestSetUpS);
      return urgency[place] - slack * perSlackS - (start - now + leastSetUpS) * perSetUpS;
    }

    void consider(int place) {
      int run = runs[place];
      int setUpS = times.setUpS(last, run, press);
      double start = Math.max(now, garmentsFrom[place]);
      double slack = Math.max(0, latest[place] - start - setUpS);
      double index = urgency[place] - slack * perSlackS - (start - now + setUpS) * perSetUpS;
      if ((index > bestIndex || index == bestIndex && run < best) && isOpen.test(run)) {
        best = run;
        bestIndex = index;
      }
    }
  }

  private double urgency(int run) {
    int weight = Math.max(1, problem.orders()[problem.runs()[run].order()].weight());
    return Math.log(weight / times.printS(run, press));
  }

  private int due(int run) {
    return problem.orders()[problem.runs()[run].order()].dueAt();
  }
}
