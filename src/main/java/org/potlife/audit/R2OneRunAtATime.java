package org.potlife.audit;

import org.potlife.shop.Press;

/**
 * R2: a press works on one run at a time, and each set-up is as long as the screens and inks of the
 * run before make it; the length is recomputed from the sequence on the press.
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
        if (evidence.isFact(run)) {
          before = run;
          continue;
        }
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
        Mounted.setUp(evidence, run).ifPresent(setUp -> checkSetUp(evidence, notes, run, setUp));
        before = run;
      }
    }
  }

  private static void checkSetUp(Evidence evidence, Notes notes, RunFacts run, SetUp setUp) {
    Press press = run.press();
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
    boolean tried = setUp.needed() && press.firstPieceMinutes() > 0;
    int trial = tried ? Math.min(press.trialPieces(), run.line().quantity()) : 0;
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
