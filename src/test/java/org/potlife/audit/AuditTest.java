package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AuditTest {

  private final AuditReport report = Audited.good().report();

  @Test
  void aGoodPlanHasNoFindings() {
    assertThat(report.findings()).isEmpty();
    assertThat(report.passed()).isTrue();
  }

  @Test
  void everyRuleOfTheBlueprintIsCheckedOnIt() {
    assertThat(report.rules())
        .extracting(RuleResult::rule)
        .containsExactly(
            "R0", "R1", "R2", "R3", "R4", "R5", "R6", "R7", "R8", "R9", "R10", "R11", "R12", "R13",
            "R13a", "R14", "R15", "R16", "R16a", "R17", "R18", "R19", "R20", "R21", "R22");
    assertThat(report.rules()).allSatisfy(rule -> assertThat(rule.checked()).isPositive());
  }

  @Test
  void aPlanWithoutAnyInkIsShortOfIt() {
    Audited dry =
        Audited.good()
            .sheet("batches", List.of())
            .sheet(
                "runs",
                Edit.each(GoodPlan.sheet().runs(), r -> Edit.with(r, "batches", List.of())));
    assertThat(dry.brokenRules()).containsExactly("R11");
  }
}
