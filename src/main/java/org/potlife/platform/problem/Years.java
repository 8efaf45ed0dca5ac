package org.potlife.platform.problem;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;

/** The years that a moment may lie in: what is beyond them is a slip of the pen; our own choice. */
public final class Years {

  public static final int FIRST = 1970;
  public static final int LAST = 2199;

  private Years() {}

  public static boolean holds(int year) {
    return year >= FIRST && year <= LAST;
  }

  /**
   * A day from an address.
   *
   * @param name what it is called there
   * @throws ProblemException 400 when it is none
   */
  public static LocalDate day(String name, String text) {
    try {
      LocalDate day = LocalDate.parse(text);
      demand(name, day.getYear());
      return day;
    } catch (DateTimeException e) {
      throw ProblemException.badRequest(name + " must be a date like 2026-12-01.");
    }
  }

  /**
   * A moment from an address.
   *
   * @param name what it is called there
   * @throws ProblemException 400 when it is none
   */
  public static Instant moment(String name, String text) {
    try {
      OffsetDateTime moment = OffsetDateTime.parse(text);
      demand(name, moment.getYear());
      return moment.toInstant();
    } catch (DateTimeException e) {
      throw ProblemException.badRequest(
          name
              + " must be a date and time with an offset like 2026-12-01T06:00:00+01:00; a plus in"
              + " a query is written %2B.");
    }
  }

  private static void demand(String name, int year) {
    if (!holds(year)) {
      throw ProblemException.badRequest(
          name + " must lie in the years " + FIRST + " to " + LAST + ".");
    }
  }
}
