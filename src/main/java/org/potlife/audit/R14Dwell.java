package org.potlife.audit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * R14: at every moment with a run in the tunnel the belt's timetable gives one speed, and it leaves
 * every garment in the heated length for as long as the slowest of its inks needs.
 */
final class R14Dwell implements Rule {

  @Override
  public String number() {
    return "R14";
  }

  @Override
  public String title() {
    return "Dwell";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (TunnelMoment moment : evidence.tunnelMoments()) {
      // what is past needs no setting any more
      boolean told = moment.to() <= evidence.plannedAt() || moment.belts().size() == 1;
      notes.check(
          told || moment.inTunnel().isEmpty(),
          "belt " + moment.dryer().id(),
          "has %d settings from %s to %s, with %s in the tunnel",
          moment.belts().size(),
          evidence.at(moment.from()),
          evidence.at(moment.to()),
          moment.names());
    }
    for (BeltFacts belt : evidence.belts()) {
      String subject = "belt " + belt.dryer().id();
      double heatedM = belt.dryer().heatedLengthMm() / 1000.0;
      List<RunFacts> inTunnel = Tunnel.during(evidence, belt);
      for (RunFacts run : inTunnel) {
        double limit =
            Math.min(belt.dryer().maxSpeedMPerMin(), heatedM * 60 / Math.max(1, run.dwellS()));
        notes.check(
            belt.speedMPerMin() <= limit + Tolerance.SPEED_M_PER_MIN,
            subject,
            "runs at %.3f m/min from %s, run %s allows %.3f m/min (dwell %d s in %.1f m)",
            belt.speedMPerMin(),
            evidence.at(belt.from()),
            run.id(),
            limit,
            run.dwellS(),
            heatedM);
      }
      double dwellS = belt.speedMPerMin() > 0 ? heatedM * 60 / belt.speedMPerMin() : 0;
      notes.check(
          belt.speedMPerMin() == 0
              || Math.abs(belt.line().dwellS() - dwellS) <= Tolerance.BELT_LINE,
          subject,
          "says %d s of dwell from %s, at %.3f m/min it is %.1f s",
          belt.line().dwellS(),
          evidence.at(belt.from()),
          belt.speedMPerMin(),
          dwellS);
      Set<String> names = new TreeSet<>();
      inTunnel.forEach(run -> names.add(run.id()));
      notes.check(
          belt.line().runs() != null
              && belt.line().runs().size() == names.size()
              && names.containsAll(Tunnel.withoutMissing(belt.line().runs())),
          subject,
          "lists the runs %s from %s, in the tunnel are %s",
          belt.line().runs(),
          evidence.at(belt.from()),
          names);
    }
  }
}
