package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.potlife.simulation.StaffedTime;

/**
 * The one border between instants and the engine's whole seconds.
 *
 * @param origin second 0
 * @param zone the plant's zone
 * @param firstDay local day of the origin
 * @param days local days from there on
 */
record Horizon(Instant origin, ZoneId zone, LocalDate firstDay, int days) {

  static Horizon from(Instant plannedAt, ZoneId zone, LocalDate day, int daysAhead) {
    Instant origin = Instant.ofEpochSecond(plannedAt.getEpochSecond());
    LocalDate first = origin.atZone(zone).toLocalDate();
    int lead = (int) Math.max(0, first.until(day, java.time.temporal.ChronoUnit.DAYS));
    return new Horizon(origin, zone, first, lead + daysAhead);
  }

  /** The same horizon, seen from so many days before. */
  Horizon earlier(int daysBefore) {
    return new Horizon(
        origin.minusSeconds(86_400L * daysBefore),
        zone,
        firstDay.minusDays(daysBefore + 1L),
        days + daysBefore + 1);
  }

  /** Seconds from the origin, held within what the engine can count. */
  int seconds(Instant instant) {
    long seconds = instant.getEpochSecond() - origin.getEpochSecond();
    return (int) Math.max(-StaffedTime.NEVER, Math.min(StaffedTime.NEVER, seconds));
  }

  int seconds(OffsetDateTime time) {
    return seconds(time.toInstant());
  }

  /** Like {@link #seconds}, a part of a second counting as a whole one. */
  int secondsUp(OffsetDateTime time) {
    int seconds = seconds(time);
    return time.getNano() > 0 && seconds < StaffedTime.NEVER ? seconds + 1 : seconds;
  }

  OffsetDateTime time(int seconds) {
    return origin.plusSeconds(seconds).atZone(zone).toOffsetDateTime();
  }

  int startOf(LocalDate day) {
    return seconds(day.atStartOfDay(zone).toInstant());
  }

  /** Starts of the local days, the first one not after 0. */
  int[] dayStarts() {
    int[] starts = new int[days + 2];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = startOf(firstDay.plusDays(i));
    }
    return starts;
  }

  int end() {
    return startOf(firstDay.plusDays(days));
  }
}
