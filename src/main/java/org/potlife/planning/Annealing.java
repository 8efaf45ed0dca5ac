package org.potlife.planning;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/**
 * Simulated annealing on the lines of all presses, in rounds that start from the best plan so far:
 * each is longer than the one before, so that a search that is stopped early has already cooled
 * down several times. S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by Simulated
 * Annealing, Science 220, 1983 (from memory).
 *
 * <p>Lateness and cost have temperatures of their own, since no cost outweighs lateness. A change
 * is first judged by {@link LineGuess}; only what that finds worth a try is simulated.
 */
final class Annealing {

  /** Start temperature of a round against the size of its smaller steps. */
  private static final double HOT = 0.3;

  /** The last temperature of a round against its first. */
  private static final double COLD = 0.01;

  /** Steps that are measured before a round, and the share of them that counts as smaller. */
  private static final int SAMPLES = 60;

  private static final double QUANTILE = 0.1;

  /** How far the guess may be off, in temperatures. */
  private static final double LOOSE = 1.5;

  /** Share of the changes that seem to change nothing which are simulated all the same. */
  private static final double IDLE_CHANGES = 0.1;

  /** Evaluations per run of the first round, of each against the one before, and at most. */
  private static final double FIRST = 60;

  private static final double GROWTH = 2.5;
  private static final double MOST = 3000;

  /** With fewer runs a simulation is about as quick as a guess. */
  private static final int GUESS_FROM = 25;

  /** A round that found nothing better is followed by a hotter one, up to this. */
  private static final double MOST_HEAT = 8;

  /**
   * Share of the published runs that a new plan may put on another press, since a change costs
   * (R22); our own choice. In a small shop so many runs at least.
   */
  private static final double MOVED_AT_MOST = 0.1;

  private static final int MOVED_AT_LEAST_ALLOWED = 3;

  private final Problem problem;
  private final SequenceEvaluator evaluator;
  private final Budget budget;
  private final SplittableRandom random;
  private final Lines lines;
  private final LineMoves moves;
  private final LineGuess guess;
  private final Consumer<Outcome> improved;

  private int mostMoved;
  private final long[] lateSteps = new long[SAMPLES];
  private final long[] costSteps = new long[SAMPLES];
  private int lateCount;
  private int costCount;
  private Outcome current;
  private Dispatch.Plan best;
  private double heat = 1;
  private double lateTemperature;
  private double costTemperature;

  Annealing(Problem problem, boolean verify, long seed, Budget budget, Consumer<Outcome> improved) {
    this.problem = problem;
    this.budget = budget;
    this.improved = improved;
    evaluator = new SequenceEvaluator(problem, verify);
    random = new SplittableRandom(seed);
    lines = new Lines(problem.presses().length, problem.movable());
    DispatchTimes times = new DispatchTimes(problem);
    moves = new LineMoves(problem, lines, evaluator::endOf, new Kin(problem, times), random);
    guess =
        problem.movable() < GUESS_FROM
            ? null
            : new LineGuess(problem, lines, evaluator::endOf, times);
  }

  /** The best plan found within the budget; never worse than the first. */
  Dispatch.Plan improve(Dispatch.Plan first) {
    best = first;
    limitMoves();
    double evaluations = FIRST * problem.movable();
    while (!budget.over()) {
      double used = budget.used();
      double perEvaluation = budget.evaluations() == 0 ? 0 : used / budget.evaluations();
      double length = perEvaluation == 0 ? 0.02 : evaluations * perEvaluation;
      if (used + 1.7 * length > 1) {
        length = 1 - used;
      }
      Outcome before = best.outcome();
      round(used, Math.max(1e-9, length));
      heat = best.outcome().equals(before) ? Math.min(MOST_HEAT, heat * 2) : 1;
      evaluations = Math.min(evaluations * GROWTH, MOST * problem.movable());
    }
    return best;
  }

  private void round(double from, double length) {
    lines.set(best.sequences(), best.lengths());
    current = evaluate();
    measureSteps();
    double hotLate = heat * HOT * quantile(lateSteps, lateCount);
    double hotCost = heat * HOT * quantile(costSteps, costCount);
    while (true) {
      double done = (budget.used() - from) / length;
      if (done >= 1 || budget.over()) {
        return;
      }
      double cooling = Math.pow(COLD, done);
      lateTemperature = hotLate * cooling;
      costTemperature = hotCost * cooling;
      for (int i = 0; i < 16; i++) {
        step();
      }
    }
  }

  /** Runs of the published plan that stand on another press (R22). */
  private int movedRuns() {
    int moved = 0;
    for (int run = 0; run < problem.movable() && mostMoved < Integer.MAX_VALUE; run++) {
      int press = problem.publishedPress()[run];
      moved += press >= 0 && press != lines.pressOf(run) ? 1 : 0;
    }
    return moved;
  }

  private void limitMoves() {
    lines.set(best.sequences(), best.lengths());
    int published = 0;
    for (int run = 0; run < problem.movable(); run++) {
      published += problem.publishedPress()[run] >= 0 ? 1 : 0;
    }
    mostMoved = 0;
    mostMoved =
        published == 0
            ? Integer.MAX_VALUE
            : Math.max(
                movedRuns(),
                Math.max(MOVED_AT_LEAST_ALLOWED, (int) Math.ceil(published * MOVED_AT_MOST)));
  }

  /** Tries some changes, to see how much a change makes of lateness and cost here. */
  private void measureSteps() {
    lateCount = 0;
    costCount = 0;
    for (int i = 0; i < SAMPLES && !budget.over(); i++) {
      if (moves.change()) {
        Outcome outcome = evaluate();
        budget.evaluated();
        lines.undo();
        long late = outcome.weightedLateMinutes() - current.weightedLateMinutes();
        long cost = outcome.costMilli() - current.costMilli();
        if (outcome.unplaced() == current.unplaced() && late > 0) {
          lateSteps[lateCount++] = late;
        }
        if (outcome.unplaced() == current.unplaced() && cost > 0) {
          costSteps[costCount++] = cost;
        }
      } else {
        budget.glanced();
      }
    }
  }

  private static double quantile(long[] steps, int count) {
    Arrays.sort(steps, 0, count);
    return count == 0 ? 1 : Math.max(1, steps[(int) (count * QUANTILE)]);
  }

  private void step() {
    if (!moves.change()) {
      moves.learnNothing();
      budget.glanced();
      return;
    }
    if (lines.changedPress(1) >= 0 && movedRuns() > mostMoved) {
      lines.undo();
      moves.learnNothing();
      budget.glanced();
      return;
    }
    double patience = -Math.log(1 - random.nextDouble());
    if (guess != null && !worthTrying(patience)) {
      lines.undo();
      moves.learnNothing();
      budget.glanced();
      return;
    }
    Outcome outcome = evaluate();
    budget.evaluated();
    moves.learn(outcome.compareTo(current) < 0);
    if (penalty(outcome) <= patience) {
      accept(outcome);
    } else {
      lines.undo();
    }
  }

  private Outcome evaluate() {
    return evaluator.evaluate(lines.runs(), lines.lengths());
  }

  private boolean worthTrying(double patience) {
    guess.ofLastChange();
    long late = guess.lateMinutes();
    if (late < 0) {
      return true;
    }
    if (late == 0 && guess.setUpS() == 0) {
      return random.nextDouble() < IDLE_CHANGES;
    }
    double cost = guess.setUpS() * (double) problem.costs().setUpPerHour() / 3600;
    double penalty = late / lateTemperature + (late > 0 ? 0 : Math.max(0, cost) / costTemperature);
    return penalty <= LOOSE * patience + LOOSE;
  }

  /** How much worse the outcome is than the current one, in temperatures. */
  private double penalty(Outcome outcome) {
    if (outcome.unplaced() != current.unplaced()) {
      return outcome.unplaced() < current.unplaced() ? 0 : Double.MAX_VALUE;
    }
    long late = outcome.weightedLateMinutes() - current.weightedLateMinutes();
    if (late != 0) {
      return Math.max(0, late / lateTemperature);
    }
    return Math.max(0, (outcome.costMilli() - current.costMilli()) / costTemperature);
  }

  private void accept(Outcome outcome) {
    if (!outcome.equals(current)) {
      evaluate();
    }
    current = outcome;
    if (outcome.compareTo(best.outcome()) < 0) {
      best = new Dispatch.Plan(lines.copyOfRuns(), lines.lengths().clone(), outcome);
      improved.accept(outcome);
    }
  }
}
