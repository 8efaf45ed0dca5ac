package org.potlife.room;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/**
 * What a plan says of a screen at a moment.
 *
 * @param since when it is planned to have come to that; null for a screen that nothing has happened
 *     to
 * @param step the step under way; null between steps
 */
public record PlannedLife(ScreenLife state, OffsetDateTime since, String step) {

  /** What a screen is when a step is done. */
  private static final Map<String, ScreenLife> AFTER =
      Map.of(
          "degrease", ScreenLife.DEGREASED_DRYING,
          "coat", ScreenLife.COATED_DRYING,
          "dry-coated", ScreenLife.DRY,
          "expose", ScreenLife.EXPOSED,
          "wash-out", ScreenLife.WASHED_OUT_DRYING,
          "tape", ScreenLife.READY);

  /**
   * The screen at a moment.
   *
   * @param runs the runs of the sheet that use the screen, in any order
   */
  public static PlannedLife of(ScreenLine screen, List<RunLine> runs, OffsetDateTime now) {
    return onPress(screen, runs, now).orElseGet(() -> inTheRoom(screen, now));
  }

  private static Optional<PlannedLife> onPress(
      ScreenLine screen, List<RunLine> runs, OffsetDateTime now) {
    OffsetDateTime first = null;
    OffsetDateTime last = null;
    boolean another = false;
    for (RunLine run : runs) {
      if (!run.setUpStart().isAfter(now)) {
        first = first == null || run.setUpStart().isAfter(first) ? run.setUpStart() : first;
        last = last == null || run.printEnd().isAfter(last) ? run.printEnd() : last;
      } else {
        another = true;
      }
    }
    if (first == null) {
      return Optional.empty();
    }
    if (last.isAfter(now) || (!another && screen.releasedAt().isAfter(now))) {
      return Optional.of(new PlannedLife(ScreenLife.ON_PRESS, first, null));
    }
    return Optional.of(
        another || screen.kept()
            ? new PlannedLife(ScreenLife.READY, another ? last : screen.releasedAt(), null)
            : new PlannedLife(ScreenLife.TO_RECLAIM, screen.releasedAt(), null));
  }

  private static PlannedLife inTheRoom(ScreenLine screen, OffsetDateTime now) {
    if (screen.kept()) {
      return new PlannedLife(ScreenLife.READY, screen.readyAt(), null);
    }
    ScreenLife state = ScreenLife.RECLAIMED;
    OffsetDateTime since = null;
    String step = null;
    for (StepLine line : screen.steps()) {
      if (!line.to().isAfter(now)) {
        if (AFTER.containsKey(line.step())) {
          state = AFTER.get(line.step());
          since = line.to();
        }
      } else if (!line.from().isAfter(now)) {
        step = line.step();
      }
    }
    return new PlannedLife(state, since, step);
  }
}
