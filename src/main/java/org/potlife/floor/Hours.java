package org.potlife.floor;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What was told of the hours of presses and dryers, put together by the time at which it was told
 * to hold, in whatever order it came in.
 */
public final class Hours {

  /**
   * A press or dryer that nobody tells to be up is taken to be down so long at least; our own
   * choice.
   */
  private static final Duration LEAST_DOWN = Duration.ofHours(2);

  private Hours() {}

  /**
   * It went down, or came up again.
   *
   * @param press null for a dryer
   * @param dryer null for a press
   * @param up whether it came up
   * @param until when it is expected to be up; null when nobody knows, and for what came up
   */
  public record Told(
      String press, String dryer, Instant at, boolean up, Instant until, String cause) {

    private String name() {
      return press == null ? "dryer " + dryer : "press " + press;
    }
  }

  /**
   * A press is staffed, or not, for a time.
   *
   * @param at when it was told
   */
  public record ToldShift(String press, Instant at, Instant from, Instant to, boolean staffed) {}

  /** The times in which each of them is down, apart, by start. */
  public static List<Downtime> down(List<Told> told, ZoneId zone, Instant now) {
    Map<String, List<Told>> byName = new HashMap<>();
    told.stream()
        .sorted(Comparator.comparing(Told::at).thenComparing(Told::up))
        .forEach(each -> byName.computeIfAbsent(each.name(), n -> new ArrayList<>()).add(each));
    List<Downtime> down = new ArrayList<>();
    byName.values().forEach(own -> down.addAll(downOf(own, zone, now)));
    down.sort(
        Comparator.comparing((Downtime each) -> each.from().toInstant())
            .thenComparing(each -> each.press() == null ? each.dryer() : each.press()));
    return down;
  }

  private static List<Downtime> downOf(List<Told> own, ZoneId zone, Instant now) {
    List<Downtime> down = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      Told told = own.get(i);
      if (told.up()) {
        continue;
      }
      // the next word on it ends this one, be it that it is up or that it is down until later
      Instant next = i + 1 < own.size() ? own.get(i + 1).at() : null;
      Instant to = told.until() == null ? unlessTold(zone, now) : told.until();
      if (next != null && (told.until() == null || next.isBefore(to))) {
        to = next;
      }
      if (told.at().isBefore(to)) {
        down.add(
            new Downtime(
                told.press(), told.dryer(), at(told.at(), zone), at(to, zone), told.cause()));
      }
    }
    return down;
  }

  /** The end of the local day, and two hours from now at least. */
  private static Instant unlessTold(ZoneId zone, Instant now) {
    Instant endOfDay = now.atZone(zone).toLocalDate().plusDays(1).atStartOfDay(zone).toInstant();
    Instant least = now.plus(LEAST_DOWN);
    return endOfDay.isAfter(least) ? endOfDay : least;
  }

  /** What holds of each press, apart, by start: of a moment the latest word. */
  public static List<Staffing> staffing(List<ToldShift> told, ZoneId zone) {
    List<Staffing> held = new ArrayList<>();
    told.stream()
        .sorted(Comparator.comparing(ToldShift::at))
        .forEach(
            shift -> {
              OffsetDateTime from = at(shift.from(), zone);
              OffsetDateTime to = at(shift.to(), zone);
              List<Staffing> rest = new ArrayList<>();
              held.forEach(other -> rest.addAll(without(other, shift.press(), from, to)));
              rest.add(new Staffing(shift.press(), from, to, shift.staffed()));
              held.clear();
              held.addAll(rest);
            });
    held.sort(
        Comparator.comparing((Staffing each) -> each.from().toInstant())
            .thenComparing(Staffing::press));
    return held;
  }

  private static List<Staffing> without(
      Staffing held, String press, OffsetDateTime from, OffsetDateTime to) {
    if (!held.press().equals(press) || !held.from().isBefore(to) || !from.isBefore(held.to())) {
      return List.of(held);
    }
    List<Staffing> parts = new ArrayList<>();
    if (held.from().isBefore(from)) {
      parts.add(new Staffing(press, held.from(), from, held.staffed()));
    }
    if (to.isBefore(held.to())) {
      parts.add(new Staffing(press, to, held.to(), held.staffed()));
    }
    return parts;
  }

  private static OffsetDateTime at(Instant time, ZoneId zone) {
    return time.atZone(zone).toOffsetDateTime();
  }
}
