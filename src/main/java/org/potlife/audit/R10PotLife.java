package org.potlife.audit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * R10: an activated batch is used between the end of its stand time and the end of its pot life; a
 * plain batch from the end of mixing on. The batches of one run follow one another without a gap.
 */
final class R10PotLife implements Rule {

  @Override
  public String number() {
    return "R10";
  }

  @Override
  public String title() {
    return "Pot life";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (BatchFacts batch : evidence.batches()) {
      clock(evidence, batch, notes);
      for (BatchFacts.Use use : batch.uses()) {
        if (evidence.isDrawnAsItIs(batch, use.run())) {
          // the clock that it really has is no fault of the plan
          continue;
        }
        notes.check(
            batch.readyAt() <= use.from(),
            batch.id(),
            "run %s draws from %s, it is ready %s",
            use.run().id(),
            evidence.at(use.from()),
            evidence.at(batch.readyAt()));
        // a use that begins past the pot life is a leftover past its clock: R13
        if (batch.useBy() != null && use.from() <= batch.useBy()) {
          notes.check(
              use.to() <= batch.useBy(),
              batch.id(),
              "run %s draws until %s, it must be gone %s",
              use.run().id(),
              evidence.at(use.to()),
              evidence.at(batch.useBy()));
        }
      }
    }
    for (RunFacts run : evidence.runs()) {
      run.inks().stream()
          .map(ink -> ink.id())
          .distinct()
          .forEach(ink -> cover(evidence, run, ink, notes));
    }
  }

  private static void clock(Evidence evidence, BatchFacts batch, Notes notes) {
    if (!batch.activated()) {
      notes.check(
          batch.readyAt() == batch.activatedAt() && batch.activateFrom() == batch.activatedAt(),
          batch.id(),
          "has no agent, so it is ready when mixed, %s",
          evidence.at(batch.activatedAt()));
      notes.check(batch.useBy() == null, batch.id(), "has no agent, so it has no pot life");
      return;
    }
    evidence
        .ink()
        .activatedAt(batch.id())
        .filter(told -> evidence.isTakenOver(batch))
        .ifPresent(
            told ->
                notes.check(
                    Math.abs(told - batch.activatedAt()) <= Tolerance.SECONDS,
                    batch.id(),
                    "is said to be activated %s, the ink room did it %s",
                    evidence.at(batch.activatedAt()),
                    evidence.at(told)));
    long stand = batch.system().standMinutes() * 60L;
    long life = batch.system().potLifeMinutes() * 60L;
    notes.check(
        Math.abs(batch.readyAt() - batch.activatedAt() - stand) <= Tolerance.SECONDS,
        batch.id(),
        "is activated %s and said to be ready %s, it stands %d min",
        evidence.at(batch.activatedAt()),
        evidence.at(batch.readyAt()),
        stand / 60);
    notes.check(
        batch.useBy() != null
            && Math.abs(batch.useBy() - batch.activatedAt() - life) <= Tolerance.SECONDS,
        batch.id(),
        "is activated %s and said to last until %s, its pot life is %d min",
        evidence.at(batch.activatedAt()),
        batch.useBy() == null ? "for ever" : evidence.at(batch.useBy()),
        life / 60);
  }

  private static void cover(Evidence evidence, RunFacts run, String ink, Notes notes) {
    if (evidence.isFact(run)) {
      return;
    }
    List<BatchFacts.Use> uses =
        uses(evidence, run, ink).sorted(Comparator.comparingLong(BatchFacts.Use::from)).toList();
    // a run without ink is R11's finding
    long covered = run.firstPieceAt();
    for (BatchFacts.Use use : uses) {
      notes.check(
          Math.abs(use.from() - covered) <= Tolerance.SECONDS,
          run.id(),
          "draws %s from batch %s from %s, the turn before ends %s",
          ink,
          use.batch().id(),
          evidence.at(use.from()),
          evidence.at(covered));
      covered = use.to();
    }
    if (!uses.isEmpty()) {
      notes.check(
          Math.abs(run.printEnd() - covered) <= Tolerance.SECONDS,
          run.id(),
          "has %s until %s, it prints until %s",
          ink,
          evidence.at(covered),
          evidence.at(run.printEnd()));
    }
  }

  /** What a run draws of an ink, from all its batches. */
  static Stream<BatchFacts.Use> uses(Evidence evidence, RunFacts run, String ink) {
    return evidence.uses(run).stream().filter(use -> use.batch().ink().equals(ink));
  }
}
