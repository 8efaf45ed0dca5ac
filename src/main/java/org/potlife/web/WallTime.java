package org.potlife.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * Times as they stand on a sheet for the wall: the plant's own clock, whole minutes. A plan counts
 * in seconds, so minutes are rounded to the side on which nothing goes wrong: a start and a latest
 * time are never shown later than they are, an end and a ready time never earlier.
 */
public final class WallTime {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

  private static final DateTimeFormatter HALF_DAY =
      DateTimeFormatter.ofPattern("h:mm a", Locale.ENGLISH);

  private final ZoneId zone;
  private final LocalDate day;
  private final DateTimeFormatter clock;

  /**
   * @param zone the plant's zone
   * @param day the sheet's day, whose date is left out of its times
   */
  public WallTime(ZoneId zone, LocalDate day) {
    this(zone, day, false);
  }

  /**
   * @param twelveHours whether the day has two halves of twelve hours
   */
  public WallTime(ZoneId zone, LocalDate day, boolean twelveHours) {
    this.zone = zone;
    this.day = day;
    this.clock = twelveHours ? HALF_DAY : TIME;
  }

  /**
   * A time ready to be shown.
   *
   * @param instant the exact instant, RFC 3339
   * @param date day of the week and month; empty on the sheet's own day
   * @param time hours and minutes, with the offset in the hour that the clocks show twice
   */
  public record Shown(String instant, String date, String time) {}

  /** A start, or the latest moment for something: rounded down. Null stays empty. */
  public Shown start(OffsetDateTime time) {
    return time == null ? null : shown(time, time.toInstant().truncatedTo(ChronoUnit.MINUTES));
  }

  /** An end, or the earliest moment for something: rounded up. Null stays empty. */
  public Shown end(OffsetDateTime time) {
    if (time == null) {
      return null;
    }
    Instant minute = time.toInstant().truncatedTo(ChronoUnit.MINUTES);
    return shown(time, minute.equals(time.toInstant()) ? minute : minute.plusSeconds(60));
  }

  /** A day in full. */
  public String full(LocalDate date) {
    return LONG.format(date);
  }

  /** A moment in full, for "printed at". */
  public String stamp(Instant instant) {
    return STAMP.format(instant.atZone(zone));
  }

  private Shown shown(OffsetDateTime exact, Instant minute) {
    ZonedDateTime local = minute.atZone(zone);
    boolean twice = zone.getRules().getValidOffsets(local.toLocalDateTime()).size() > 1;
    return new Shown(
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(exact),
        local.toLocalDate().equals(day) ? "" : SHORT.format(local),
        clock.format(local) + (twice ? " " + local.getOffset().getId() : ""));
  }
}
