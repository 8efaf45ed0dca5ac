package org.potlife.room.internal;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Optional;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/**
 * The drying that a look at a screen tells of: the last one that had begun by the plan in force.
 *
 * @param step the drying step of the screen
 * @param loadIn when the last screen of its load went in: from then on the load dries (R6)
 */
record LookedAt(StepLine step, OffsetDateTime loadIn) {

  /** Empty when the screen was in no cabinet yet, or its load was still gathered. */
  static Optional<LookedAt> find(PlanSheet sheet, String screen, Instant at) {
    return sheet.screens().stream()
        .filter(line -> line.id().equals(screen))
        .flatMap(line -> line.steps().stream())
        .filter(step -> isDrying(step) && !step.from().toInstant().isAfter(at))
        .max(Comparator.comparing(step -> step.from().toInstant()))
        .map(step -> new LookedAt(step, lastIn(sheet, step)))
        .filter(looked -> looked.loadIn().toInstant().isBefore(at));
  }

  private static boolean isDrying(StepLine step) {
    return step.drying() && step.where() != null;
  }

  /** Loads of a cabinet never overlap: what comes out of it together went in together. */
  private static OffsetDateTime lastIn(PlanSheet sheet, StepLine of) {
    return sheet.screens().stream()
        .map(ScreenLine::steps)
        .flatMap(steps -> steps.stream())
        .filter(step -> isDrying(step) && step.where().equals(of.where()))
        .filter(step -> step.to().isEqual(of.to()))
        .map(StepLine::from)
        .max(Comparator.comparing(OffsetDateTime::toInstant))
        .orElse(of.from());
  }
}
