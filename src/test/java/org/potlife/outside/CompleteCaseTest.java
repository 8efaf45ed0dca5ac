package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.potlife.planning.BareSearch;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/**
 * Small complete cases against their proven optimum. A plan that is less late than the optimum
 * would break a rule of docs/model.md.
 */
class CompleteCaseTest {

  private static final long EVALUATIONS = 20_000;

  /** What the search found, and what is proven. */
  private record Compared(Problem problem, Outcome found, long optimum) {

    boolean equal() {
      return found.weightedLateMinutes() == optimum;
    }
  }

  @Test
  void withRoomOnTheBeltTheSearchFindsTheOptimum() {
    List<Compared> cases = compared(LongStream.rangeClosed(1, 10), false);
    assertThat(cases).filteredOn(Compared::equal).hasSizeGreaterThanOrEqualTo(9);
  }

  /**
   * Sequences cannot say that the other press has the dryer first, so that with a tight belt some
   * optima are not among all the plans that sequences stand for: the search is measured against
   * these plans, and they against the optimum.
   */
  @Test
  void withATightBeltTheSearchFindsTheBestThatSequencesCanSay() {
    List<Compared> cases = compared(LongStream.rangeClosed(2, 11), true);
    assertThat(cases)
        .filteredOn(one -> one.found().weightedLateMinutes() == leastOfAllSequences(one.problem()))
        .hasSizeGreaterThanOrEqualTo(9);
    assertThat(cases).filteredOn(Compared::equal).hasSizeGreaterThanOrEqualTo(5);
  }

  private static List<Compared> compared(LongStream seeds, boolean tightDryer) {
    return seeds.mapToObj(seed -> compared(CompleteCase.random(seed, tightDryer))).toList();
  }

  private static Compared compared(CompleteCase shop) {
    long optimum = ProvenOptimum.weightedLateMinutes(shop);
    Problem problem = shop.problem();
    Outcome found =
        BareSearch.improved(problem, BareSearch.dispatched(problem), 1, EVALUATIONS).outcome();
    assertThat(found.unplaced()).isZero();
    assertThat(found.weightedLateMinutes()).isGreaterThanOrEqualTo(optimum);
    return new Compared(problem, found, optimum);
  }

  /** Every sequence of all runs, cut in two at every place. */
  private static long leastOfAllSequences(Problem problem) {
    Simulation simulation = new Simulation(problem);
    int n = problem.movable();
    long least = Long.MAX_VALUE;
    for (int[] runs : Plans.permutations(n)) {
      for (int cut = 0; cut <= n; cut++) {
        int[][] sequences = {runs, Arrays.copyOfRange(runs, cut, n)};
        Outcome outcome = simulation.run(sequences, new int[] {cut, n - cut}, null);
        if (outcome.unplaced() == 0) {
          least = Math.min(least, outcome.weightedLateMinutes());
        }
      }
    }
    return least;
  }
}
