package org.potlife.planning;

import java.util.SplittableRandom;
import org.potlife.simulation.Problem;

/** Makes changes of the lines that {@link LineGuess} finds worth a simulation. */
final class WorthATry {

  // the figures below were found by trial on the cases of docs/benchmarks.md

  /** How far the guess may be off, in temperatures. */
  private static final double LOOSE = 1.5;

  /** Share of the changes that seem to change nothing which are simulated all the same. */
  private static final double IDLE_CHANGES = 0.1;

  /** With fewer runs a simulation is about as quick as a guess, so that each change has its own. */
  private static final int GUESS_FROM = 25;

  /** With so many runs more, one change more is found for each that is simulated. */
  private static final int RUNS_PER_CHOICE = 500;

  /** Looks for a change at most, and for another one to choose from. */
  private static final int MOST_LOOKS = 5000;

  private static final int LOOKS_FOR_ANOTHER = 50;

  private final Problem problem;
  private final Lines lines;
  private final LineGuess guess;
  private final LineMoves moves;
  private final PrintOrder order;
  private final FewMoves fewMoves;
  private final Temperatures temperatures;
  private final Budget budget;
  private final SplittableRandom random;
  private final int choice;
  private final Lines.Change best;
  private double patience;
  private double bestPatience;
  private long bestLate;
  private long bestSetUpS;

  WorthATry(
      Problem problem,
      Lines lines,
      LineGuess guess,
      LineMoves moves,
      FewMoves fewMoves,
      Temperatures temperatures,
      Budget budget,
      SplittableRandom random) {
    this.problem = problem;
    this.lines = lines;
    this.guess = guess;
    this.moves = moves;
    this.fewMoves = fewMoves;
    this.temperatures = temperatures;
    this.budget = budget;
    this.random = random;
    order = new PrintOrder(problem);
    choice = Math.max(1, problem.movable() / RUNS_PER_CHOICE);
    best = new Lines.Change(problem.movable());
  }

  /** Whether the guess is asked at all. */
  boolean isGuessed() {
    return problem.movable() >= GUESS_FROM;
  }

  /** Whether the planner has no wishes about what comes before what: the guess knows of none. */
  boolean isFree() {
    return order.isFree();
  }

  /** The patience with which the last change was found: temperatures that it may cost. */
  double patience() {
    return patience;
  }

  /** Makes a change that the guess itself would accept; false if none was found. */
  boolean findForCertain() {
    return find(MOST_LOOKS, 0, 1);
  }

  /**
   * Makes the change that the guess likes best among some that may be worth a simulation; false if
   * none was found. The larger the shop, the longer a simulation takes and the more it pays to
   * choose.
   */
  boolean findOne() {
    if (!find(MOST_LOOKS, LOOSE, LOOSE)) {
      return false;
    }
    if (choice == 1) {
      return true;
    }
    noteBest();
    for (int others = 1; others < choice; others++) {
      if (find(LOOKS_FOR_ANOTHER, LOOSE, LOOSE)) {
        boolean better =
            guess.lateMinutes() < bestLate
                || (guess.lateMinutes() == bestLate && guess.setUpS() < bestSetUpS);
        if (better) {
          noteBest();
        } else {
          lines.undo();
        }
      }
    }
    moves.recall();
    patience = bestPatience;
    lines.redo(best);
    guess.ofLastChange();
    return true;
  }

  private void noteBest() {
    bestPatience = patience;
    bestLate = guess.lateMinutes();
    bestSetUpS = guess.setUpS();
    moves.note();
    lines.note(best);
    lines.undo();
  }

  private boolean find(int most, double loose, double patient) {
    for (int looks = 0; looks < most; looks++) {
      budget.glanced();
      patience = patience(random);
      if (change()) {
        if (isWorth(loose + patient * patience)) {
          return true;
        }
        lines.undo();
      }
      moves.learnNothing();
    }
    return false;
  }

  /** So many temperatures may a change cost: after N. Metropolis et al. 1953, turned round. */
  static double patience(SplittableRandom random) {
    return -Math.log(1 - random.nextDouble());
  }

  /** Changes the lines; false if nothing came of it. */
  private boolean change() {
    if (!moves.change()) {
      return false;
    }
    if (!order.isKept(lines) || !fewMoves.isKept(lines)) {
      lines.undo();
      return false;
    }
    return true;
  }

  private boolean isWorth(double allowed) {
    if (!isGuessed()) {
      guess.ofLastChange();
      return true;
    }
    if (!guess.isAtMost(temperatures.lateFor(allowed))) {
      return false;
    }
    if (guess.lateMinutes() != 0) {
      return temperatures.ofLate(guess.lateMinutes()) <= allowed;
    }
    if (guess.setUpS() != 0) {
      return temperatures.ofCost(costOf(guess.setUpS())) <= allowed;
    }
    return random.nextDouble() < IDLE_CHANGES;
  }

  /** What so much set-up costs, 1/1000 of the plant currency. */
  double costOf(long setUpSeconds) {
    return setUpSeconds * (double) problem.costs().setUpPerHour() / 3600;
  }
}
