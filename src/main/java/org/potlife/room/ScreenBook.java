package org.potlife.room;

import java.time.Instant;
import java.util.List;

/** The screens of a plant as they stand. */
public interface ScreenBook {

  /** All screens, those of the plan in force first, each with its history. */
  List<ScreenStatus> list(String plant, Instant now);
}
