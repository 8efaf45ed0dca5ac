package org.potlife.planning;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.potlife.shop.Press;

/** When somebody is at a press, laid out in time as the plan reckons with it. */
public final class StaffedHours {

  private StaffedHours() {}

  /**
   * One staffed stretch between breaks, closures and nights.
   *
   * @param overtime whether it costs extra
   */
  public record Stretch(OffsetDateTime from, OffsetDateTime to, boolean overtime) {}

  /**
   * The stretches that begin at or after the start of a day.
   *
   * @param first first local day
   * @param last last local day
   */
  public static List<Stretch> of(Press press, ZoneId zone, LocalDate first, LocalDate last) {
    int days = (int) first.until(last, ChronoUnit.DAYS);
    Horizon horizon = Horizon.from(first.atStartOfDay(zone).toInstant(), zone, first, days);
    return Calendars.stretches(press, horizon).stream()
        .map(
            part ->
                new Stretch(horizon.time(part.from()), horizon.time(part.to()), part.overtime()))
        .toList();
  }
}
