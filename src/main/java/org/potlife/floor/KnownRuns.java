package org.potlife.floor;

import java.util.Optional;
import org.potlife.sheet.PlanSheet.RunLine;

/** The runs of the plan in force; told by whoever keeps the plans. */
public interface KnownRuns {

  /** The run of this id on the plan in force. */
  Optional<RunLine> findRun(String plant, String run);
}
