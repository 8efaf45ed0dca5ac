package org.potlife.planning;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Simulated annealing on the lines of all presses, in rounds that start from the best plan so far:
 * each is longer than the one before, so that a search that is stopped early has already cooled
 * down several times. S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by Simulated
 * Annealing, Science 220, 1983 (from memory).
 *
 * <p>Lateness and cost have temperatures of their own, since no cost outweighs lateness. A change
 * is first judged by {@link LineGuess}; only what that finds worth a try is simulated. Where the
 * guess has been right, several changes that it accepts are simulated together, and what they come
 * to is held against what was guessed (surrogate transitions: J. S. Liu, Monte Carlo Strategies in
 * Scientific Computing, 2001, from memory).
 *
 * <p>Long, because a change, what is guessed of it, its simulation and the temperatures that decide
 * on it work on the same lines: apart they would hand all of that to each other at every change.
 */
final class Annealing {

  // the figures below were found by trial on the cases of docs/benchmarks.md

  /** Start temperature of a long round against the size of its smaller steps. */
  private static final double HOT = 0.6;

  /** Work per run of a long round; a shorter one starts so much colder. */
  private static final double LONG = 900;

  /** The last temperature of a round against its first. */
  private static final double COLD = 0.01;

  /** Steps that are measured before a round, and the share of them that counts as smaller. */
  private static final int SAMPLES = 60;

  private static final double QUANTILE = 0.1;

  /** How far the guess may be off, in temperatures. */
  private static final double LOOSE = 1.5;

  /** Share of the changes that seem to change nothing which are simulated all the same. */
  private static final double IDLE_CHANGES = 0.1;

  /** Work per run of the first round, of each against the one before, and at most. */
  private static final double FIRST = 60;

  private static final double GROWTH = 2.5;
  private static final double MOST = 3000;

  /** With fewer runs a simulation is about as quick as a guess, so that each change has its own. */
  private static final int GUESS_FROM = 25;

  /** Changes simulated together: at most, and how their number follows right and wrong guesses. */
  private static final double MOST_TOGETHER = 1000;

  private static final double MORE = 1.15;
  private static final double FEWER = 0.87;

  /** Changes that are only rehearsed before the whole shop is simulated: at first, and at most. */
  private static final double FIRST_SETTLING = 8;

  private static final double MOST_UNSETTLED = 500;

  /** With so many runs more, one change more that may pay is looked at for each simulation. */
  private static final int RUNS_PER_CHOICE = 500;

  /** Looks for changes before those found so far are simulated. */
  private static final int MOST_LOOKS = 5000;

  /** A round that found nothing better is followed by a hotter one, up to this. */
  private static final double MOST_HEAT = 8;

  /**
   * Share of the published runs that a new plan may put on another press, since a change costs
   * (R22); our own choice. In a small shop so many runs at least.
   */
  private static final double MOVED_AT_MOST = 0.1;

  private static final int MOVED_AT_LEAST_ALLOWED = 3;

  /** So many simulations, each come out as guessed, make the guess exact. */
  private static final int EXACT_FROM = 20;

  private final Lines.Change chosen;
  private final int choice;
  private final Problem problem;
  private final Rehearsal rehearsal;
  private final Budget budget;
  private final SplittableRandom random;
  private final Lines lines;
  private final LineMoves moves;
  private final PrintOrder order;
  private final LineGuess guess;
  private final Incumbent incumbent;

  private final int[][] begun;
  private final int[] begunLengths;

  /** The lines as they were when the whole shop was last simulated, and what they came to. */
  private final int[][] settled;

  private final int[] settledLengths;
  private Outcome settledOutcome;
  private Outcome rehearsedThen;
  private int unsettled;
  private double settleAfter = FIRST_SETTLING;
  private final LineDescent descent;
  private double together = 1;
  private int rightGuesses;
  private boolean guessedWrong;
  private boolean guessedRight;
  private boolean descendNext;
  private boolean inkNext;
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

  Annealing(Problem problem, boolean verify, long seed, Budget budget, Incumbent incumbent) {
    this.problem = problem;
    this.budget = budget;
    this.incumbent = incumbent;
    random = new SplittableRandom(seed);
    lines = new Lines(problem.presses().length, problem.movable());
    rehearsal = new Rehearsal(problem, lines, verify);
    DispatchTimes times = new DispatchTimes(problem);
    guess = new LineGuess(problem, lines, times);
    order = new PrintOrder(problem);
    choice = Math.max(1, problem.movable() / RUNS_PER_CHOICE);
    chosen = new Lines.Change(problem.movable());
    moves = new LineMoves(problem, lines, guess::endOf, new Kin(problem, times), random);
    descent = new LineDescent(guess, budget, random);
    begun = new int[problem.presses().length][problem.movable()];
    begunLengths = new int[begun.length];
    settled = new int[begun.length][problem.movable()];
    settledLengths = new int[begun.length];
  }

  /** Looks for plans that are better than the best so far. */
  void improve() {
    best = incumbent.best();
    limitMoves();
    double work = FIRST * problem.movable();
    while (!budget.over()) {
      double used = budget.used();
      double perWork = budget.work() == 0 ? 0 : used / budget.work();
      double length = perWork == 0 ? 0.02 : work * perWork;
      if (used + 1.7 * length > 1) {
        length = 1 - used;
      }
      Outcome before = best.outcome();
      // with one press there is nothing that lines could exchange
      descendNext = isExact() && (!descendNext || begun.length == 1);
      int press = descendNext ? random.nextInt(begun.length) : -1;
      lines.set(best.sequences(), best.lengths());
      inkNext = !inkNext;
      rehearsal.withInk(
          inkNext || best.outcome().unplaced() > 0 || best.outcome().weightedLateMinutes() == 0);
      if (descendNext && LineDescent.suits(lines.length(press))) {
        descend(press, used + Math.max(1e-9, length));
      } else {
        round(used, Math.max(1e-9, length));
      }
      best = incumbent.best();
      heat = best.outcome().equals(before) ? Math.min(MOST_HEAT, heat * 2) : 1;
      work = Math.min(work * GROWTH, MOST * problem.movable());
    }
  }

  private void round(double from, double length) {
    begin(rehearsal.simulate());
    measureSteps();
    double hot = heat * HOT * Math.min(1, workOf(length) / (LONG * problem.movable()));
    double hotLate = hot * quantile(lateSteps, lateCount);
    double hotCost = hot * quantile(costSteps, costCount);
    while (true) {
      double done = (budget.used() - from) / length;
      if (done >= 1 || budget.over()) {
        settle();
        return;
      }
      double cooling = Math.pow(COLD, done);
      lateTemperature = hotLate * cooling;
      costTemperature = hotCost * cooling;
      changeSeveral();
      if (unsettled >= settleAfter) {
        settle();
      }
    }
  }

  /** About what a share of the budget allows. */
  private double workOf(double share) {
    double used = budget.used();
    return used == 0 ? FIRST * problem.movable() : share * budget.work() / used;
  }

  private boolean isExact() {
    // the guess does not know what the planner wants before what
    return order.isFree() && !guessedWrong && rightGuesses >= EXACT_FROM;
  }

  private void hold(Outcome outcome, long guessedLate) {
    boolean right =
        outcome.unplaced() == current.unplaced()
            && outcome.weightedLateMinutes() - current.weightedLateMinutes() == guessedLate;
    guessedWrong |= !right;
    guessedRight = right;
    rightGuesses++;
  }

  /** Improves one line by itself: where the guess is exact that is quicker than to cool. */
  private void descend(int press, double until) {
    begin(rehearsal.simulate());
    descent.improve(
        press, lines.runs()[press], lines.length(press), until, line -> take(press, line));
  }

  private void take(int press, int[] line) {
    int[][] changed = lines.copyOfRuns();
    System.arraycopy(line, 0, changed[press], 0, line.length);
    lines.set(changed, lines.lengths());
    budget.evaluated();
    Outcome outcome = rehearsal.simulate();
    if (outcome.compareTo(current) < 0) {
      accept(outcome);
      offer(outcome);
    } else {
      // the guess was not exact after all
      guessedWrong = true;
    }
  }

  /** Runs of the published plan that stand on another press (R22). */
  private int movedRuns() {
    int moved = 0;
    for (int run = 0; run < problem.movable(); run++) {
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
    mostMoved =
        published == 0
            ? Integer.MAX_VALUE
            : Math.max(
                movedRuns(),
                Math.max(MOVED_AT_LEAST_ALLOWED, (int) Math.ceil(published * MOVED_AT_MOST)));
  }

  /** Looks at some changes, to see how much a change makes of lateness and cost here. */
  private void measureSteps() {
    lateCount = 0;
    costCount = 0;
    for (int i = 0; i < SAMPLES; i++) {
      if (moves.change()) {
        guess.ofLastChange();
        note(guess.lateMinutes(), Math.round(costOf(guess.setUpS())));
        lines.undo();
      }
    }
    for (int i = 0; i < SAMPLES && lateCount + costCount == 0 && !budget.over(); i++) {
      trySome();
    }
  }

  /** Where neither lateness nor set-ups tell, the simulation does. */
  private void trySome() {
    for (int i = 0; i < SAMPLES && !budget.over(); i++) {
      budget.glanced();
      if (moves.change()) {
        Outcome outcome = rehearsal.rehearse();
        budget.evaluated();
        lines.undo();
        if (outcome.unplaced() == current.unplaced()) {
          note(
              outcome.weightedLateMinutes() - current.weightedLateMinutes(),
              outcome.costMilli() - current.costMilli());
        }
      }
    }
  }

  private void note(long late, long cost) {
    if (late > 0 && lateCount < SAMPLES) {
      lateSteps[lateCount++] = late;
    }
    if (cost > 0 && costCount < SAMPLES) {
      costSteps[costCount++] = cost;
    }
  }

  private double costOf(long setUpSeconds) {
    return setUpSeconds * (double) problem.costs().setUpPerHour() / 3600;
  }

  private static double quantile(long[] steps, int count) {
    Arrays.sort(steps, 0, count);
    return count == 0 ? 1 : Math.max(1, steps[(int) (count * QUANTILE)]);
  }

  /** Changes that the guess accepts; one simulation then accepts or refuses them together. */
  private void changeSeveral() {
    remember();
    int wanted = (int) together;
    int kept = 0;
    long late = 0;
    double cost = 0;
    double patience = 0;
    if (wanted == 1 && choice > 1) {
      long bestLate = Long.MAX_VALUE;
      long bestSetUp = 0;
      int found = 0;
      for (int looks = 0; looks < choice * 50 && found < choice; looks++) {
        budget.glanced();
        double p = patience();
        if (change() && worthKeeping(LOOSE * p + LOOSE)) {
          found++;
          if (guess.lateMinutes() < bestLate
              || guess.lateMinutes() == bestLate && guess.setUpS() < bestSetUp) {
            bestLate = guess.lateMinutes();
            bestSetUp = guess.setUpS();
            lines.note(chosen);
            patience = p;
            moves.note();
          }
          lines.undo();
        } else {
          moves.learnNothing();
        }
      }
      if (found > 0) {
        moves.recall();
        lines.redo(chosen);
        guess.ofLastChange();
        guess.keep();
        kept = 1;
        late = guess.lateMinutes();
      }
    }
    for (int looks = 0; looks < MOST_LOOKS && kept < wanted; looks++) {
      budget.glanced();
      patience = patience();
      if (change() && worthKeeping(wanted == 1 ? LOOSE * patience + LOOSE : patience)) {
        guess.keep();
        kept++;
        late += guess.lateMinutes();
        cost += costOf(guess.setUpS());
        if (wanted > 1) {
          moves.learn(guess.isBetter());
        }
      } else {
        moves.learnNothing();
      }
    }
    if (kept == 0) {
      return;
    }
    budget.evaluated();
    if (wanted == 1) {
      decide(late, patience);
    } else {
      Outcome outcome = rehearsal.rehearseAsBase();
      hold(outcome, late);
      decideTogether(outcome, late, cost);
    }
  }

  private void begin(Outcome outcome) {
    settledOutcome = outcome;
    current = rehearsal.rehearseAsBase();
    if (current.unplaced() > 0 && !rehearsal.isWithInk()) {
      rehearsal.withInk(true);
      rehearsal.simulate();
      current = rehearsal.rehearseAsBase();
    }
    rehearsedThen = current;
    unsettled = 0;
    guess.learn(rehearsal.base());
    for (int press = 0; press < settled.length; press++) {
      System.arraycopy(lines.runs()[press], 0, settled[press], 0, lines.length(press));
      settledLengths[press] = lines.length(press);
    }
  }

  /**
   * Simulates the whole shop once more: what was only rehearsed stays if it comes to about the
   * same, else it is taken back.
   */
  private void settle() {
    if (unsettled == 0) {
      return;
    }
    long late = current.weightedLateMinutes() - rehearsedThen.weightedLateMinutes();
    double cost = current.costMilli() - rehearsedThen.costMilli();
    budget.evaluated();
    Outcome outcome = rehearsal.simulate();
    current = settledOutcome;
    double penalty = Math.min(penalty(outcome, 0, 0), penalty(outcome, late, cost));
    boolean right = outcome.weightedLateMinutes() - current.weightedLateMinutes() == late;
    settleAfter =
        right ? Math.min(MOST_UNSETTLED, settleAfter * MORE) : Math.max(1, settleAfter * FEWER);
    if (penalty <= patience()) {
      begin(outcome);
      offer(outcome);
    } else {
      lines.set(settled, settledLengths);
      begin(rehearsal.simulate());
    }
  }

  private void remember() {
    for (int press = 0; press < begun.length; press++) {
      System.arraycopy(lines.runs()[press], 0, begun[press], 0, lines.length(press));
      begunLengths[press] = lines.length(press);
    }
  }

  private double patience() {
    return -Math.log(1 - random.nextDouble());
  }

  private void decide(long guessedLate, double patience) {
    boolean whole =
        rehearsal.isWithInk()
            && (current.unplaced() > 0
                || (rehearsal.waitsForScreens(moves.run()) && random.nextBoolean()));
    Outcome outcome = whole ? rehearsal.whole() : rehearsal.rehearse();
    hold(outcome, guessedLate);
    moves.learn(outcome.compareTo(current) < 0);
    boolean accepted = penalty(outcome, 0, 0) <= patience;
    if (accepted && !whole) {
      rehearsal.rehearseAsBase();
    }
    end(outcome, accepted);
    if (accepted && whole) {
      settle();
    }
  }

  private void decideTogether(Outcome outcome, long guessedLate, double guessedCost) {
    double penalty = Math.min(penalty(outcome, 0, 0), penalty(outcome, guessedLate, guessedCost));
    end(outcome, penalty <= patience());
  }

  private void end(Outcome outcome, boolean accepted) {
    boolean more = accepted && guessedRight && !isSmall();
    together = more ? Math.min(MOST_TOGETHER, together * MORE) : Math.max(1, together * FEWER);
    if (accepted) {
      accept(outcome);
    } else {
      lines.set(begun, begunLengths);
      guess.forget();
    }
  }

  /** Changes the lines; false if nothing came of it. */
  private boolean change() {
    if (!moves.change()) {
      return false;
    }
    if (!order.isKept(lines)
        || (mostMoved < Integer.MAX_VALUE
            && lines.changedPress(1) >= 0
            && movedRuns() > mostMoved)) {
      lines.undo();
      return false;
    }
    return true;
  }

  private boolean isSmall() {
    return problem.movable() < GUESS_FROM;
  }

  /** Takes the last change back if the guess finds it worse than patience allows. */
  private boolean worthKeeping(double patience) {
    guess.ofLastChange();
    long late = guess.lateMinutes();
    boolean worth;
    if (isSmall()) {
      worth = true;
    } else if (late != 0) {
      worth = late <= patience * lateTemperature;
    } else if (guess.setUpS() != 0) {
      worth = costOf(guess.setUpS()) <= patience * costTemperature;
    } else {
      worth = random.nextDouble() < IDLE_CHANGES;
    }
    if (!worth) {
      lines.undo();
    }
    return worth;
  }

  /** How much worse the outcome is than the current one and what was guessed, in temperatures. */
  private double penalty(Outcome outcome, long guessedLate, double guessedCost) {
    if (outcome.unplaced() != current.unplaced()) {
      return outcome.unplaced() < current.unplaced() ? 0 : Double.MAX_VALUE;
    }
    long late = outcome.weightedLateMinutes() - current.weightedLateMinutes();
    if (late != guessedLate) {
      return Math.max(0, (late - guessedLate) / lateTemperature);
    }
    return Math.max(0, (outcome.costMilli() - current.costMilli() - guessedCost) / costTemperature);
  }

  /** The lines have become the base already. */
  private void accept(Outcome outcome) {
    guess.learn(rehearsal.base());
    current = outcome;
    unsettled++;
    if (rehearsal.isWhole()) {
      offer(current);
    }
  }

  /** What they come to has been simulated with all that there is. */
  private void offer(Outcome outcome) {
    if (outcome.compareTo(best.outcome()) < 0) {
      best = new Dispatch.Plan(lines.copyOfRuns(), lines.lengths().clone(), outcome);
      incumbent.offer(best);
    }
  }
}
