package org.potlife.audit;

/**
 * R15: at every moment the presses that feed a dryer lay down no more garments than the belt
 * carries away; a press that the dryer holds back prints at the lower rate, and the plan says so.
 */
final class R15BeltArea implements Rule {

  @Override
  public String number() {
    return "R15";
  }

  @Override
  public String title() {
    return "Belt area";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    TunnelMoment bad = null;
    for (TunnelMoment moment : evidence.tunnelMoments()) {
      if (moment.belts().size() != 1) {
        continue;
      }
      double speed = moment.belts().get(0).speedMPerMin();
      boolean holds =
          moment.areaMPerMin() <= speed + Tolerance.SPEED_M_PER_MIN + moment.areaRoundingMPerMin()
              || moment.isFedByFactsAlone(evidence);
      boolean sameTrouble = bad != null && bad.continuesIn(moment);
      bad = holds ? null : moment;
      notes.check(
          holds || sameTrouble,
          "belt " + moment.dryer().id(),
          "from %s the runs %s need %.3f m/min, the belt runs at %.3f",
          evidence.at(moment.from()),
          moment.names(),
          moment.areaMPerMin(),
          speed);
    }
    for (BeltFacts belt : evidence.belts()) {
      if (belt.speedMPerMin() > 0) {
        BeltShare share = BeltShare.of(evidence, belt, moment -> areaPercent(moment, belt));
        notes.check(
            share.allows(belt.line().areaPercent()),
            "belt " + belt.dryer().id(),
            "says %d %% of its area from %s, the runs take %s",
            belt.line().areaPercent(),
            evidence.at(belt.from()),
            share);
      }
    }
    evidence.runs().stream().filter(run -> !evidence.isFact(run)).forEach(run -> rate(run, notes));
  }

  private static double areaPercent(TunnelMoment moment, BeltFacts belt) {
    return 100 * moment.areaMPerMin() / belt.speedMPerMin();
  }

  private static void rate(RunFacts run, Notes notes) {
    double seconds = 0;
    double pieces = 0;
    double fastest = 0;
    boolean held = false;
    for (RunFacts.Rate rate : run.rates()) {
      seconds += rate.to() - rate.from();
      pieces += rate.perHour() * (rate.to() - rate.from()) / 3600.0;
      fastest = Math.max(fastest, rate.perHour());
      held |= rate.perHour() < run.press().ratePerHour();
    }
    if (seconds > 0) {
      double mean = pieces * 3600 / seconds;
      // the last stroke is rounded up to a whole second
      double rounding = 1 + fastest * Tolerance.SECONDS / seconds;
      notes.check(
          Math.abs(run.line().ratePerHour() - mean) <= rounding,
          run.id(),
          "says %d pieces/h, its rates make %.1f",
          run.line().ratePerHour(),
          mean);
    }
    notes.check(
        "dryer".equals(run.line().limitedBy()) || "press".equals(run.line().limitedBy()) && !held,
        run.id(),
        "is said to be limited by the %s, it prints %d pieces/h on a press for %d",
        run.line().limitedBy(),
        run.line().ratePerHour(),
        run.press().ratePerHour());
  }
}
