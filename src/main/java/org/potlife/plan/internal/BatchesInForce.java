package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import org.potlife.order.Print;
import org.potlife.plan.Plans;
import org.potlife.plan.StoredPlan;
import org.potlife.plan.list.PlanIndex;
import org.potlife.room.KnownBatches;
import org.potlife.sheet.PlanSheet.BatchLine;

/** Batches and runs of the plan in force. */
@ApplicationScoped
class BatchesInForce implements KnownBatches {

  private final Plans plans;

  @Inject
  BatchesInForce(Plans plans) {
    this.plans = plans;
  }

  @Override
  public Optional<BatchLine> findBatch(String plant, String batch) {
    return index(plant).flatMap(plan -> plan.findBatch(batch));
  }

  @Override
  public Optional<Print> findPrint(String plant, String run) {
    return index(plant).flatMap(plan -> plan.findRun(run).flatMap(plan::findPrint));
  }

  private Optional<PlanIndex> index(String plant) {
    return plans.findCurrent(plant).flatMap(StoredPlan::index);
  }
}
