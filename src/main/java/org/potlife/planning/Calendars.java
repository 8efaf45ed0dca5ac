package org.potlife.planning;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.shop.Closure;
import org.potlife.shop.Press;
import org.potlife.shop.Press.ExtraShift;
import org.potlife.shop.Shift;
import org.potlife.simulation.StaffedTime;

/**
 * Lays weekly shifts out over the horizon. On a day of clock change a shift is as long as its two
 * wall-clock ends are apart.
 */
final class Calendars {

  record Stretch(int from, int to, boolean overtime) {}

  private Calendars() {}

  /** Staffed time of a press; an extra shift counts as overtime where no other one is. */
  static StaffedTime staffed(Press press, Horizon horizon, int maxPauseS) {
    return build(stretches(press, horizon), maxPauseS);
  }

  /** The staffed stretches of a press, sorted and apart. */
  static List<Stretch> stretches(Press press, Horizon horizon) {
    return stretches(press.shifts(), press.extraShifts(), press.closures(), horizon);
  }

  private static List<Stretch> stretches(
      List<Shift> shifts, List<ExtraShift> extra, List<Closure> closures, Horizon horizon) {
    List<Stretch> stretches = new ArrayList<>();
    for (int day = -1; day <= horizon.days(); day++) {
      LocalDate date = horizon.firstDay().plusDays(day);
      for (Shift shift : shifts) {
        if (shift.days().contains(date.getDayOfWeek())) {
          stretches.addAll(of(shift, date, horizon));
        }
      }
    }
    for (ExtraShift once : extra) {
      int from = horizon.seconds(once.from());
      int to = horizon.secondsUp(once.to());
      stretches = without(stretches, from, to);
      if (to > from) {
        stretches.add(new Stretch(from, to, true));
      }
    }
    for (Closure closure : closures) {
      stretches =
          without(stretches, horizon.seconds(closure.from()), horizon.secondsUp(closure.to()));
    }
    return apart(stretches);
  }

  /** Staffed time of a room: who follows on without a gap goes on with the work. */
  static StaffedTime room(List<Shift> shifts, List<Closure> closures, Horizon horizon) {
    List<Shift> plain =
        shifts.stream().map(s -> new Shift(s.days(), s.from(), s.to(), s.breaks(), false)).toList();
    return build(stretches(plain, List.of(), closures, horizon), 0);
  }

  private static List<Stretch> of(Shift shift, LocalDate date, Horizon horizon) {
    int from = at(date, shift.from(), horizon);
    boolean overnight = !shift.to().isAfter(shift.from());
    int to = at(overnight ? date.plusDays(1) : date, shift.to(), horizon);
    List<Stretch> parts = new ArrayList<>();
    if (to > from) {
      parts.add(new Stretch(from, to, shift.overtime()));
    }
    for (Shift.Break pause : shift.breaks()) {
      LocalDate begins = pause.from().isBefore(shift.from()) ? date.plusDays(1) : date;
      LocalDate ends = pause.to().isAfter(pause.from()) ? begins : begins.plusDays(1);
      parts = without(parts, at(begins, pause.from(), horizon), at(ends, pause.to(), horizon));
    }
    return parts;
  }

  private static int at(LocalDate date, LocalTime time, Horizon horizon) {
    return horizon.seconds(date.atTime(time).atZone(horizon.zone()).toInstant());
  }

  private static List<Stretch> without(List<Stretch> stretches, int from, int to) {
    List<Stretch> left = new ArrayList<>();
    for (Stretch stretch : stretches) {
      if (to <= stretch.from() || from >= stretch.to()) {
        left.add(stretch);
        continue;
      }
      if (stretch.from() < from) {
        left.add(new Stretch(stretch.from(), from, stretch.overtime()));
      }
      if (to < stretch.to()) {
        left.add(new Stretch(to, stretch.to(), stretch.overtime()));
      }
    }
    return left;
  }

  /** Sorted, nothing before second 0; overlapping shifts count once, touching ones are joined. */
  private static List<Stretch> apart(List<Stretch> stretches) {
    List<Stretch> sorted = new ArrayList<>(stretches);
    sorted.sort(Comparator.comparingInt(Stretch::from).thenComparing(Stretch::overtime));
    List<Stretch> apart = new ArrayList<>();
    int until = 0;
    for (Stretch stretch : sorted) {
      int from = Math.max(until, stretch.from());
      if (from < stretch.to()) {
        Stretch last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
        if (last != null && last.to() == from && last.overtime() == stretch.overtime()) {
          apart.set(apart.size() - 1, new Stretch(last.from(), stretch.to(), last.overtime()));
        } else {
          apart.add(new Stretch(from, stretch.to(), stretch.overtime()));
        }
        until = stretch.to();
      }
    }
    return apart;
  }

  private static StaffedTime build(List<Stretch> stretches, int maxPauseS) {
    int n = stretches.size();
    int[] from = new int[n];
    int[] to = new int[n];
    boolean[] overtime = new boolean[n];
    for (int i = 0; i < n; i++) {
      from[i] = stretches.get(i).from();
      to[i] = stretches.get(i).to();
      overtime[i] = stretches.get(i).overtime();
    }
    return new StaffedTime(from, to, overtime, maxPauseS);
  }
}
