package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * S. M. Johnson, Optimal two- and three-stage production schedules with setup times included, Naval
 * Research Logistics Quarterly 1, 1954 (from memory): with two stages, jobs whose first stage is
 * the shorter one go first by rising first stage, the others after them by falling second stage;
 * the same sequence on both machines ends soonest. Each job is a lot with two prints in listed
 * order, the first on the first press and the second on the second.
 */
class JohnsonTest {

  record TwoStages(int first, int second) {}

  private static Arbitrary<List<TwoStages>> lots(int most) {
    Arbitrary<Integer> minutes = Arbitraries.integers().between(1, 30);
    return Combinators.combine(minutes, minutes)
        .as(TwoStages::new)
        .list()
        .ofMinSize(2)
        .ofMaxSize(most);
  }

  @Provide
  Arbitrary<List<TwoStages>> upToSix() {
    return lots(6);
  }

  @Provide
  Arbitrary<List<TwoStages>> upToFour() {
    return lots(4);
  }

  @Property(tries = 60)
  void noSequenceEndsSoonerThanJohnsons(@ForAll("upToSix") List<TwoStages> lots) {
    Plans plans = new Plans(problem(lots));
    int[] johnson = johnson(lots);
    int least = endByFormula(lots, johnson);
    assertThat(end(plans, johnson, johnson)).isEqualTo(least);
    for (int[] sequence : Plans.permutations(lots.size())) {
      assertThat(end(plans, sequence, sequence))
          .isEqualTo(endByFormula(lots, sequence))
          .isGreaterThanOrEqualTo(least);
    }
  }

  @Property(tries = 20)
  void norDoTwoDifferentSequences(@ForAll("upToFour") List<TwoStages> lots) {
    Plans plans = new Plans(problem(lots));
    int least = endByFormula(lots, johnson(lots));
    for (int[] first : Plans.permutations(lots.size())) {
      for (int[] second : Plans.permutations(lots.size())) {
        assertThat(end(plans, first, second)).isGreaterThanOrEqualTo(least);
      }
    }
  }

  private static Problem problem(List<TwoStages> lots) {
    BareShop shop = BareShop.presses(2).finishCosts();
    for (int i = 0; i < lots.size(); i++) {
      int order = shop.order(1_000_000, 1);
      shop.run(order, lots.get(i).first()).lot(i).stage(0).on(0);
      shop.run(order, lots.get(i).second()).lot(i).stage(1).on(1);
    }
    return shop.problem();
  }

  private static int[] firsts(int[] lots) {
    return IntStream.of(lots).map(lot -> 2 * lot).toArray();
  }

  private static int[] seconds(int[] lots) {
    return IntStream.of(lots).map(lot -> 2 * lot + 1).toArray();
  }

  private static int end(Plans plans, int[] first, int[] second) {
    Outcome outcome = plans.of(firsts(first), seconds(second)).outcome();
    assertThat(outcome.unplaced()).isZero();
    return (int) outcome.costMilli();
  }

  private static int endByFormula(List<TwoStages> lots, int[] sequence) {
    int first = 0;
    int second = 0;
    for (int lot : sequence) {
      first += lots.get(lot).first();
      second = Math.max(first, second) + lots.get(lot).second();
    }
    return second;
  }

  private static int[] johnson(List<TwoStages> lots) {
    Comparator<Integer> shortFirst =
        Comparator.comparing(lot -> lots.get(lot).first() < lots.get(lot).second() ? 0 : 1);
    return IntStream.range(0, lots.size())
        .boxed()
        .sorted(shortFirst.thenComparing(lot -> key(lots.get(lot))))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static int key(TwoStages lot) {
    return lot.first() < lot.second() ? lot.first() : -lot.second();
  }
}
