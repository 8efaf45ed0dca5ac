package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.outside.BareShop;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/** What a minute of set-up is worth to a search. */
class ShadowPricesTest {

  @Test
  void aMinuteIsWorthTheWeightOfWhatIsLateBehindIt() {
    // given a press whose first run is in time and whose others are late
    BareShop shop = BareShop.presses(1).shifts(0, 480, 1440, 1920);
    shop.run(shop.order(70, 5), 60);
    shop.run(shop.order(100, 7), 60);
    shop.run(shop.order(130, 3), 60);
    Desk desk = new Desk(shop.problem(), new int[][] {{0, 1, 2}}, new int[] {3});
    assertThat(desk.prices.exist()).isTrue();
    // when its set-ups are priced
    desk.priced.priceAgain(1);
    // then a minute before the first puts off both late ones, before the last only that
    assertThat(desk.prices.of(0, 60)).isEqualTo(10);
    assertThat(desk.prices.of(1, 120)).isEqualTo(20);
    assertThat(desk.prices.of(2, 60)).isEqualTo(3);
    desk.priced.priceAgain(0.5);
    assertThat(desk.prices.of(0, 60)).isEqualTo(5);
    desk.priced.priceAgain(0);
    assertThat(desk.prices.of(0, 60)).isZero();
  }

  @Test
  void onAPressThatNeverClosesNoMinuteIsLostAgain() {
    // given late runs on a press that never closes
    BareShop shop = BareShop.presses(1);
    shop.run(shop.order(30, 5), 60);
    shop.run(shop.order(40, 7), 60);
    Desk desk = new Desk(shop.problem(), new int[][] {{0, 1}}, new int[] {2});
    assertThat(desk.plain.late(0, desk.plain.endOf(0))).isPositive();
    assertThat(desk.plain.late(1, desk.plain.endOf(1))).isPositive();
    // when its set-ups are to be priced
    desk.priced.priceAgain(1);
    // then they have no price, and a search does not begin to price
    assertThat(desk.prices.of(0, 60)).isZero();
    assertThat(desk.prices.of(1, 60)).isZero();
    assertThat(desk.prices.exist()).isFalse();
  }

  @Test
  void theGuessPricesTheSetUpsOfAChangeAsItsLinesAre() {
    // given the demo plant, too late to keep its dates
    LocalDate day = LocalDate.of(2026, 12, 2);
    Problem problem =
        BareSearch.problem(
            new PlanRequest(
                DemoPlant.shop(),
                DemoPlant.orders(LocalDate.of(2026, 12, 1)),
                day,
                Instant.parse("2026-12-01T13:00:00Z"),
                Optional.empty(),
                1,
                1));
    BareSearch.Found found = BareSearch.dispatched(problem);
    Desk desk = new Desk(problem, found.sequences(), found.lengths());
    desk.priced.priceAgain(1);
    desk.priced.learn(desk.evaluator);
    long before = desk.prices.ofLines();
    assertThat(before).isPositive();
    LineMoves moves =
        new LineMoves(problem, desk.lines, desk.plain::endOf, desk.times, new SplittableRandom(11));
    int dearer = 0;
    for (int i = 0; i < 500; i++) {
      if (moves.change()) {
        // when a change is guessed with and without the prices
        desk.plain.ofLastChange();
        desk.priced.ofLastChange();
        long more = desk.priced.lateMinutes() - desk.plain.lateMinutes();
        // then they differ by what the set-ups of the lines are priced at
        assertThat(more).isEqualTo(desk.prices.ofLines() - before);
        dearer += more > 0 ? 1 : 0;
        desk.lines.undo();
      }
    }
    assertThat(dearer).isPositive();
  }

  /** Lines with a guess that prices their set-ups and one that does not. */
  private static final class Desk {
    private final Lines lines;
    private final DispatchTimes times;
    private final ShadowPrices prices;
    private final LineGuess priced;
    private final LineGuess plain;
    private final SequenceEvaluator evaluator;

    Desk(Problem problem, int[][] sequences, int[] lengths) {
      lines = new Lines(problem.presses().length, problem.movable());
      lines.set(sequences, lengths);
      times = new DispatchTimes(problem);
      prices = new ShadowPrices(problem, lines, times);
      priced = new LineGuess(problem, lines, times, prices);
      plain = new LineGuess(problem, lines, times, new ShadowPrices(problem, lines, times));
      evaluator = new SequenceEvaluator(problem, false);
      evaluator.evaluateAsBase(lines.runs(), lines.lengths());
      priced.learn(evaluator);
      plain.learn(evaluator);
    }
  }
}
