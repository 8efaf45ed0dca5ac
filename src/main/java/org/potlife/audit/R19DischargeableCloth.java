package org.potlife.audit;

import org.potlife.ink.Process;
import org.potlife.order.Garments;
import org.potlife.shop.ClothRules;

/** R19: discharge needs a cotton share of at least the plant's limit and a dye that discharges. */
final class R19DischargeableCloth implements Rule {

  @Override
  public String number() {
    return "R19";
  }

  @Override
  public String title() {
    return "Discharge only on cloth that discharges";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    ClothRules cloth = evidence.shop().cloth();
    for (RunFacts run : evidence.runs()) {
      if (run.print().process() != Process.DISCHARGE) {
        continue;
      }
      Garments garments = run.order().garments();
      notes.check(
          garments.cottonPercent() >= cloth.dischargeMinCottonPercent(),
          run.id(),
          "discharges on %.0f %% cotton, it takes %.0f %%",
          garments.cottonPercent(),
          cloth.dischargeMinCottonPercent());
      notes.check(
          cloth.dischargeableDyes().contains(garments.dye()),
          run.id(),
          "discharges on %s dye, only %s discharges",
          garments.dye(),
          cloth.dischargeableDyes());
    }
  }
}
