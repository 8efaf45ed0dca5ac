package org.potlife.audit;

import java.util.List;
import java.util.Set;
import org.potlife.sheet.PlanSheet.WaitLine;

/**
 * Part of R21: the waits of a run add up to the time from its press being free to its set-up. A
 * press is free from the last stroke of the run before, and not before the plan counts for presses.
 * A frozen run keeps the waits that it was published with.
 */
final class Waits {

  private static final Set<String> CAUSES =
      Set.of("closed", "garments", "same-garments", "screens", "same-screens", "ink-room", "dryer");

  private final Evidence evidence;
  private final Notes notes;

  Waits(Evidence evidence, Notes notes) {
    this.evidence = evidence;
    this.notes = notes;
  }

  void check() {
    for (RunFacts run : evidence.runs()) {
      List<WaitLine> waits = Completeness.there(run.line().waits());
      for (WaitLine wait : waits) {
        notes.check(
            wait.cause() != null && CAUSES.contains(wait.cause()) && wait.minutes() >= 0,
            run.id(),
            "waits %d min for %s, which is no cause",
            wait.minutes(),
            wait.cause());
      }
      if (evidence.isFrozen(run.id())) {
        continue;
      }
      long free =
          evidence
              .before(run)
              .map(before -> Math.max(before.printEnd(), evidence.pressesOpenFrom()))
              .orElse(evidence.pressesOpenFrom());
      long waited = Math.max(0, run.setUpStart() - free);
      double told = waits.stream().mapToDouble(WaitLine::minutes).sum() * 60;
      notes.check(
          Math.abs(told - waited) <= Tolerance.WAIT_LINE_S * Math.max(1.0, waits.size()),
          run.id(),
          "accounts for %.0f min of waiting, press %s is free %s and the set-up starts %s, %.1f min"
              + " later",
          told / 60,
          run.press().id(),
          evidence.at(free),
          evidence.at(run.setUpStart()),
          waited / 60.0);
    }
  }
}
