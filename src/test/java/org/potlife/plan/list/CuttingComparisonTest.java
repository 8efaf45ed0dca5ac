package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.order.Order;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.ActivationList.Cutting;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SearchPlanner;
import org.potlife.planning.SolveWatch;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shop;
import org.potlife.testing.SmallShop;

/** What the batches of the demo plant's day lose, by dispatch alone, so that it is repeatable. */
class CuttingComparisonTest {

  private static PlanIndex plan;
  private static List<Cutting> cuttings;

  @BeforeAll
  static void planTheDemoDay() {
    Shop shop = DemoPlant.shop();
    List<Order> orders = DemoPlant.orders(SmallShop.DAY);
    PlanRequest request =
        new PlanRequest(
            shop,
            orders,
            SmallShop.DAY,
            SmallShop.at(-1, "14:00").toInstant(),
            Optional.empty(),
            0,
            7);
    PlanSheet sheet = new SearchPlanner().solve(request, SolveWatch.none());
    plan = new PlanIndex(shop, orders, sheet);
    cuttings = CuttingComparison.of(plan, SmallShop.DAY);
  }

  @Test
  void thePlanLosesLessThanABatchForEveryRunAndThanTheWholeDayAtOnce() {
    assertThat(cuttings)
        .extracting(Cutting::rule)
        .containsExactly("plan", "batch-per-run", "batch-per-ink", "whole-day-at-once");
    assertThat(lostG("plan")).isPositive().isLessThan(lostG("batch-per-run"));
    assertThat(lostG("plan")).isLessThanOrEqualTo(lostG("whole-day-at-once"));
  }

  @Test
  void allRulesPrintTheSameInk() {
    long printG = cuttings.get(0).massG() - cuttings.get(0).lostG();
    assertThat(cuttings).allSatisfy(c -> assertThat(c.massG() - c.lostG()).isEqualTo(printG));
  }

  @Test
  void aDayWithoutActivatedInkHasNothingToCompare() {
    assertThat(CuttingComparison.of(PlanFixture.index(), PlanFixture.DAY.plusDays(5))).isEmpty();
  }

  private static long lostG(String rule) {
    return cuttings.stream().filter(c -> c.rule().equals(rule)).findFirst().orElseThrow().lostG();
  }
}
