package org.potlife.room;

import java.util.Optional;
import org.potlife.sheet.PlanSheet;

/** The screens of the plan in force; told by whoever keeps the plans. */
public interface KnownScreens {

  /** The sheet of the plan in force. */
  Optional<PlanSheet> findSheet(String plant);

  /** Whether a screen of this id is on the plan in force. */
  default boolean isPlanned(String plant, String screen) {
    return findSheet(plant).stream()
        .flatMap(sheet -> sheet.screens().stream())
        .anyMatch(line -> line.id().equals(screen));
  }
}
