package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.potlife.outside.BareShop;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;
import org.potlife.simulation.Simulation;

/** One press whose set-ups depend on the sequence, against every sequence there is. */
class LineDescentTest {

  private static final int RUNS = 7;

  private static Problem shop(SplittableRandom random) {
    BareShop shop = BareShop.presses(1);
    int[][] setUpS = new int[RUNS + 1][RUNS];
    for (int run = 0; run < RUNS; run++) {
      shop.run(
          shop.order(60 + random.nextInt(500), 1 + random.nextInt(9)), 50 + random.nextInt(100));
      for (int before = 0; before <= RUNS; before++) {
        setUpS[before][run] = 60 * random.nextInt(60);
      }
    }
    return shop.problem(setUpS);
  }

  /** The least weighted late minutes that any sequence has. */
  private static Outcome bestOf(Simulation simulation, int[] line, int from) {
    if (from == line.length) {
      return simulation.run(new int[][] {line}, new int[] {line.length}, null);
    }
    Outcome best = null;
    for (int at = from; at < line.length; at++) {
      swap(line, from, at);
      Outcome outcome = bestOf(simulation, line, from + 1);
      best = best == null || outcome.compareTo(best) < 0 ? outcome : best;
      swap(line, from, at);
    }
    return best;
  }

  private static void swap(int[] line, int a, int b) {
    int run = line[a];
    line[a] = line[b];
    line[b] = run;
  }

  @Test
  void itFindsTheBestOfAllSequencesAndKnowsWhatEachComesTo() {
    for (int seed = 1; seed <= 6; seed++) {
      Problem problem = shop(new SplittableRandom(seed));
      Simulation simulation = new Simulation(problem);
      int[] line = new int[RUNS];
      for (int run = 0; run < RUNS; run++) {
        line[run] = run;
      }
      Lines lines = new Lines(1, RUNS);
      lines.set(new int[][] {line}, new int[] {RUNS});
      DispatchTimes times = new DispatchTimes(problem);
      LineGuess guess =
          new LineGuess(problem, lines, times, new ShadowPrices(problem, lines, times));
      SequenceEvaluator evaluator = new SequenceEvaluator(problem, true);
      evaluator.evaluateAsBase(lines.runs(), lines.lengths());
      guess.learn(evaluator);
      List<Outcome> found = new ArrayList<>();

      new LineDescent(guess, Budget.ofEvaluations(5000), new SplittableRandom(seed))
          .improve(
              0,
              line,
              RUNS,
              1,
              better -> found.add(simulation.run(new int[][] {better}, new int[] {RUNS}, null)));

      assertThat(found)
          .as("each is better than the one before")
          .isSortedAccordingTo(Comparator.reverseOrder());
      assertThat(found.get(found.size() - 1)).isEqualTo(bestOf(simulation, line, 0));
    }
  }
}
