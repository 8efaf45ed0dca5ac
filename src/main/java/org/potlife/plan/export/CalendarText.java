package org.potlife.plan.export;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Content lines of an iCalendar stream (RFC 5545, 3.1): folded, escaped, ended by CRLF. */
final class CalendarText {

  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  /** Octets of a line without its end (3.1); the blank of a folded line counts. */
  private static final int LONGEST = 75;

  private final StringBuilder text = new StringBuilder();

  /** A property whose value is written as it is. */
  CalendarText line(String name, String value) {
    fold(name + ":" + value);
    return this;
  }

  /** A property of the type TEXT (3.3.11). */
  CalendarText text(String name, String value) {
    return line(name, escaped(value));
  }

  /** A property of the type DATE-TIME in UTC (3.3.5, form 2). */
  CalendarText at(String name, Instant moment) {
    return line(name, UTC.format(moment));
  }

  private static String escaped(String value) {
    StringBuilder escaped = new StringBuilder();
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '\n') {
                escaped.append("\\n");
              } else if (c == '\\' || c == ';' || c == ',') {
                escaped.append('\\').appendCodePoint(c);
              } else if (c >= ' ' && c != 0x7f || c == '\t') {
                // other control characters are not allowed in a text
                escaped.appendCodePoint(c);
              }
            });
    return escaped.toString();
  }

  private void fold(String line) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int c = line.codePointAt(i);
      int width = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
      if (octets + width > LONGEST) {
        text.append("\r\n ");
        octets = 1;
      }
      text.appendCodePoint(c);
      octets += width;
      i += Character.charCount(c);
    }
    text.append("\r\n");
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
