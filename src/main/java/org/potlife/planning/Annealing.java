package org.potlife.planning;

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
 * <p>A change is first judged by {@link LineGuess}; only what that finds worth a try is rehearsed,
 * and the whole shop is simulated now and then ({@link Settling}). Where the guess has been right,
 * several changes that it accepts are simulated together, and what they come to is held against
 * what was guessed (surrogate transitions: J. S. Liu, Monte Carlo Strategies in Scientific
 * Computing, 2001, from memory).
 */
final class Annealing {

  // the figures below were found by trial on the cases of docs/benchmarks.md

  /** Start temperature of a long round against the size of its smaller steps. */
  private static final double HOT = 0.6;

  /** Work per run of a long round; a shorter one starts colder, by this power of its share. */
  private static final double LONG = 900;

  private static final double QUENCH = 1.5;

  /** The last temperature of a round against its first. */
  private static final double COLD = 0.01;

  /** Work per run of the first round, of each against the one before, and at most. */
  private static final double FIRST = 60;

  private static final double GROWTH = 2.5;
  private static final double MOST = 3000;

  /** Changes simulated together: at most, and how their number follows right and wrong guesses. */
  private static final double MOST_TOGETHER = 1000;

  private static final double MORE = 1.15;
  private static final double FEWER = 0.87;

  /** A guess is right if it is no further off, in temperatures. */
  private static final double NEARLY = 1;

  /** Share of the lateness behind a set-up at which a round begins to price it. */
  private static final double PRICED = 1;

  /** The price goes down in so many steps, and is 0 for the rest of the round. */
  private static final int PRICE_STEPS = 5;

  private static final double PRICED_UNTIL = 0.8;

  /** A round that found nothing better is followed by a hotter one, up to this. */
  private static final double MOST_HEAT = 8;

  /** So many simulations, each come out as guessed, make the guess exact. */
  private static final int EXACT_FROM = 20;

  private final Problem problem;
  private final Budget budget;
  private final Incumbent incumbent;
  private final SplittableRandom random;
  private final Lines lines;
  private final Lines.Copy begun;
  private final Rehearsal rehearsal;
  private final Temperatures temperatures = new Temperatures();
  private final StepSizes stepSizes = new StepSizes();
  private final Settling settling;
  private final LineGuess guess;
  private final LineMoves moves;
  private final FewMoves fewMoves;
  private final WorthATry worthATry;
  private final LineDescent descent;
  private final boolean hasPrices;
  private double together = 1;
  private int rightGuesses;
  private boolean guessedWrong;
  private boolean guessedRight;
  private boolean descendNext;
  private boolean inkNext;
  private Outcome current;
  private Dispatch.Plan best;
  private double heat = 1;
  private double price;

  Annealing(Problem problem, boolean verify, long seed, Budget budget, Incumbent incumbent) {
    this.problem = problem;
    this.budget = budget;
    this.incumbent = incumbent;
    random = new SplittableRandom(seed);
    lines = new Lines(problem.presses().length, problem.movable());
    begun = lines.newCopy();
    DispatchTimes times = new DispatchTimes(problem);
    ShadowPrices prices = new ShadowPrices(problem, lines, times);
    rehearsal = new Rehearsal(problem, lines, prices, verify);
    settling = new Settling(lines, rehearsal, temperatures);
    guess = new LineGuess(problem, lines, times, prices);
    moves = new LineMoves(problem, lines, guess::endOf, times, random);
    fewMoves = new FewMoves(problem);
    worthATry = new WorthATry(problem, lines, guess, moves, fewMoves, temperatures, budget, random);
    descent = new LineDescent(guess, budget, random);
    hasPrices = prices.exist();
  }

  /** Looks for plans that are better than the best so far. */
  void improve() {
    best = incumbent.best();
    lines.set(best.sequences(), best.lengths());
    fewMoves.beginWith(lines);
    double work = FIRST * problem.movable();
    while (!budget.over()) {
      double used = budget.used();
      double perWork = budget.work() == 0 ? 0 : used / budget.work();
      double length = perWork == 0 ? 0.02 : work * perWork;
      if (used + 1.7 * length > 1) {
        length = 1 - used;
      }
      Outcome before = best.outcome();
      int presses = problem.presses().length;
      // with one press there is nothing that lines could exchange
      descendNext = isExact() && (!descendNext || presses == 1);
      int press = descendNext ? random.nextInt(presses) : -1;
      lines.set(best.sequences(), best.lengths());
      inkNext = !inkNext;
      // what ink costs is all there is to gain where nothing is late
      rehearsal.withInk(inkNext || before.unplaced() > 0 || before.weightedLateMinutes() == 0);
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
    settling.begin();
    takeOver();
    measureSteps();
    double ofLong = Math.min(1, workOf(length) / (LONG * problem.movable()));
    double hot = heat * HOT * Math.pow(ofLong, QUENCH);
    double hotLate = hot * stepSizes.late();
    double hotCost = hot * stepSizes.cost();
    boolean isPriced = hasPrices && settling.outcome().weightedLateMinutes() > 0;
    while (true) {
      double done = (budget.used() - from) / length;
      if (done >= 1 || budget.over()) {
        settle();
        if (price != 0) {
          price(0);
        }
        return;
      }
      double wanted = isPriced ? priceAt(done) : 0;
      if (wanted != price) {
        settle();
        price(wanted);
      }
      double cooling = Math.pow(COLD, done);
      temperatures.set(hotLate * cooling, hotCost * cooling);
      changeSome();
      if (settling.isDue()) {
        settle();
      }
    }
  }

  private static double priceAt(double done) {
    int step = (int) Math.min(PRICE_STEPS, done / PRICED_UNTIL * PRICE_STEPS);
    return PRICED * (PRICE_STEPS - step) / PRICE_STEPS;
  }

  /** Prices set-ups anew; what the lines come to is worked out again. */
  private void price(double share) {
    price = share;
    guess.priceAgain(share);
    settling.begin();
    takeOver();
  }

  /** About what a share of the budget allows. */
  private double workOf(double share) {
    double used = budget.used();
    return used == 0 ? FIRST * problem.movable() : share * budget.work() / used;
  }

  private boolean isExact() {
    return worthATry.isFree() && !guessedWrong && rightGuesses >= EXACT_FROM;
  }

  private void hold(Outcome outcome, long guessedLate) {
    long off = outcome.weightedLateMinutes() - current.weightedLateMinutes() - guessedLate;
    boolean exact = outcome.unplaced() == current.unplaced() && off == 0;
    guessedWrong |= !exact;
    guessedRight =
        exact
            || outcome.unplaced() == current.unplaced()
                && temperatures.ofLate(Math.abs(off)) <= NEARLY;
    rightGuesses++;
  }

  /** Improves one line by itself: where the guess is exact that is quicker than to cool. */
  private void descend(int press, double until) {
    settling.begin();
    takeOver();
    descent.improve(
        press, lines.runs()[press], lines.length(press), until, line -> take(press, line));
  }

  private void take(int press, int[] line) {
    int[][] changed = lines.copyOfRuns();
    System.arraycopy(line, 0, changed[press], 0, line.length);
    lines.set(changed, lines.lengths());
    budget.evaluated();
    Outcome outcome = rehearsal.simulate();
    if (outcome.compareTo(settling.outcome()) < 0) {
      settling.begin(outcome);
      takeOver();
    } else {
      // the guess was not exact after all
      guessedWrong = true;
    }
  }

  /** Looks at some changes, to see how much a change makes of lateness and cost here. */
  private void measureSteps() {
    stepSizes.clear();
    for (int i = 0; i < StepSizes.SAMPLES; i++) {
      if (moves.change()) {
        guess.ofLastChange();
        stepSizes.note(guess.lateMinutes(), Math.round(worthATry.costOf(guess.setUpS())));
        lines.undo();
      }
    }
    for (int i = 0; i < StepSizes.SAMPLES && stepSizes.isEmpty() && !budget.over(); i++) {
      trySome();
    }
  }

  /** Where neither lateness nor set-ups tell, the simulation does. */
  private void trySome() {
    for (int i = 0; i < StepSizes.SAMPLES && !budget.over(); i++) {
      budget.glanced();
      if (moves.change()) {
        Outcome outcome = rehearsal.rehearse();
        budget.evaluated();
        lines.undo();
        if (outcome.unplaced() == current.unplaced()) {
          stepSizes.note(
              outcome.weightedLateMinutes() - current.weightedLateMinutes(),
              outcome.costMilli() - current.costMilli());
        }
      }
    }
  }

  private void changeSome() {
    lines.copyTo(begun);
    if (together < 2) {
      if (worthATry.findOne()) {
        guess.keep();
        budget.evaluated();
        decide();
      }
    } else {
      changeSeveral();
    }
  }

  /** Changes that the guess accepts; one simulation then accepts or refuses them together. */
  private void changeSeveral() {
    long late = 0;
    double cost = 0;
    int kept = 0;
    while (kept < (int) together && worthATry.findForCertain()) {
      guess.keep();
      moves.learn(guess.isBetter());
      late += guess.lateMinutes();
      cost += worthATry.costOf(guess.setUpS());
      kept++;
    }
    if (kept > 0) {
      budget.evaluated();
      Outcome outcome = rehearsal.rehearseAsBase();
      hold(outcome, late);
      end(outcome, temperatures.mildPenalty(outcome, current, late, cost) <= patience());
    }
  }

  private void decide() {
    // how screens are made is not rehearsed, so that a run that waits for them would find no help
    boolean whole =
        rehearsal.isWithInk()
            && (current.unplaced() > 0
                || (rehearsal.waitsForScreens(moves.run()) && random.nextBoolean()));
    Outcome outcome = whole ? rehearsal.whole() : rehearsal.rehearse();
    hold(outcome, guess.lateMinutes());
    moves.learn(outcome.compareTo(current) < 0);
    boolean accepted = temperatures.penalty(outcome, current) <= worthATry.patience();
    if (accepted && whole) {
      follow(true);
      current = outcome;
      settling.changed();
      settle();
    } else {
      if (accepted) {
        rehearsal.rehearseAsBase();
      }
      end(outcome, accepted);
    }
  }

  private double patience() {
    return WorthATry.patience(random);
  }

  /** The next changes are simulated together in greater or smaller number. */
  private void follow(boolean accepted) {
    boolean more = accepted && guessedRight && worthATry.isGuessed();
    together = more ? Math.min(MOST_TOGETHER, together * MORE) : Math.max(1, together * FEWER);
  }

  private void end(Outcome outcome, boolean accepted) {
    follow(accepted);
    if (accepted) {
      guess.learn(rehearsal.base());
      current = outcome;
      settling.changed();
      if (rehearsal.isWhole()) {
        offer(current);
      }
    } else {
      lines.set(begun);
      guess.forget();
    }
  }

  private void settle() {
    if (!settling.isSettled()) {
      budget.evaluated();
      settling.settle(current, this::patience);
      takeOver();
    }
  }

  /** Goes on from lines that were simulated with all that there is. */
  private void takeOver() {
    current = settling.rehearsed();
    guess.learn(rehearsal.base());
    offer(settling.outcome());
  }

  private void offer(Outcome priced) {
    Outcome outcome = rehearsal.unpriced(priced);
    if (outcome.compareTo(best.outcome()) < 0) {
      best = new Dispatch.Plan(lines.copyOfRuns(), lines.lengths().clone(), outcome);
      incumbent.offer(best);
    }
  }
}
