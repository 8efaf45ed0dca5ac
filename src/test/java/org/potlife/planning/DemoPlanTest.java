package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Audit;
import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
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
  void theDemoPlanPassesTheAudit() {
    PlanRequest request = request(3);
    PlanSheet edd = new SearchPlanner().earliestDueDate(request);
    PlanSheet sheet = new SearchPlanner().solve(request, SolveWatch.none());
    System.out.println("EDD " + edd.score());
    System.out.println("ours " + sheet.score());
    sheet.late().forEach(System.out::println);
    sheet.unplaced().forEach(System.out::println);
    AuditReport report = Audit.of(request.shop(), request.orders(), sheet, Optional.empty());
    System.out.println("checks " + report.checks());
    for (var rule : report.rules()) {
      int n = 0;
      for (Finding finding : rule.findings()) {
        if (n++ < 4) System.out.println(finding);
      }
      if (n > 0) System.out.println(rule.rule() + ": " + n + " of " + rule.checked());
    }
    assertThat(report.passed()).isTrue();
  }
}
