package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Audit;
import org.potlife.demo.DemoPlant;
import org.potlife.sheet.PlanSheet;

class DemoPlanTest {

  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

  private static PlanRequest request(int seconds) {
    return new PlanRequest(
        DemoPlant.shop(),
        DemoPlant.orders(DAY),
        DAY,
        Instant.parse("2026-11-30T13:00:00Z"),
        Optional.empty(),
        seconds,
        7);
  }

  @Test
  void theDemoPlanPassesTheAuditAndBeatsEarliestDueDate() {
    PlanRequest request = request(2);
    PlanSheet byDueDate = new SearchPlanner().earliestDueDate(request);
    PlanSheet searched = new SearchPlanner().solve(request, SolveWatch.none());
    assertThat(Audit.of(request.shop(), request.orders(), searched, Optional.empty()).findings())
        .isEmpty();
    assertThat(searched.score().weightedLateMinutes())
        .isLessThan(byDueDate.score().weightedLateMinutes());
  }

  @Test
  void whatCannotBeKeptOrPlacedIsListedWithItsCause() {
    PlanSheet sheet = new SearchPlanner().solve(request(0), SolveWatch.none());
    assertThat(sheet.unplaced())
        .extracting(PlanSheet.UnplacedLine::order)
        .containsExactlyInAnyOrder("DS-2101", "LL-2100");
    assertThat(sheet.unplaced())
        .extracting(PlanSheet.UnplacedLine::rule)
        .containsExactlyInAnyOrder("R18", "R19");
    assertThat(sheet.late()).extracting(PlanSheet.LateLine::order).contains("KO-2099");
  }
}
