package org.potlife.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * R4: every station's screen is there, ready and free when the set-up starts. A screen is free
 * again when it is taken down after its last stroke, or stays on the press for a next run without
 * set-up.
 */
final class R4ScreensReady implements Rule {

  @Override
  public String number() {
    return "R4";
  }

  @Override
  public String title() {
    return "Screens ready before set-up";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    Map<String, ScreenFacts> byName = new HashMap<>();
    evidence.screens().forEach(screen -> byName.put(screen.id(), screen));
    for (RunFacts run : evidence.runs()) {
      List<ScreenKey> needed = ScreenKey.of(run.print());
      List<ScreenKey> listed = new ArrayList<>();
      for (String id : run.line().screens()) {
        Optional.ofNullable(byName.get(id)).map(ScreenFacts::key).ifPresent(listed::add);
      }
      notes.check(
          needed.equals(listed), run.id(), "has the screens %s, it needs %s", listed, needed);
    }
    for (ScreenFacts screen : evidence.screens()) {
      RunFacts before = null;
      for (RunFacts run : screen.runs()) {
        notes.check(
            run.setUpStart() < evidence.plannedAt() || !evidence.isBroken(screen.id()),
            run.id(),
            "set-up starts %s with screen %s, which is reported broken",
            evidence.at(run.setUpStart()),
            screen.id());
        long ready = readyAt(screen);
        notes.check(
            ready <= run.setUpStart() || evidence.isFact(run),
            run.id(),
            "set-up starts %s, screen %s is ready %s",
            evidence.at(run.setUpStart()),
            screen.id(),
            screen.kept() ? "" : evidence.at(ready));
        if (before != null) {
          long free = freeAt(evidence, before, run);
          notes.check(
              run.setUpStart() >= free || evidence.isFact(run),
              run.id(),
              "set-up starts %s, screen %s is with run %s until %s",
              evidence.at(run.setUpStart()),
              screen.id(),
              before.id(),
              evidence.at(free));
        }
        before = run;
      }
    }
  }

  private static long readyAt(ScreenFacts screen) {
    long written = screen.readyAt() == null ? Long.MIN_VALUE : screen.readyAt();
    long taped =
        screen.steps().stream().mapToLong(ScreenFacts.Step::to).max().orElse(Long.MIN_VALUE);
    return screen.kept() ? Long.MIN_VALUE : Math.max(written, taped);
  }

  private static long freeAt(Evidence evidence, RunFacts before, RunFacts next) {
    boolean stays =
        evidence.after(before).filter(next::equals).isPresent()
            && ScreenKey.of(before.print()).equals(ScreenKey.of(next.print()));
    return stays ? before.printEnd() : releasedAt(before);
  }

  /** When the screens of a run are off the press, epoch seconds. */
  static long releasedAt(RunFacts run) {
    return run.printEnd()
        + 60L * run.press().tearDownMinutesPerScreen() * run.print().colours().size();
  }
}
