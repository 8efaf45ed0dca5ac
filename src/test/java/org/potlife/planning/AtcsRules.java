package org.potlife.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;
import org.potlife.simulation.StaffedTime;

/**
 * The dispatch rules that plans are held against: earliest due date, and apparent tardiness cost
 * with set-ups as it is published, for sixteen pairs of factors. Lee, Bhaskaran and Pinedo, A
 * heuristic to minimize the total weighted tardiness with sequence-dependent setups, IIE
 * Transactions 29, 1997 (from memory).
 */
final class AtcsRules {

  private static final double[] LOOK_AHEAD = {0.5, 1.5, 3, 6};
  private static final double[] SET_UP_WEIGHT = {0.1, 0.3, 0.8, 2};

  private final Problem problem;
  private final DispatchTimes times;
  private final Dispatch dispatch;

  private AtcsRules(Problem problem) {
    this.problem = problem;
    times = new DispatchTimes(problem);
    dispatch = new Dispatch(problem);
  }

  /** The best of all, simulated with the whole shop. */
  static Dispatch.Plan best(Problem problem) {
    AtcsRules rules = new AtcsRules(problem);
    Simulation simulation = new Simulation(problem);
    Dispatch.Plan best = rules.dispatch.earliestDueDate();
    double print = rules.times.meanPrintS();
    double setUp = Math.max(60, rules.times.meanSetUpS());
    for (double lookAhead : LOOK_AHEAD) {
      for (double weight : SET_UP_WEIGHT) {
        List<List<Integer>> lines = rules.lines(lookAhead * print, weight * setUp);
        Dispatch.Plan plan = Dispatch.judged(lines, problem, simulation);
        best = plan.outcome().compareTo(best.outcome()) < 0 ? plan : best;
      }
    }
    return best;
  }

  private List<List<Integer>> lines(double lookAheadS, double setUpWeightS) {
    int presses = problem.presses().length;
    List<List<Integer>> lines = new ArrayList<>();
    int[] free = new int[presses];
    int[] last = new int[presses];
    for (int press = 0; press < presses; press++) {
      lines.add(new ArrayList<>());
      free[press] = times.openAt(press);
      last[press] = problem.presses()[press].mounted();
    }
    PrintOrder order = new PrintOrder(problem);
    boolean[] done = new boolean[problem.movable()];
    boolean[] idle = new boolean[presses];
    int press = Dispatch.firstFree(free, idle);
    while (press >= 0) {
      int best = -1;
      double highest = Double.NEGATIVE_INFINITY;
      for (int run = 0; run < done.length; run++) {
        if (!done[run]
            && problem.runs()[run].presses()[press]
            && dispatch.stageOpen(run, done)
            && order.isOpen(run, done)) {
          double index = index(run, press, free[press], last[press], lookAheadS, setUpWeightS);
          if (index > highest) {
            highest = index;
            best = run;
          }
        }
      }
      if (best < 0) {
        idle[press] = true;
      } else {
        take(best, press, free, last);
        done[best] = true;
        lines.get(press).add(best);
        Arrays.fill(idle, false);
      }
      press = Dispatch.firstFree(free, idle);
    }
    dispatch.addTheRest(lines, done);
    return lines;
  }

  private double index(
      int run, int press, int free, int last, double lookAheadS, double setUpWeightS) {
    var order = problem.orders()[problem.runs()[run].order()];
    double printS = times.printS(run, press);
    double start = Math.max(free, problem.runs()[run].garmentsFrom());
    double setUpS = times.setUpS(last, run, press);
    double slack = Math.max(0, order.dueAt() - start - setUpS - printS);
    return Math.log(Math.max(1, order.weight()) / printS)
        - slack / lookAheadS
        - (setUpS + start - free) / setUpWeightS;
  }

  private void take(int run, int press, int[] free, int[] last) {
    int start = Math.max(free[press], problem.runs()[run].garmentsFrom());
    double work = times.setUpS(last[press], run, press) + times.printS(run, press);
    free[press] =
        start >= StaffedTime.NEVER
            ? start
            : problem.presses()[press].staffed().add(start, (int) Math.ceil(work));
    last[press] = run;
  }
}
