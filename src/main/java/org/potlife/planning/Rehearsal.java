package org.potlife.planning;

import java.util.Arrays;
import org.potlife.simulation.DryerEvaluator;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunTimes;
import org.potlife.simulation.SequenceEvaluator;

/**
 * What changed lines come to: rehearsed with every set of screens ready when it was in the last
 * simulation of the whole shop. The screen room is most of a simulation, works far ahead of the
 * presses and seldom decides on what a change is worth; so plans are rehearsed many times for each
 * time that the whole shop is simulated.
 */
final class Rehearsal {

  private final Lines lines;
  private final SequenceEvaluator shop;
  private final SequenceEvaluator inkAndPresses;
  private final DryerEvaluator presses;
  private final ShadowPrices prices;
  private final boolean hasScreens;
  private final boolean hasInk;
  private boolean withInk;

  /**
   * @param prices what set-ups add to the lateness of each outcome
   * @param verify whether each result is compared with a simulation from the start
   */
  Rehearsal(Problem problem, Lines lines, ShadowPrices prices, boolean verify) {
    this.lines = lines;
    this.prices = prices;
    hasScreens = problem.sets().length > 0;
    hasInk = Arrays.stream(problem.runs()).anyMatch(run -> run.needs().length > 0);
    shop = new SequenceEvaluator(problem, verify);
    inkAndPresses = hasScreens ? new SequenceEvaluator(problem, verify) : shop;
    presses = new DryerEvaluator(problem.withoutInk(), verify);
  }

  /** Whether ink is rehearsed too, or every run is taken to have it when it wants it. */
  void withInk(boolean wanted) {
    withInk = wanted;
  }

  boolean isWithInk() {
    return withInk;
  }

  /** Simulates the whole shop: from here on screens are ready as they are now. */
  Outcome simulate() {
    Outcome outcome = shop.evaluateAsBase(lines.runs(), lines.lengths());
    if (!withInk) {
      presses.giveScreens(shop.screensReady());
    } else if (hasScreens) {
      inkAndPresses.giveScreens(shop.screensReady());
    }
    return priced(outcome);
  }

  /** What the lines come to, rooms included; they do not become the base. */
  Outcome whole() {
    return priced(shop.evaluate(lines.runs(), lines.lengths()));
  }

  /** What the lines come to if rooms do as they did. */
  Outcome rehearse() {
    return priced(
        withInk
            ? inkAndPresses.evaluate(lines.runs(), lines.lengths())
            : presses.evaluate(lines.runs(), lines.lengths()));
  }

  /** The same, and what comes next is compared with these lines. */
  Outcome rehearseAsBase() {
    return priced(
        withInk
            ? inkAndPresses.evaluateAsBase(lines.runs(), lines.lengths())
            : presses.evaluateAsBase(lines.runs(), lines.lengths()));
  }

  private Outcome priced(Outcome outcome) {
    return withLater(outcome, prices.ofLines());
  }

  /** An outcome of the lines as they are without what their set-ups are priced at. */
  Outcome unpriced(Outcome outcome) {
    return withLater(outcome, -prices.ofLines());
  }

  private static Outcome withLater(Outcome outcome, long minutes) {
    return new Outcome(
        outcome.unplaced(), outcome.weightedLateMinutes() + minutes, outcome.costMilli());
  }

  /** Whether a run waited for the making of its screens when the whole shop was simulated. */
  boolean waitsForScreens(int run) {
    return hasScreens && shop.waitsForScreens(run);
  }

  /** How the lines went that were last simulated or rehearsed as a base. */
  RunTimes base() {
    return withInk ? inkAndPresses : presses;
  }

  /** Whether what is rehearsed is all that there is. */
  boolean isWhole() {
    return !hasScreens && (withInk || !hasInk);
  }
}
