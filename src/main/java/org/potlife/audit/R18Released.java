package org.potlife.audit;

import org.potlife.ink.Process;
import org.potlife.order.TrialPrint;

/** R18: garments in house, artwork approved and, for discharge, the trial print passed. */
final class R18Released implements Rule {

  @Override
  public String number() {
    return "R18";
  }

  @Override
  public String title() {
    return "Released for printing";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (RunFacts run : evidence.runs()) {
      if (evidence.floor().hasBegun(run.id())) {
        continue;
      }
      long inHouse = run.order().garments().availableFrom().toEpochSecond();
      notes.check(
          run.firstPieceAt() >= inHouse,
          run.id(),
          "prints its first piece %s, the garments are in house %s",
          evidence.at(run.firstPieceAt()),
          evidence.at(inHouse));
      notes.check(
          run.print().artworkApproved(),
          run.id(),
          "the artwork %s is not approved",
          run.print().design());
      notes.check(
          run.print().process() != Process.DISCHARGE
              || run.print().trialPrint() == TrialPrint.PASSED,
          run.id(),
          "the trial print of %s has not passed, it is %s",
          run.print().design(),
          run.print().trialPrint());
    }
  }
}
