package org.potlife.plan;

import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.list.PlanIndex;
import org.potlife.planning.SolveWatch.Progress;
import org.potlife.sheet.PlanSheet;

/**
 * A plan as stored.
 *
 * @param rowVersion counts its changes
 * @param progress the falling curve of the search
 * @param basis what it was made from; empty before the search begins
 * @param sheet the plan itself; empty before it stands
 * @param audit its audit; empty before it stands
 */
public record StoredPlan(
    PlanSummary summary,
    long rowVersion,
    List<Progress> progress,
    Optional<PlanBasis> basis,
    Optional<PlanSheet> sheet,
    Optional<AuditReport> audit) {

  public StoredPlan {
    progress = List.copyOf(progress);
  }

  /** The plan to make lists from; empty before it stands. */
  public Optional<PlanIndex> index() {
    return basis.flatMap(b -> sheet.map(b::index));
  }
}
