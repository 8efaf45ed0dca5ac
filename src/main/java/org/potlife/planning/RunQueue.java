package org.potlife.planning;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;
import org.potlife.simulation.StaffedTime;

/** The runs that a press takes and that are not dispatched yet, in no order. */
final class RunQueue {

  private final Problem problem;
  private final DispatchTimes times;
  private final int press;
  private final StaffedTime staffed;

  /** No set-up is longer, s. */
  private final int longestSetUpS;

  private final int[] all;
  private final double[] urgencyOfAll;

  /** By run, its place; -1 if it does not stand here. */
  private final int[] placeOf;

  /** By place. */
  private final int[] runs;

  /** By place, the logarithm of weight over printing time. */
  private final double[] urgency;

  /** By place, latest start of printing that meets the due date, s. */
  private final double[] latest;

  /** By place, when the press is first staffed once the garments are in house, s. */
  private final int[] printableFrom;

  private int count;

  RunQueue(Problem problem, DispatchTimes times, int press) {
    this.problem = problem;
    this.times = times;
    this.press = press;
    staffed = problem.presses()[press].staffed();
    longestSetUpS = times.longestSetUpS(press);
    all =
        IntStream.range(0, problem.movable())
            .filter(run -> problem.runs()[run].presses()[press])
            .toArray();
    urgencyOfAll = Arrays.stream(all).mapToDouble(this::urgency).toArray();
    placeOf = new int[problem.movable()];
    runs = new int[all.length];
    urgency = new double[all.length];
    latest = new double[all.length];
    printableFrom = new int[all.length];
  }

  /** All runs are to be dispatched again. */
  void fill() {
    Arrays.fill(placeOf, -1);
    count = all.length;
    for (int place = 0; place < count; place++) {
      int run = all[place];
      runs[place] = run;
      placeOf[run] = place;
      urgency[place] = urgencyOfAll[place];
      latest[place] = due(run) - times.printS(run, press);
      printableFrom[place] = staffed.next(problem.runs()[run].garmentsFrom());
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
      urgency[place] = urgency[count];
      latest[place] = latest[count];
      printableFrom[place] = printableFrom[count];
      placeOf[runs[place]] = place;
    }
  }

  /**
   * The open run that is due first and still fits into a span of the press.
   *
   * @param now when the press is free, s
   * @param last the run that is on it
   * @return -1 if there is none
   */
  int dueFirst(int now, int last, IntPredicate isOpen) {
    int best = -1;
    for (int place = 0; place < count; place++) {
      int run = runs[place];
      boolean sooner = best < 0 || due(run) < due(best) || due(run) == due(best) && run < best;
      if (sooner && isOpen.test(run) && times.endOf(last, run, press, now) < StaffedTime.NEVER) {
        best = run;
      }
    }
    return best;
  }

  /**
   * The open run with the highest index that still fits into a span of the press; of two alike the
   * one with the lower number.
   *
   * @param now when the press is free, s
   * @param last the run that is on it
   * @return -1 if there is none
   */
  int mostUrgent(Dispatch.Rule rule, int now, int last, IntPredicate isOpen) {
    Choice choice = new Choice(rule, now, last, isOpen);
    if (last >= 0) {
      for (int run : times.runsOfScreens(last)) {
        int place = placeOf[run];
        // nothing to set up at all
        int least = times.avoidableSetUpS(0, last, run, press);
        if (place >= 0 && choice.most(place, least) >= choice.index) {
          choice.consider(place);
        }
      }
    }
    for (int place = 0; place < count; place++) {
      if (choice.most(place, 0) >= choice.index) {
        choice.consider(place);
      }
    }
    return choice.best;
  }

  /** Looks for the run with the highest index. */
  private final class Choice {

    private final int now;
    private final int last;
    private final IntPredicate isOpen;
    private final double perSlackS;
    private final double perLostS;
    private final int workNow;
    private int best = -1;
    private double index = Double.NEGATIVE_INFINITY;

    Choice(Dispatch.Rule rule, int now, int last, IntPredicate isOpen) {
      this.now = now;
      this.last = last;
      this.isOpen = isOpen;
      perSlackS = 1 / rule.lookAheadS();
      perLostS = 1 / rule.lossWeightS();
      workNow = staffed.workAt(now);
    }

    /**
     * A bound that the index does not pass.
     *
     * @param leastAvoidableS no avoidable set-up of the run is shorter, s
     */
    double most(int place, int leastAvoidableS) {
      double start = Math.max(now, printableFrom[place]);
      double slack = Math.max(0, latest[place] - start - longestSetUpS);
      return urgency[place] - slack * perSlackS - leastAvoidableS * perLostS;
    }

    void consider(int place) {
      int run = runs[place];
      int setUpS = times.setUpS(last, run, press);
      int from = times.beginOf(run, press, now, setUpS);
      double slack = Math.max(0, latest[place] - from - setUpS);
      int avoidableS = times.avoidableSetUpS(setUpS, last, run, press);
      double found = urgency[place] - slack * perSlackS - avoidableS * perLostS;
      // idle time is not worked out where it could not decide any more
      if (found < index) {
        return;
      }
      int idleS = idleS(run, from, setUpS);
      if (idleS == StaffedTime.NEVER) {
        return;
      }
      found -= idleS * perLostS;
      if ((found > index || found == index && run < best) && isOpen.test(run)) {
        best = run;
        index = found;
      }
    }

    /** Staffed time until the run begins, for its garments or since it does not fit before, s. */
    private int idleS(int run, int from, int setUpS) {
      int work = (int) Math.ceil(setUpS + times.printS(run, press));
      int end = staffed.addInSpan(from, work);
      return end >= StaffedTime.NEVER
          ? StaffedTime.NEVER
          : Math.max(0, staffed.workAt(staffed.subtract(end, work)) - workNow);
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
