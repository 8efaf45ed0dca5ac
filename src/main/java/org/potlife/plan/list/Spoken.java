package org.potlife.plan.list;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and amounts as people say them. */
final class Spoken {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private Spoken() {}

  /** Day and time of day in the plant's zone, whose offset the times of a plan carry. */
  static String time(OffsetDateTime time) {
    return TIME.format(time);
  }

  /** A length in minutes, from two hours on in hours. */
  static String minutes(long minutes) {
    if (minutes < 120) {
      return minutes + " min";
    }
    return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }

  /** How an order stands to its due date. */
  static String lateness(long lateMinutes) {
    return lateMinutes == 0 ? "on time" : minutes(lateMinutes) + " late";
  }
}
