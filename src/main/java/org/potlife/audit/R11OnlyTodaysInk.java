package org.potlife.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.potlife.ink.InkRoom;

/**
 * R11: ink is activated for the day it is used on, and a batch holds what its runs use in its time
 * plus one reserve, rounded up by less than a step of the scale. What runs use is recomputed from
 * area, coverage, deposit, density, passes, transfer, loss and screen charge. What is made already
 * stays, also when a run that was to draw from it has gone.
 */
final class R11OnlyTodaysInk implements Rule {

  @Override
  public String number() {
    return "R11";
  }

  @Override
  public String title() {
    return "Only today's ink, and no more than is used";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    InkRoom room = evidence.shop().inkRoom();
    for (BatchFacts batch : evidence.batches()) {
      long used = 0;
      for (BatchFacts.Use use : batch.uses()) {
        used += (long) use.printG() + use.chargeG();
        if (batch.activated() && !isFact(evidence, batch, use)) {
          notes.check(
              day(evidence, batch.activatedAt()).equals(day(evidence, use.from())),
              batch.id(),
              "is activated %s for run %s of another day, %s",
              evidence.at(batch.activatedAt()),
              use.run().id(),
              evidence.at(use.from()));
        }
      }
      notes.check(
          used + batch.line().reserveG() == batch.line().massG(),
          batch.id(),
          "holds %d g, its runs use %d g and the reserve is %d g",
          batch.line().massG(),
          used,
          batch.line().reserveG());
      notes.check(
          batch.line().reserveG() >= 0,
          batch.id(),
          "gives %d g more than it holds",
          -batch.line().reserveG());
      if (batch.fromStock()) {
        continue;
      }
      int rounding = batch.line().reserveG() - room.reserveG();
      notes.check(
          rounding >= 0 && (rounding < room.scaleStepG() || evidence.isTakenOver(batch)),
          batch.id(),
          "has %d g reserve, it is %d g, rounded up to the scale's %d g",
          batch.line().reserveG(),
          room.reserveG(),
          room.scaleStepG());
      notes.check(
          batch.line().massG() % room.scaleStepG() == 0 || evidence.isTakenOver(batch),
          batch.id(),
          "weighs %d g on a scale with steps of %d g",
          batch.line().massG(),
          room.scaleStepG());
    }
    for (RunFacts run : evidence.runs()) {
      // what was published for a frozen run stays (R22), though its grams are reckoned otherwise by
      // now: closed runs teach
      if (evidence.isFrozen(run.id()) && evidence.ink().hasLearned()) {
        continue;
      }
      run.inks().stream()
          .map(ink -> ink.id())
          .distinct()
          .forEach(ink -> grams(evidence, run, ink, notes));
    }
  }

  /** A marked batch has the clock that it has; what a run under way draws of it is done. */
  private static boolean isFact(Evidence evidence, BatchFacts batch, BatchFacts.Use use) {
    return evidence.isDrawnAsItIs(batch, use.run());
  }

  /** The real times of a fact tell nothing of its set-up. */
  private static boolean hasSetUp(Evidence evidence, RunFacts run) {
    return evidence.isFact(run)
        ? run.line().setUpMinutes() > 0 || run.line().screensToChange() > 0
        : run.hasSetUp();
  }

  private static LocalDate day(Evidence evidence, long second) {
    return Instant.ofEpochSecond(second).atZone(evidence.shop().timeZone()).toLocalDate();
  }

  private static void grams(Evidence evidence, RunFacts run, String ink, Notes notes) {
    InkRoom room = evidence.shop().inkRoom();
    List<BatchFacts.Use> uses = R10PotLife.uses(evidence, run, ink).toList();
    double perPiece = run.gramsPerPiece(ink);
    double exact = run.line().quantity() * perPiece * (1 + room.lossPercent() / 100);
    long needed = (long) Math.ceil(exact * (1 - Tolerance.ARITHMETIC));
    long drawn = uses.stream().mapToLong(BatchFacts.Use::printG).sum();
    notes.check(
        Math.abs(drawn - needed) <= Tolerance.GRAMS_PER_USE * uses.size(),
        run.id(),
        "draws %d g of %s, %d pieces of %.3f g with %.0f %% loss take %d g",
        drawn,
        ink,
        run.line().quantity(),
        perPiece,
        room.lossPercent(),
        needed);
    // what was on the press before an old frozen run is not known: a set-up may have taken no time
    boolean known = Mounted.setUp(evidence, run).isPresent();
    boolean setUp =
        Mounted.setUp(evidence, run).map(SetUp::needed).orElseGet(() -> hasSetUp(evidence, run));
    int onScreensG = room.screenChargeG() * run.stationsWith(ink);
    int charge = setUp ? onScreensG : 0;
    long charged = uses.stream().mapToLong(BatchFacts.Use::chargeG).sum();
    notes.check(
        charged == charge || !known && !setUp && charged == onScreensG,
        run.id(),
        "has %d g of %s on its screens, it takes %d g",
        charged,
        ink,
        charge);
    if (evidence.isFact(run)) {
      return;
    }
    double seconds = Math.max(1, run.printEnd() - run.firstPieceAt());
    for (BatchFacts.Use use : uses) {
      double share = needed * ((use.to() - use.from()) / seconds);
      double allowed = Tolerance.GRAMS_PER_USE * 2 + 2 * Tolerance.SECONDS * needed / seconds;
      notes.check(
          uses.size() == 1 || Math.abs(use.printG() - share) <= allowed,
          run.id(),
          "draws %d g of %s from batch %s from %s to %s, spread evenly it is %.0f g",
          use.printG(),
          ink,
          use.batch().id(),
          evidence.at(use.from()),
          evidence.at(use.to()),
          share);
      notes.check(
          use.chargeG() == 0 || use.from() <= run.firstPieceAt() + Tolerance.SECONDS,
          run.id(),
          "charges its screens from batch %s at %s, not at the first piece",
          use.batch().id(),
          evidence.at(use.from()));
    }
  }
}
