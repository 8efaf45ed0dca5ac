package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.potlife.order.Print;
import org.potlife.plan.Plans;
import org.potlife.plan.list.PlanIndex;
import org.potlife.room.KnownBatches;
import org.potlife.sheet.PlanSheet.BatchLine;

/** Batches and runs of the plan in force. */
@ApplicationScoped
class BatchesInForce implements KnownBatches {

  private final ReadInForce<PlanIndex> inForce;

  @Inject
  BatchesInForce(Plans plans, EntityManager entities, PlanMapping mapping) {
    inForce =
        new ReadInForce<>(
            plans,
            entities,
            e -> mapping.basis(e).flatMap(basis -> mapping.sheet(e).map(basis::index)));
  }

  @Override
  @Transactional
  public Optional<BatchLine> findBatch(String plant, String batch) {
    return inForce.find(plant).flatMap(plan -> plan.findBatch(batch));
  }

  @Override
  @Transactional
  public Optional<Print> findPrint(String plant, String run) {
    return inForce.find(plant).flatMap(plan -> plan.findRun(run).flatMap(plan::findPrint));
  }
}
