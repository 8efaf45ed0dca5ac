package org.potlife.shop;

import java.time.LocalTime;
import java.util.List;

/** Shifts hold their breaks, closures end after they begin. */
final class ShiftCheck {

  private static final int DAY_S = 24 * 60 * 60;

  private final Findings findings;
  private final String owner;

  ShiftCheck(Findings findings, String owner) {
    this.findings = findings;
    this.owner = owner;
  }

  void run(List<Shift> shifts, List<Closure> closures) {
    Findings.each(shifts, this::breaks);
    Findings.each(
        closures,
        (closure, i) -> {
          if (closure.from() != null
              && closure.to() != null
              && !closure.from().isBefore(closure.to())) {
            findings.add(owner + "/closures/" + i + "/to", "must be after from");
          }
        });
  }

  /** Extra shifts end after they begin. */
  void extra(List<Press.ExtraShift> extra) {
    Findings.each(
        extra,
        (shift, i) -> {
          if (shift.from() != null && shift.to() != null && !shift.from().isBefore(shift.to())) {
            findings.add(owner + "/extraShifts/" + i + "/to", "must be after from");
          }
        });
  }

  private void breaks(Shift shift, int number) {
    if (shift.from() == null || shift.to() == null) {
      return;
    }
    int start = shift.from().toSecondOfDay();
    int end = notBefore(shift.to(), start + 1);
    Findings.each(
        shift.breaks(),
        (pause, i) -> {
          if (pause.from() == null || pause.to() == null) {
            return;
          }
          // a break before the shift's own start lies behind midnight
          int from = notBefore(pause.from(), start);
          int to = notBefore(pause.to(), from + 1);
          if (to > end) {
            findings.add(
                owner + "/shifts/" + number + "/breaks/" + i,
                "must lie within the shift "
                    + shift.from()
                    + " to "
                    + shift.to()
                    + ", was "
                    + pause.from()
                    + " to "
                    + pause.to());
          }
        });
  }

  private static int notBefore(LocalTime time, int secondOfDay) {
    int second = time.toSecondOfDay();
    return second < secondOfDay ? second + DAY_S : second;
  }
}
