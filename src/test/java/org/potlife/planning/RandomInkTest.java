package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Audit;
import org.potlife.audit.Finding;
import org.potlife.ink.InkReport;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;

/** Plans for shops made by chance, after their ink rooms have told all kinds of things. */
class RandomInkTest {

  private static final int SHOPS = 150;

  @Test
  void everyPlanDrawsFromTheShelfAsTheRulesSay() {
    int fromStock = 0;
    for (long seed = 1; seed <= SHOPS; seed++) {
      RandomCase shop = RandomCase.of(seed);
      PlanSheet plan = holds(shop, RandomInk.told(shop, InkReport.NOTHING, seed));
      fromStock += (int) plan.batches().stream().filter(BatchLine::fromStock).count();
    }
    assertThat(fromStock).as("chance gives the shelf something to do").isGreaterThan(SHOPS / 2);
  }

  @Test
  void everyPlanThatFollowsKeepsToTheClocksThatBatchesReallyHave() {
    int told = 0;
    for (long seed = 1; seed <= SHOPS; seed++) {
      RandomCase shop = RandomCase.of(seed);
      InkReport report = RandomInk.told(shop, InkReport.NOTHING, seed);
      PlanSheet published = holds(shop, report);
      for (int turn = 0; turn < 3; turn++) {
        shop = RandomChanges.later(shop, published, turn);
        report = RandomInk.told(shop, report, seed * 10 + turn);
        told += report.marked().size();
        published = holds(shop, report);
      }
    }
    assertThat(told).as("chance marks batches").isGreaterThan(SHOPS);
  }

  private static PlanSheet holds(RandomCase shop, InkReport told) {
    PlanRequest request =
        new PlanRequest(
            shop.rooms().standing(shop.shop()),
            shop.orders(),
            shop.day(),
            shop.plannedAt(),
            shop.published(),
            0,
            shop.seed(),
            shop.rooms(),
            told);
    PlanSheet plan = new SearchPlanner().solve(request, SolveWatch.none());
    List<String> findings = new ArrayList<>();
    for (Finding finding :
        Audit.of(request.shop(), shop.orders(), plan, shop.published(), shop.rooms(), told)
            .findings()) {
      findings.add(finding.toString());
    }
    assertThat(findings).as("shop %d", shop.seed()).isEmpty();
    return plan;
  }
}
