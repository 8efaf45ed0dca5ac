package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.potlife.planning.BareSearch;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Instance ft06: six jobs on six machines, each job with a route of its own. H. Fisher and G. L.
 * Thompson, Probabilistic learning combinations of local job-shop scheduling rules, in Muth and
 * Thompson (eds.), Industrial Scheduling, Prentice Hall, 1963 (from memory); it cannot end before
 * minute 55. A job is a lot whose prints come in listed order, each on one press only.
 */
class Ft06Test {

  private static final long OPTIMUM = 55;

  /** By job, machine and minutes of each step in turn. */
  private static final int[][] JOBS = {
    {2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6},
    {1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4},
    {2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7},
    {1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9},
    {2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1},
    {1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1}
  };

  @Test
  void theSearchReachesTheSoonestEnd() {
    Problem problem = problem();
    BareSearch.Found start = BareSearch.dispatched(problem);
    long[] ends =
        LongStream.rangeClosed(1, 3)
            .map(seed -> end(BareSearch.improved(problem, start, seed, 200_000).outcome()))
            .toArray();
    assertThat(ends).containsOnly(OPTIMUM);
  }

  private static long end(Outcome outcome) {
    assertThat(outcome.unplaced()).isZero();
    assertThat(outcome.weightedLateMinutes()).isZero();
    return outcome.costMilli();
  }

  static Problem problem() {
    BareShop shop = BareShop.presses(6).finishCosts();
    for (int job = 0; job < JOBS.length; job++) {
      int order = shop.order(1_000, 1);
      int[] route = JOBS[job];
      for (int step = 0; step < route.length / 2; step++) {
        shop.run(order, route[2 * step + 1]).lot(job).stage(step).on(route[2 * step]);
      }
    }
    return shop.problem();
  }
}
