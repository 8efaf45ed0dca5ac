package org.potlife.outbox.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import org.potlife.plan.PlanSummary;

/**
 * What plan.drafted, plan.published and plan.failed say.
 *
 * @param unplaced runs without a place; null when no plan came out, as are the figures that follow
 * @param totalCost plant currency
 * @param supersedes id of the plan that was in force until now; only when published
 * @param failure why no plan came out; only when failed
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record PlanData(
    String plan,
    int version,
    LocalDate day,
    String state,
    Boolean auditPassed,
    Integer unplaced,
    Long lateMinutes,
    Long weightedLateMinutes,
    Double totalCost,
    String supersedes,
    String failure) {

  static PlanData of(PlanSummary plan, String supersedes) {
    var score = plan.score();
    return new PlanData(
        plan.id(),
        plan.version(),
        plan.day(),
        plan.state().word(),
        plan.auditPassed(),
        score == null ? null : score.unplaced(),
        score == null ? null : score.lateMinutes(),
        score == null ? null : score.weightedLateMinutes(),
        score == null ? null : score.totalCost(),
        supersedes,
        plan.failure());
  }
}
