package org.potlife.audit;

import java.util.List;
import java.util.Optional;
import org.potlife.shop.Press;

/**
 * R2: a press works on one run at a time, and each set-up is as long as the screens and inks of the
 * run before make it; the length is recomputed from the sequence on the press.
 *
 * <p>A frozen run is measured against the run that the published plan had before it: that one may
 * have left the sheet since, with its order.
 */
final class R2OneRunAtATime implements Rule {

  @Override
  public String number() {
    return "R2";
  }

  @Override
  public String title() {
    return "One run at a time";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (Press press : evidence.shop().presses()) {
      RunFacts before = null;
      for (RunFacts run : evidence.sequence(press)) {
        if (before != null) {
          notes.check(
              run.setUpStart() >= before.printEnd(),
              run.id(),
              "set-up starts %s, press %s prints %s until %s",
              evidence.at(run.setUpStart()),
              press.id(),
              before.id(),
              evidence.at(before.printEnd()));
        }
        screensBefore(evidence, run, before)
            .ifPresent(mounted -> checkSetUp(evidence, notes, run, mounted));
        before = run;
      }
    }
  }

  private static Optional<List<ScreenKey>> screensBefore(
      Evidence evidence, RunFacts run, RunFacts before) {
    if (evidence.isFrozen(run.id())) {
      return evidence.published().flatMap(plan -> plan.screensBefore(run.id()));
    }
    boolean empty = before == null || wentElsewhere(evidence, before, run);
    return Optional.of(empty ? List.of() : ScreenKey.of(before.print()));
  }

  /** Whether the screens that both runs need were on another press between them. */
  private static boolean wentElsewhere(Evidence evidence, RunFacts before, RunFacts run) {
    List<ScreenKey> screens = ScreenKey.of(run.print());
    return ScreenKey.of(before.print()).equals(screens)
        && evidence.runs().stream()
            .anyMatch(
                other ->
                    !other.press().id().equals(run.press().id())
                        && other.setUpStart() >= before.printEnd()
                        && other.setUpStart() < run.setUpStart()
                        && ScreenKey.of(other.print()).equals(screens));
  }

  private static void checkSetUp(
      Evidence evidence, Notes notes, RunFacts run, List<ScreenKey> mounted) {
    Press press = run.press();
    SetUp setUp = SetUp.between(mounted, ScreenKey.of(run.print()), press, evidence.shop());
    notes.check(
        run.line().screensToChange() == setUp.mounted(),
        run.id(),
        "says that %d screens change, it is %d",
        run.line().screensToChange(),
        setUp.mounted());
    notes.check(
        run.line().setUpMinutes() == setUp.minutes(),
        run.id(),
        "says %d minutes of set-up, the change takes %d",
        run.line().setUpMinutes(),
        setUp.minutes());
    int trial = setUp.needed() ? Math.min(press.trialPieces(), run.line().quantity()) : 0;
    notes.check(
        run.line().trialPieces() == trial,
        run.id(),
        "has %d trial pieces, the set-up takes %d",
        run.line().trialPieces(),
        trial);
    if (setUp.needed()) {
      staffed(evidence, notes, run, run.setUpStart(), setUp.minutes(), "set-up");
      staffed(evidence, notes, run, run.firstPieceAt(), press.firstPieceMinutes(), "first piece");
    } else {
      notes.check(
          run.setUpStart() == run.firstPieceAt() && run.firstPieceAt() == run.printStart(),
          run.id(),
          "needs no set-up after the run before, but prints only from %s after starting %s",
          evidence.at(run.printStart()),
          evidence.at(run.setUpStart()));
    }
  }

  private static void staffed(
      Evidence evidence, Notes notes, RunFacts run, long from, int minutes, String what) {
    long seconds = evidence.staffed(run.press()).seconds(from, run.printStart());
    notes.check(
        Math.abs(seconds - minutes * 60L) <= Tolerance.SECONDS,
        run.id(),
        "%s has %.1f staffed minutes from %s to %s, it takes %d",
        what,
        seconds / 60.0,
        evidence.at(from),
        evidence.at(run.printStart()),
        minutes);
  }
}
