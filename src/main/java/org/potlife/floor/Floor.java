package org.potlife.floor;

import java.time.Instant;
import java.util.List;

/** Reads back what the floor has reported. */
public interface Floor {

  /**
   * The report as a plan made at {@code now} needs it: of what happened before then.
   *
   * @param orders references of the orders whose runs are wanted
   */
  FloorReport reportAt(String plant, List<String> orders, Instant now);

  /**
   * Runs of which something was told that happened in a time, with all that is told of them up to
   * now, by their beginning.
   */
  List<DayRun> listRuns(String plant, Instant from, Instant to, Instant now);
}
