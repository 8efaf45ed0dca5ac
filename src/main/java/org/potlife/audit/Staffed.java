package org.potlife.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.potlife.shop.Closure;
import org.potlife.shop.Press;
import org.potlife.shop.Press.ExtraShift;
import org.potlife.shop.Shift;

/**
 * The staffed time of a press or room: its shifts, each without its own breaks, less the closures.
 *
 * <p>Shifts and breaks are wall-clock times, so a shift over a change of the clock is as long as
 * the instants of its two ends are apart. A wall-clock time that the change leaves out counts as
 * that much later; one that happens twice counts as the first.
 */
final class Staffed {

  private final List<Stretch> stretches;
  private final long[] ends;

  private Staffed(List<Stretch> stretches) {
    this.stretches = stretches;
    this.ends = stretches.stream().mapToLong(Stretch::to).toArray();
  }

  /** Staffed time of all shifts that start in the window or on the day before it. */
  static Staffed of(List<Shift> shifts, List<Closure> closures, ZoneId zone, Stretch window) {
    return of(shifts, List.of(), closures, zone, window);
  }

  private static Staffed of(
      List<Shift> shifts,
      List<ExtraShift> extra,
      List<Closure> closures,
      ZoneId zone,
      Stretch window) {
    List<Stretch> worked = new ArrayList<>();
    LocalDate last = dayOf(window.to(), zone).plusDays(1);
    for (LocalDate day = dayOf(window.from(), zone).minusDays(2);
        !day.isAfter(last);
        day = day.plusDays(1)) {
      for (Shift shift : shifts) {
        if (shift.days().contains(day.getDayOfWeek())) {
          worked.addAll(shiftOn(day, shift, zone));
        }
      }
    }
    for (ExtraShift once : extra) {
      if (once.from().isBefore(once.to())) {
        worked.add(new Stretch(once.from().toEpochSecond(), once.to().toEpochSecond()));
      }
    }
    List<Stretch> closed =
        closures.stream()
            .map(c -> new Stretch(c.from().toEpochSecond(), c.to().toEpochSecond()))
            .filter(c -> c.from() < c.to())
            .toList();
    return new Staffed(
        Stretch.join(worked, 0).stream().flatMap(s -> s.without(closed).stream()).toList());
  }

  /** Staffed time of a press with its extra shifts. */
  static Staffed of(Press press, ZoneId zone, Stretch window) {
    return of(press.shifts(), press.extraShifts(), press.closures(), zone, window);
  }

  /** Staffed at all times: by the clock. */
  static Staffed always() {
    return new Staffed(List.of(new Stretch(Long.MIN_VALUE / 4, Long.MAX_VALUE / 4)));
  }

  /** When so many staffed seconds after a moment are over; by the clock where none are left. */
  long after(long from, long seconds) {
    long left = seconds;
    for (int i = firstEndingAfter(from); i < stretches.size(); i++) {
      long begins = Math.max(from, stretches.get(i).from());
      if (left <= stretches.get(i).to() - begins) {
        return begins + left;
      }
      left -= stretches.get(i).to() - begins;
    }
    return from + seconds;
  }

  private static List<Stretch> shiftOn(LocalDate day, Shift shift, ZoneId zone) {
    LocalDate endDay = shift.to().isAfter(shift.from()) ? day : day.plusDays(1);
    Stretch whole = new Stretch(at(day, shift.from(), zone), at(endDay, shift.to(), zone));
    if (whole.seconds() <= 0) {
      return List.of();
    }
    List<Stretch> breaks = new ArrayList<>();
    for (Shift.Break pause : shift.breaks()) {
      // in a night shift a break before the shift's time of day is after midnight
      LocalDate from = pause.from().isBefore(shift.from()) ? day.plusDays(1) : day;
      LocalDate to = pause.to().isAfter(pause.from()) ? from : from.plusDays(1);
      breaks.add(new Stretch(at(from, pause.from(), zone), at(to, pause.to(), zone)));
    }
    return whole.without(breaks);
  }

  private static long at(LocalDate day, LocalTime time, ZoneId zone) {
    return day.atTime(time).atZone(zone).toEpochSecond();
  }

  private static LocalDate dayOf(long second, ZoneId zone) {
    return Instant.ofEpochSecond(second).atZone(zone).toLocalDate();
  }

  List<Stretch> stretches() {
    return stretches;
  }

  /** Staffed stretches whose gaps are at most {@code maxPauseS} seconds, taken together. */
  List<Stretch> spans(long maxPauseS) {
    return Stretch.join(stretches, maxPauseS);
  }

  /** Staffed seconds between two moments. */
  long seconds(long from, long to) {
    return within(from, to).stream().mapToLong(Stretch::seconds).sum();
  }

  /** The staffed parts of a time. */
  List<Stretch> within(long from, long to) {
    List<Stretch> parts = new ArrayList<>();
    for (int i = firstEndingAfter(from);
        i < stretches.size() && stretches.get(i).from() < to;
        i++) {
      parts.add(
          new Stretch(
              Math.max(stretches.get(i).from(), from), Math.min(stretches.get(i).to(), to)));
    }
    return parts;
  }

  /** Whether a time, be it a moment, lies within one staffed stretch. */
  boolean inOneStretch(long from, long to) {
    int at = firstEndingAfter(from);
    return at < stretches.size() && stretches.get(at).holds(from, to)
        || at > 0 && stretches.get(at - 1).holds(from, to);
  }

  private int firstEndingAfter(long second) {
    int at = Arrays.binarySearch(ends, second);
    return at >= 0 ? at + 1 : -at - 1;
  }
}
