package org.potlife.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.Simulation;

/**
 * Dispatch rules: the press that is free first takes the run with the highest index. The rules are
 * earliest due date, and for several factors an index made from apparent tardiness cost with
 * set-ups (Lee, Bhaskaran and Pinedo, A heuristic to minimize the total weighted tardiness with
 * sequence-dependent setups, IIE Transactions 29, 1997, from memory): ours counts of a set-up only
 * what another run before it would avoid, since most of it comes with the run, and as much the
 * staffed time that a press stands idle until the run begins, before closing above all. Each result
 * is judged by the simulation.
 */
final class Dispatch {

  // the factors were found by trial on the cases of docs/benchmarks.md

  private static final double[] LOOK_AHEAD = {0.5, 1, 2, 4};
  private static final double[] LOSS_WEIGHT = {0.15, 0.3, 0.6};

  /** So many of the rehearsed plans are simulated with the rooms; our own choice. */
  private static final int JUDGED = 3;

  /** Sequences by press and what they come to. */
  record Plan(int[][] sequences, int[] lengths, Outcome outcome) {}

  /**
   * By which slack, and by which staffed time lost on a press, a run becomes e times less urgent.
   */
  record Rule(double lookAheadS, double lossWeightS) {}

  private final Problem problem;
  private final DispatchTimes times;
  private final PrintOrder order;
  private final Simulation simulation;
  private final Simulation rehearsal;
  private final RunQueue[] queues;

  Dispatch(Problem problem) {
    this.problem = problem;
    times = new DispatchTimes(problem);
    order = new PrintOrder(problem);
    simulation = new Simulation(problem);
    rehearsal = new Simulation(problem.withoutInk());
    rehearsal.giveScreens(new int[problem.sets().length]);
    queues = new RunQueue[problem.presses().length];
    for (int press = 0; press < queues.length; press++) {
      queues[press] = new RunQueue(problem, times, press);
    }
  }

  /** Earliest due date first. */
  Plan earliestDueDate() {
    return judged(lines(null), problem, simulation);
  }

  /**
   * The best of the rules. All are simulated without the rooms, which take most of the time of a
   * simulation and hardly tell one rule from another, and the best of them with all there is.
   */
  Plan best() {
    Plan best = null;
    List<Plan> rehearsed = rehearsed();
    for (int i = 0; i < rehearsed.size() && (i < JUDGED || best.outcome().unplaced() > 0); i++) {
      Plan plan = judged(rehearsed.get(i));
      best = best == null || plan.outcome().compareTo(best.outcome()) < 0 ? plan : best;
    }
    return best;
  }

  /** What all rules make, with what it comes to without the rooms, the best first. */
  List<Plan> rehearsed() {
    double work = times.meanPrintS() + times.meanSetUpS();
    double avoidable = Math.max(60, times.meanAvoidableSetUpS());
    List<Plan> rehearsed = new ArrayList<>();
    rehearsed.add(judged(lines(null), problem, rehearsal));
    for (double lookAhead : LOOK_AHEAD) {
      for (double lossWeight : LOSS_WEIGHT) {
        Rule rule = new Rule(lookAhead * work, lossWeight * avoidable);
        rehearsed.add(judged(lines(rule), problem, rehearsal));
      }
    }
    rehearsed.sort(Comparator.comparing(Plan::outcome));
    return rehearsed;
  }

  /** The same plan with what it comes to in the whole shop. */
  Plan judged(Plan plan) {
    return new Plan(
        plan.sequences(), plan.lengths(), simulation.run(plan.sequences(), plan.lengths(), null));
  }

  /**
   * The runs by press.
   *
   * @param rule null for earliest due date
   */
  private List<List<Integer>> lines(Rule rule) {
    int presses = problem.presses().length;
    int runs = problem.movable();
    List<List<Integer>> lines = new ArrayList<>();
    int[] free = new int[presses];
    int[] last = new int[presses];
    for (int press = 0; press < presses; press++) {
      lines.add(new ArrayList<>());
      free[press] = times.openAt(press);
      last[press] = problem.presses()[press].mounted();
      queues[press].fill();
    }
    boolean[] done = new boolean[runs];
    boolean[] idle = new boolean[presses];
    IntPredicate isOpen = run -> stageOpen(run, done) && order.isOpen(run, done);
    for (int placed = 0; placed < runs; ) {
      int press = firstFree(free, idle);
      if (press < 0) {
        break;
      }
      int run =
          rule == null
              ? queues[press].dueFirst(free[press], last[press], isOpen)
              : queues[press].mostUrgent(rule, free[press], last[press], isOpen);
      if (run < 0) {
        idle[press] = true;
        continue;
      }
      done[run] = true;
      for (RunQueue queue : queues) {
        queue.remove(run);
      }
      lines.get(press).add(run);
      free[press] = times.endOf(last[press], run, press, free[press]);
      last[press] = run;
      placed++;
      Arrays.fill(idle, false);
    }
    addTheRest(lines, done);
    return lines;
  }

  /** What no rule could take still stands in a line, so that the search can find it a place. */
  void addTheRest(List<List<Integer>> lines, boolean[] done) {
    for (int run = 0; run < done.length; run++) {
      for (int press = 0; press < lines.size() && !done[run]; press++) {
        if (problem.runs()[run].presses()[press]) {
          lines.get(press).add(run);
          done[run] = true;
        }
      }
    }
  }

  /** The press that is free first and not idle; -1 if all are. */
  static int firstFree(int[] free, boolean[] idle) {
    int best = -1;
    for (int press = 0; press < free.length; press++) {
      if (!idle[press] && (best < 0 || free[press] < free[best])) {
        best = press;
      }
    }
    return best;
  }

  /** Whether what is printed before a run on its garments is dispatched. */
  boolean stageOpen(int run, boolean[] done) {
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
