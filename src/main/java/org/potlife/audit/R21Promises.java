package org.potlife.audit;

/**
 * R21: nothing is hidden: every run of every open order is on the sheet or listed as unplaced with
 * its cause, lateness is recomputed, the list of late orders is complete, and every minute that a
 * press waits has a cause.
 */
final class R21Promises implements Rule {

  @Override
  public String number() {
    return "R21";
  }

  @Override
  public String title() {
    return "Promises are kept or told";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    new Completeness(evidence, notes).check();
    new Lateness(evidence, notes).check();
    new Waits(evidence, notes).check();
  }
}
