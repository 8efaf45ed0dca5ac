package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.potlife.outside.BareShop;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/** Where presses share nothing, what is guessed of changed lines is what the simulation finds. */
class LineGuessTest {

  private static final int CHANGES = 400;

  @Test
  void changesOfLinesThatShareNothingAreGuessedRightUntilTheyAreSimulatedTogether() {
    for (int seed = 1; seed <= 5; seed++) {
      Desk desk = new Desk(shop(seed), seed);
      for (int turn = 0; turn < 8; turn++) {
        long guessed = desk.changeSome(CHANGES / 8);
        Outcome before = desk.outcome;
        desk.simulate();
        assertThat(desk.outcome.weightedLateMinutes() - before.weightedLateMinutes())
            .as("shop %d, turn %d", seed, turn)
            .isEqualTo(guessed);
      }
    }
  }

  @Test
  void whatIsForgottenHasNeverBeen() {
    Desk desk = new Desk(shop(9), 9);
    int[][] runs = desk.lines.copyOfRuns();
    int[] lengths = desk.lines.lengths().clone();
    int end = desk.guess.endOf(runs[0][3]);
    desk.changeSome(CHANGES);
    desk.lines.set(runs, lengths);
    desk.guess.forget();
    assertThat(desk.guess.endOf(runs[0][3])).isEqualTo(end);
    long guessed = desk.changeSome(20);
    Outcome before = desk.outcome;
    desk.simulate();
    assertThat(desk.outcome.weightedLateMinutes() - before.weightedLateMinutes())
        .isEqualTo(guessed);
  }

  @Test
  void aRunThatWaitsForItsScreensForDaysLeavesTheOthersOfItsLineFreeToMove() {
    BareShop shop = BareShop.presses(1).shifts(0, 480, 1440, 1920, 2880, 3360, 4320, 20_000);
    shop.run(shop.order(100, 5), 120);
    shop.run(shop.order(60, 7), 45);
    int set = shop.set(1, 3000);
    shop.run(shop.order(3100, 3), 90).screens(set, 0);
    Desk desk = standing(shop.inks(50).problem(), new int[][] {{0, 1, 2}});
    desk.lines.swapWithin(0, 0, 1, 1, 1);
    assertForeseen(desk);
    assertThat(desk.guess.lateMinutes()).isNegative();
  }

  @Test
  void aRunWithoutAPlaceDelaysNobodyOfItsLine() {
    BareShop shop = BareShop.presses(1).shifts(0, 480, 1440, 1920, 2880, 3360);
    shop.run(shop.order(100, 5), 120);
    shop.run(shop.order(60, 7), 45);
    shop.run(shop.order(60, 7), 500);
    shop.run(shop.order(300, 3), 90);
    Desk desk = standing(shop.problem(), new int[][] {{0, 1, 2, 3}});
    Outcome before = desk.outcome;
    assertThat(before.unplaced()).isOne();
    desk.lines.swapWithin(0, 0, 1, 1, 1);
    desk.guess.ofLastChange();
    long guessed = desk.guess.lateMinutes();
    desk.simulate();
    assertThat(desk.outcome.weightedLateMinutes() - before.weightedLateMinutes())
        .isEqualTo(guessed);
  }

  @Test
  void aRunWaitsForItsGarmentsWhileAnotherPressPrintsThem() {
    // given front and back of one order on two presses, the back after another run
    BareShop shop = frontAndBack(BareShop.presses(2), 100);
    shop.run(shop.order(400, 3), 90);
    Desk desk = standing(shop.problem(), new int[][] {{0}, {2, 1}});
    // when the back comes first on its press, though the front has the garments
    desk.lines.swapWithin(1, 0, 1, 1, 1);
    // then it is foreseen that it waits, and what waits behind it
    assertForeseen(desk);
  }

  @Test
  void whoTakesTheGarmentsFirstPutsOffTheOtherPress() {
    // given a back that follows the front of its order, and a run behind each
    BareShop shop = frontAndBack(BareShop.presses(2), 150);
    shop.run(shop.order(170, 3), 90);
    shop.run(shop.order(160, 4), 60);
    Desk desk = standing(shop.problem(), new int[][] {{0, 2}, {3, 1}});
    // when the front goes behind another run, so that the back has the garments first
    desk.lines.swapWithin(0, 0, 1, 1, 1);
    assertForeseen(desk);
  }

  @Test
  void onOnePressTheGarmentsGoFromOneRunToTheNextWhateverCouldHaveBegunWhen() {
    // given front and back of one order in a line, another run between them
    BareShop shop = frontAndBack(BareShop.presses(1), 1000);
    shop.run(shop.order(90, 3), 90);
    Desk desk = standing(shop.problem(), new int[][] {{0, 2, 1}});
    // when the back comes to the front of the line
    desk.lines.move(0, 0, 2, 0, 1);
    assertForeseen(desk);
  }

  /** A shop with two prints of 80 and 70 minutes on the same garments. */
  private static BareShop frontAndBack(BareShop shop, int dueMinute) {
    int order = shop.shifts(0, 20_000).order(dueMinute, 5);
    shop.run(order, 80).lot(0);
    shop.run(order, 70).lot(0);
    return shop;
  }

  @Test
  void aLateOrderGainsNothingByOneOfItsRunsAsLongAsAnotherIsLate() {
    // given two late runs of one order on two presses
    BareShop shop = BareShop.presses(2).shifts(0, 20_000);
    int order = shop.order(60, 5);
    shop.run(order, 80);
    shop.run(order, 70);
    shop.run(shop.order(400, 3), 30);
    Desk desk = standing(shop.problem(), new int[][] {{0}, {2, 1}});
    // when the later of them comes forward
    desk.lines.swapWithin(1, 0, 1, 1, 1);
    // then the order is as late as the other one
    assertForeseen(desk);
  }

  /** The lines as they stand, simulated. */
  private static Desk standing(Problem problem, int[][] lines) {
    Desk desk = new Desk(problem, 1);
    desk.lines.set(lines, Arrays.stream(lines).mapToInt(line -> line.length).toArray());
    desk.simulate();
    return desk;
  }

  private static void assertForeseen(Desk desk) {
    Outcome before = desk.outcome;
    desk.guess.ofLastChange();
    long guessed = desk.guess.lateMinutes();
    desk.simulate();
    assertThat(guessed).isNotZero();
    assertThat(desk.outcome.weightedLateMinutes() - before.weightedLateMinutes())
        .isEqualTo(guessed);
  }

  private static Problem shop(int seed) {
    Random random = new Random(seed);
    BareShop shop = BareShop.presses(2).shifts(0, 480, 1440, 1920, 2880, 3360, 4320, 20_000);
    for (int run = 0; run < 24; run++) {
      int order = shop.order(60 + random.nextInt(2000), 1 + random.nextInt(9));
      shop.run(order, 20 + random.nextInt(90)).from(random.nextInt(300));
    }
    return shop.problem();
  }

  /** Lines with their guess, as a search has them. */
  private static final class Desk {
    private final Lines lines;
    private final LineGuess guess;
    private final LineMoves moves;
    private final SequenceEvaluator evaluator;
    private Outcome outcome;

    Desk(Problem problem, long seed) {
      lines = new Lines(problem.presses().length, problem.movable());
      DispatchTimes times = new DispatchTimes(problem);
      guess = new LineGuess(problem, lines, times, new ShadowPrices(problem, lines, times));
      evaluator = new SequenceEvaluator(problem, true);
      moves = new LineMoves(problem, lines, guess::endOf, times, new SplittableRandom(seed));
      Dispatch.Plan plan = new Dispatch(problem).best();
      lines.set(plan.sequences(), plan.lengths());
      simulate();
    }

    void simulate() {
      outcome = evaluator.evaluateAsBase(lines.runs(), lines.lengths());
      guess.learn(evaluator);
    }

    long changeSome(int changes) {
      long late = 0;
      for (int i = 0; i < changes; i++) {
        if (moves.change()) {
          guess.ofLastChange();
          guess.keep();
          late += guess.lateMinutes();
        }
      }
      return late;
    }
  }
}
