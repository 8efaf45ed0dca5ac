package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.potlife.planning.BareSearch;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Instance 1 of wt40: 40 jobs on one machine, total weighted tardiness. J. E. Beasley, OR-Library;
 * made by C. N. Potts and L. N. Van Wassenhove, A branch and bound algorithm for the total weighted
 * tardiness problem, Operations Research 33, 1985; the optimum is the library's. The value of the
 * sequence by due date is ours to reproduce, as given in the project's table of check values.
 */
class Wt40Test {

  private static final long BY_DUE_DATE = 1588;
  private static final long OPTIMUM = 913;

  private static final int[] MINUTES = {
    26, 24, 79, 46, 32, 35, 73, 74, 14, 67, 86, 46, 78, 40, 29, 94, 64, 27, 90, 55,
    35, 52, 36, 69, 85, 95, 14, 78, 37, 86, 44, 28, 39, 12, 30, 68, 70, 9, 49, 50
  };
  private static final int[] WEIGHTS = {
    1, 10, 9, 10, 10, 4, 3, 2, 10, 3, 7, 3, 1, 3, 10, 4, 7, 7, 4, 7,
    5, 3, 5, 4, 9, 5, 2, 8, 10, 4, 7, 4, 9, 5, 7, 7, 5, 10, 1, 3
  };
  private static final int[] DUE = {
    1588, 1620, 1731, 1773, 1694, 1487, 1566, 1844, 1727, 1636,
    1599, 1539, 1855, 1645, 1709, 1660, 1582, 1836, 1484, 1559,
    1772, 1510, 1512, 1795, 1522, 1509, 1598, 1658, 1826, 1628,
    1650, 1833, 1627, 1528, 1541, 1497, 1481, 1446, 1579, 1814
  };

  private final Problem problem = problem();

  @Test
  void dispatchByDueDateIsAsLateAsPublished() {
    assertThat(BareSearch.earliestDueDate(problem).outcome())
        .isEqualTo(new Outcome(0, BY_DUE_DATE, 0));
  }

  @Test
  void theBestDispatchRuleIsOptimalAtOnce() {
    assertThat(BareSearch.dispatched(problem).outcome()).isEqualTo(new Outcome(0, OPTIMUM, 0));
  }

  @Test
  void theSearchReachesTheOptimumFromTheSequenceByDueDate() {
    Outcome found =
        BareSearch.improved(problem, BareSearch.earliestDueDate(problem), 1, 200_000).outcome();
    assertThat(found).isEqualTo(new Outcome(0, OPTIMUM, 0));
  }

  private static Problem problem() {
    BareShop shop = BareShop.presses(1);
    for (int job = 0; job < MINUTES.length; job++) {
      shop.run(shop.order(DUE[job], WEIGHTS[job]), MINUTES[job]);
    }
    return shop.problem();
  }
}
