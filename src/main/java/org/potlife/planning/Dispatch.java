package org.potlife.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.Simulation;

/**
 * Dispatch rules: the press that is free first takes the run with the highest index. The rules are
 * earliest due date, and apparent tardiness cost with set-ups (ATCS) for several look-ahead
 * factors: Lee, Bhaskaran and Pinedo, A heuristic to minimize the total weighted tardiness with
 * sequence-dependent setups, IIE Transactions 29, 1997 (from memory). Each result is judged by the
 * simulation.
 */
final class Dispatch {

  private static final double[] LOOK_AHEAD = {0.5, 1.5, 3, 6};
  private static final double[] SET_UP_WEIGHT = {0.1, 0.3, 0.8, 2};

  /** Sequences by press and what they come to. */
  record Plan(int[][] sequences, int[] lengths, Outcome outcome) {}

  /** Look-ahead and weight of set-ups in a rule. */
  private record Rule(double lookAheadS, double setUpWeightS) {}

  private final Problem problem;
  private final DispatchTimes times;
  private final PrintOrder order;
  private final Simulation simulation;
  private final double[] due;
  private final double[] garmentsFrom;

  /** By press and run, the logarithm of weight over printing time. */
  private final double[][] urgency;

  /** By press, no set-up is longer, s. */
  private final double[] longestSetUpS;

  /** By press, the runs that it takes and that are not done, in order of their numbers. */
  private final int[][] open;

  private final int[] openCount;

  Dispatch(Problem problem) {
    this.problem = problem;
    times = new DispatchTimes(problem);
    order = new PrintOrder(problem);
    simulation = new Simulation(problem);
    int runs = problem.movable();
    due = new double[runs];
    garmentsFrom = new double[runs];
    for (int run = 0; run < runs; run++) {
      RunSpec spec = problem.runs()[run];
      due[run] = problem.orders()[spec.order()].dueAt();
      garmentsFrom[run] = spec.garmentsFrom();
    }
    int presses = problem.presses().length;
    urgency = new double[presses][runs];
    longestSetUpS = new double[presses];
    open = new int[presses][runs];
    openCount = new int[presses];
    for (int press = 0; press < presses; press++) {
      longestSetUpS[press] = times.longestSetUpS(press);
      for (int run = 0; run < runs; run++) {
        int weight = Math.max(1, problem.orders()[problem.runs()[run].order()].weight());
        urgency[press][run] = Math.log(weight / times.printS(run, press));
      }
    }
  }

  /** Earliest due date first. */
  Plan earliestDueDate() {
    return plan(null);
  }

  /** The best of the rules. */
  Plan best() {
    double meanPrint = times.meanPrintS();
    double meanSetUp = Math.max(60, times.meanSetUpS());
    Plan best = earliestDueDate();
    for (double lookAhead : LOOK_AHEAD) {
      for (double setUpWeight : SET_UP_WEIGHT) {
        Plan plan = plan(new Rule(lookAhead * meanPrint, setUpWeight * meanSetUp));
        best = plan.outcome().compareTo(best.outcome()) < 0 ? plan : best;
      }
    }
    return best;
  }

  /**
   * @param rule null for earliest due date
   */
  private Plan plan(Rule rule) {
    int presses = problem.presses().length;
    int runs = problem.movable();
    List<List<Integer>> lines = new ArrayList<>();
    long[] free = new long[presses];
    int[] last = new int[presses];
    for (int press = 0; press < presses; press++) {
      lines.add(new ArrayList<>());
      free[press] = times.openAt(press);
      last[press] = problem.presses()[press].mounted();
    }
    openAll();
    boolean[] done = new boolean[runs];
    boolean[] idle = new boolean[presses];
    for (int placed = 0; placed < runs; ) {
      int press = firstFree(free, idle);
      int run = press < 0 ? -1 : choose(rule, done, press, free[press], last[press]);
      if (press < 0) {
        break;
      }
      if (run < 0) {
        idle[press] = true;
        continue;
      }
      done[run] = true;
      lines.get(press).add(run);
      long start = Math.max(free[press], problem.runs()[run].garmentsFrom());
      free[press] =
          times.endOf(
              press, start, times.setUpS(last[press], run, press) + times.printS(run, press));
      last[press] = run;
      placed++;
      Arrays.fill(idle, false);
    }
    addTheRest(lines, done);
    return judged(lines, problem, simulation);
  }

  /** What no rule could take still stands in a line, so that the search can find it a place. */
  private void addTheRest(List<List<Integer>> lines, boolean[] done) {
    for (int run = 0; run < done.length; run++) {
      for (int press = 0; press < lines.size() && !done[run]; press++) {
        if (problem.runs()[run].presses()[press]) {
          lines.get(press).add(run);
          done[run] = true;
        }
      }
    }
  }

  private static int firstFree(long[] free, boolean[] idle) {
    int best = -1;
    for (int press = 0; press < free.length; press++) {
      if (!idle[press] && (best < 0 || free[press] < free[best])) {
        best = press;
      }
    }
    return best;
  }

  private void openAll() {
    for (int press = 0; press < open.length; press++) {
      openCount[press] = 0;
      for (int run = 0; run < problem.movable(); run++) {
        if (problem.runs()[run].presses()[press]) {
          open[press][openCount[press]++] = run;
        }
      }
    }
  }

  private int choose(Rule rule, boolean[] done, int press, double now, int last) {
    int best = -1;
    double bestIndex = Double.NEGATIVE_INFINITY;
    int[] runs = open[press];
    int left = 0;
    for (int i = 0; i < openCount[press]; i++) {
      int run = runs[i];
      if (done[run]) {
        continue;
      }
      runs[left++] = run;
      // most runs cannot be the best however short their set-up is
      if (rule == null || mostUrgent(rule, run, press, now) > bestIndex) {
        double index = rule == null ? -due[run] : urgency(rule, run, press, now, last);
        if (index > bestIndex && stageOpen(run, done) && order.isOpen(run, done)) {
          best = run;
          bestIndex = index;
        }
      }
    }
    openCount[press] = left;
    return best;
  }

  private double urgency(Rule rule, int run, int press, double now, int last) {
    return urgency(rule, run, press, now, times.setUpS(last, run, press), 0);
  }

  /** An upper bound of the urgency whatever is on the press. */
  private double mostUrgent(Rule rule, int run, int press, double now) {
    return urgency(rule, run, press, now, longestSetUpS[press], longestSetUpS[press]);
  }

  private double urgency(
      Rule rule, int run, int press, double now, double setUpS, double forgivenS) {
    double start = Math.max(now, garmentsFrom[run]);
    double slack = Math.max(0, due[run] - start - setUpS - times.printS(run, press));
    double wait = start - now;
    return urgency[press][run]
        - slack / rule.lookAheadS()
        - (setUpS - forgivenS + wait) / rule.setUpWeightS();
  }

  private boolean stageOpen(int run, boolean[] done) {
    RunSpec spec = problem.runs()[run];
    if (spec.stage() <= 0) {
      return true;
    }
    for (int other : times.runsOfLot(spec.garmentLot())) {
      if (!done[other] && problem.runs()[other].stage() < spec.stage()) {
        return false;
      }
    }
    return true;
  }

  /** Lines of runs by press as a plan, with what the simulation says of them. */
  static Plan judged(List<List<Integer>> lines, Problem problem, Simulation simulation) {
    int[][] sequences = sequences(lines, problem);
    int[] lengths = lines.stream().mapToInt(List::size).toArray();
    return new Plan(sequences, lengths, simulation.run(sequences, lengths, null));
  }

  /** The lines by press, as the planner's wishes want them, with room for all runs. */
  static int[][] sequences(List<List<Integer>> lines, Problem problem) {
    int[][] sequences = new int[lines.size()][];
    PrintOrder order = new PrintOrder(problem);
    for (int press = 0; press < sequences.length; press++) {
      sequences[press] =
          Arrays.copyOf(
              order.inOrder(lines.get(press)).stream().mapToInt(Integer::intValue).toArray(),
              problem.movable());
    }
    return sequences;
  }
}
