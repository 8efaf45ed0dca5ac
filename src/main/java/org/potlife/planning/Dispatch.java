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

  private interface Index {
    double of(int run, int press, long now, int lastRun);
  }

  private final Problem problem;
  private final DispatchTimes times;
  private final Simulation simulation;

  Dispatch(Problem problem) {
    this.problem = problem;
    times = new DispatchTimes(problem);
    simulation = new Simulation(problem);
  }

  /** Earliest due date first. */
  Plan earliestDueDate() {
    return plan((run, press, now, last) -> -problem.orders()[problem.runs()[run].order()].dueAt());
  }

  /** The best of the rules. */
  Plan best() {
    Plan best = earliestDueDate();
    for (double lookAhead : LOOK_AHEAD) {
      for (double setUpWeight : SET_UP_WEIGHT) {
        Plan plan = plan(atcs(lookAhead, setUpWeight));
        best = plan.outcome().compareTo(best.outcome()) < 0 ? plan : best;
      }
    }
    return best;
  }

  private Index atcs(double lookAhead, double setUpWeight) {
    double meanPrint = times.meanPrintS();
    double meanSetUp = Math.max(60, times.meanSetUpS());
    return (run, press, now, last) -> {
      RunSpec spec = problem.runs()[run];
      double print = times.printS(run, press);
      double setUp = times.setUpS(last, run, press);
      double start = Math.max(now, spec.garmentsFrom());
      double slack = Math.max(0, problem.orders()[spec.order()].dueAt() - start - setUp - print);
      double wait = start - now;
      int weight = Math.max(1, problem.orders()[spec.order()].weight());
      return Math.log(weight / print)
          - slack / (lookAhead * meanPrint)
          - (setUp + wait) / (setUpWeight * meanSetUp);
    };
  }

  private Plan plan(Index index) {
    int presses = problem.presses().length;
    int runs = problem.movable();
    List<List<Integer>> lines = new ArrayList<>();
    long[] free = new long[presses];
    int[] last = new int[presses];
    for (int press = 0; press < presses; press++) {
      lines.add(new ArrayList<>());
      free[press] = Math.max(problem.presses()[press].openFrom(), times.freeAt(press));
      last[press] = problem.presses()[press].mounted();
    }
    boolean[] done = new boolean[runs];
    boolean[] idle = new boolean[presses];
    for (int placed = 0; placed < runs; ) {
      int press = firstFree(free, idle);
      int run = press < 0 ? -1 : choose(index, done, press, free[press], last[press]);
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

  private int choose(Index index, boolean[] done, int press, long now, int last) {
    int best = -1;
    double bestIndex = 0;
    for (int run = 0; run < done.length; run++) {
      if (!done[run] && problem.runs()[run].presses()[press] && stageOpen(run, done)) {
        double value = index.of(run, press, now, last);
        if (best < 0 || value > bestIndex) {
          best = run;
          bestIndex = value;
        }
      }
    }
    return best;
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
    int[][] sequences = new int[lines.size()][];
    int[] lengths = new int[lines.size()];
    for (int press = 0; press < sequences.length; press++) {
      sequences[press] =
          Arrays.copyOf(
              lines.get(press).stream().mapToInt(Integer::intValue).toArray(), problem.movable());
      lengths[press] = lines.get(press).size();
    }
    return new Plan(sequences, lengths, simulation.run(sequences, lengths, null));
  }
}
