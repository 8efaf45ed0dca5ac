package org.potlife.audit;

import java.util.Comparator;
import java.util.List;

/**
 * R3: set-up and print lie in one span of the press (staffed stretches with pauses of at most its
 * longest pause), and it prints in all the staffed time from the end of the set-up to the last
 * stroke and at no other.
 */
final class R3StaffedTime implements Rule {

  @Override
  public String number() {
    return "R3";
  }

  @Override
  public String title() {
    return "Staffed time";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    for (RunFacts run : evidence.runs()) {
      if (evidence.isFact(run)) {
        continue;
      }
      Staffed staffed = evidence.staffed(run.press());
      notes.check(
          staffed.spans(run.press().maxPauseMinutes() * 60L).stream()
              .anyMatch(span -> span.holds(run.setUpStart(), run.printEnd())),
          run.id(),
          "works from %s to %s, which is not within one staffed span of press %s (pauses up to %d"
              + " min)",
          evidence.at(run.setUpStart()),
          evidence.at(run.printEnd()),
          run.press().id(),
          run.press().maxPauseMinutes());
      long printed = 0;
      long end = run.printStart();
      List<RunFacts.Rate> rates =
          run.rates().stream().sorted(Comparator.comparingLong(RunFacts.Rate::from)).toList();
      for (RunFacts.Rate rate : rates) {
        notes.check(
            staffed.seconds(rate.from(), rate.to()) == rate.to() - rate.from(),
            run.id(),
            "prints from %s to %s, when press %s is not staffed throughout",
            evidence.at(rate.from()),
            evidence.at(rate.to()),
            run.press().id());
        notes.check(
            rate.from() >= end && rate.to() <= run.printEnd(),
            run.id(),
            "has a rate from %s to %s outside its printing time or twice",
            evidence.at(rate.from()),
            evidence.at(rate.to()));
        printed += rate.to() - rate.from();
        end = rate.to();
      }
      long available = staffed.seconds(run.printStart(), run.printEnd());
      notes.check(
          Math.abs(available - printed) <= Tolerance.SECONDS * (run.rates().size() + 1),
          run.id(),
          "prints %.1f min of the %.1f staffed minutes from %s to %s",
          printed / 60.0,
          available / 60.0,
          evidence.at(run.printStart()),
          evidence.at(run.printEnd()));
    }
  }
}
