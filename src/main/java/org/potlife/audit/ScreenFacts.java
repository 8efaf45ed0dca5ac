package org.potlife.audit;

import java.util.List;
import java.util.Optional;
import org.potlife.sheet.PlanSheet.ScreenLine;

/**
 * A screen that could be read. Times are epoch seconds.
 *
 * @param readyAt taped and checked, or null when the sheet gives none
 * @param releasedAt free again, or null when the sheet gives none
 * @param runs runs that use it, by their set-up
 * @param steps work on it, in the sheet's order
 */
record ScreenFacts(
    ScreenLine line,
    ScreenKey key,
    Long readyAt,
    Long releasedAt,
    List<RunFacts> runs,
    List<Step> steps) {

  /** One stage of one screen. */
  record Step(ScreenFacts.Name screen, Stage stage, long from, long to, String where) {}

  /** The screen a step belongs to. */
  record Name(String id) {}

  String id() {
    return line.id();
  }

  boolean kept() {
    return line.kept();
  }

  /** The last step of this stage: what got wet again in store is dried a second time. */
  Optional<Step> step(Stage stage) {
    return steps.stream().filter(step -> step.stage() == stage).reduce((first, last) -> last);
  }
}
