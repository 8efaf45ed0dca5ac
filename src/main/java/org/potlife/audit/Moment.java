package org.potlife.audit;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A moment in words, on the plant's clock. */
record Moment(long second, ZoneId zone) {

  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm:ss", Locale.ENGLISH);

  @Override
  public String toString() {
    return WORDS.format(Instant.ofEpochSecond(second).atZone(zone));
  }
}
