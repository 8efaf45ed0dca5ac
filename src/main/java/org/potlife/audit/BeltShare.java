package org.potlife.audit;

import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Least and greatest share of a belt's area or heat during one setting, percent. The sheet gives
 * one figure for a setting in which runs may come and go: any figure between the two is true.
 */
record BeltShare(double least, double greatest) {

  static BeltShare of(Evidence evidence, BeltFacts belt, ToDoubleFunction<TunnelMoment> percent) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (TunnelMoment moment : evidence.tunnelMoments(belt)) {
      double share = percent.applyAsDouble(moment);
      least = Math.min(least, share);
      greatest = Math.max(greatest, share);
    }
    return new BeltShare(Math.min(least, greatest), greatest);
  }

  boolean allows(int percent) {
    return percent >= least - Tolerance.BELT_LINE && percent <= greatest + Tolerance.BELT_LINE;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f to %.1f %%", least, greatest);
  }
}
