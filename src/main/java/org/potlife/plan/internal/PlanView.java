package org.potlife.plan.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.StoredPlan;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * A plan as the API shows it: the summary and, once it stands, the parts of its sheet side by side.
 *
 * @param progress the falling curve of the search
 * @param timeZone the plant's zone, whose offset all times carry
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record PlanView(
    @JsonUnwrapped PlanSummary summary,
    List<Progress> progress,
    String timeZone,
    OffsetDateTime horizonEnd,
    List<RunLine> runs,
    List<BatchLine> batches,
    List<ScreenLine> screens,
    List<BeltLine> belts,
    List<LateLine> late,
    List<UnplacedLine> unplaced,
    List<String> frozen) {

  static PlanView of(StoredPlan plan) {
    return plan.sheet()
        .map(sheet -> standing(plan, sheet))
        .orElseGet(
            () ->
                new PlanView(
                    plan.summary(),
                    plan.progress(),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null));
  }

  private static PlanView standing(StoredPlan plan, PlanSheet sheet) {
    return new PlanView(
        plan.summary(),
        plan.progress(),
        sheet.timeZone(),
        sheet.horizonEnd(),
        sheet.runs(),
        sheet.batches(),
        sheet.screens(),
        sheet.belts(),
        sheet.late(),
        sheet.unplaced(),
        sheet.frozen());
  }
}
