package org.potlife.room;

import java.util.Optional;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.BatchLine;

/** The batches and runs of the plan in force; told by whoever keeps the plans. */
public interface KnownBatches {

  /** The batch of this id on the plan in force. */
  Optional<BatchLine> findBatch(String plant, String batch);

  /** What the run of this id on the plan in force prints. */
  Optional<Print> findPrint(String plant, String run);
}
