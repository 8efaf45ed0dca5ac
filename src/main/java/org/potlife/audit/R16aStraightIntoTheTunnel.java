package org.potlife.audit;

import java.util.List;

/**
 * R16a: goods go straight onto the belt: a press prints between its least and its own rate or
 * waits, and the last garment is off the belt when the belt has carried it its whole way.
 *
 * <p>The way is the belt's speed summed over the time from the last stroke on, so a belt that is
 * slowed for another run meanwhile delivers later.
 */
final class R16aStraightIntoTheTunnel implements Rule {

  @Override
  public String number() {
    return "R16a";
  }

  @Override
  public String title() {
    return "Straight into the tunnel";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (RunFacts run : evidence.runs()) {
      for (RunFacts.Rate rate : evidence.isFact(run) ? List.<RunFacts.Rate>of() : run.rates()) {
        notes.check(
            rate.perHour() >= run.press().minRatePerHour()
                && rate.perHour() <= run.press().ratePerHour(),
            run.id(),
            "prints %.0f pieces/h from %s, press %s prints %d to %d",
            rate.perHour(),
            evidence.at(rate.from()),
            run.press().id(),
            run.press().minRatePerHour(),
            run.press().ratePerHour());
      }
      if (evidence.floor().hasBegun(run.id()) && evidence.floor().hasReport()) {
        // another that goes otherwise than published may slow the belt behind it
        continue;
      }
      double carriedM = 0;
      long covered = 0;
      double fastest = 0;
      for (BeltFacts belt : evidence.belts(run.dryer())) {
        long from = Math.max(belt.from(), run.printEnd());
        long to = Math.min(belt.to(), run.offBelt());
        if (from < to) {
          carriedM += belt.speedMPerMin() * (to - from) / 60.0;
          covered += to - from;
          fastest = Math.max(fastest, belt.speedMPerMin());
        }
      }
      double way = run.dryer().beltLengthMm() / 1000.0;
      // where the belt's timetable has a hole, R14 says so
      boolean told = covered >= run.offBelt() - run.printEnd() && run.offBelt() > run.printEnd();
      if (told || run.offBelt() == run.printEnd()) {
        notes.check(
            carriedM + (fastest + Tolerance.SPEED_M_PER_MIN) * Tolerance.SECONDS / 60.0 >= way,
            run.id(),
            "is said to be off the belt %s, by then the belt has carried it %.2f m of %.2f m",
            evidence.at(run.offBelt()),
            carriedM,
            way);
      }
    }
  }
}
