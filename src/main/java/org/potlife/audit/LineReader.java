package org.potlife.audit;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;

/**
 * Reads single fields of the sheet; what cannot be read becomes a finding of R0.
 *
 * <p>A time further than {@value #REACH_DAYS} days from the planning is a slip of the pen: no plan
 * reaches that far, and calendars are only drawn up for times that a plan can have.
 */
final class LineReader {

  static final int REACH_DAYS = 400;

  private final Notes notes;
  private final long plannedAt;
  private long earliest;
  private long latest;

  LineReader(Notes notes, long plannedAt) {
    this.notes = notes;
    this.plannedAt = plannedAt;
    this.earliest = plannedAt;
    this.latest = plannedAt;
  }

  /** The time that all legible lines lie in. */
  Stretch window() {
    return new Stretch(earliest, latest);
  }

  /** Lines without the missing ones. */
  <T> List<T> lines(List<T> lines, String subject, String what) {
    if (!notes.check(lines != null, subject, "has no %s at all", what)) {
      return List.of();
    }
    List<T> there = lines.stream().filter(Objects::nonNull).toList();
    notes.check(
        there.size() == lines.size(),
        subject,
        "has %d empty lines among its %s",
        lines.size() - there.size(),
        what);
    return there;
  }

  /** Whether there is a value. */
  boolean given(Object value, String subject, String what) {
    return notes.check(value != null, subject, "has no %s", what);
  }

  /** Whether a moment is there and within reach. */
  boolean legible(OffsetDateTime time, String subject, String what) {
    if (!given(time, subject, what)) {
      return false;
    }
    long second = time.toEpochSecond();
    boolean near = Math.abs(second - plannedAt) <= REACH_DAYS * 86_400L;
    if (notes.check(
        near, subject, "%s %s is more than %d days from the planning", what, time, REACH_DAYS)) {
      earliest = Math.min(earliest, second);
      latest = Math.max(latest, second);
    }
    return near;
  }

  /** Whether the moments are there, within reach and not before one another. */
  boolean inOrder(String subject, List<String> names, List<OffsetDateTime> times) {
    boolean legible = true;
    for (int i = 0; i < names.size(); i++) {
      legible &= legible(times.get(i), subject, names.get(i));
    }
    for (int i = 1; legible && i < names.size(); i++) {
      legible =
          notes.check(
              times.get(i - 1).toEpochSecond() <= times.get(i).toEpochSecond(),
              subject,
              "%s %s lies after %s %s",
              names.get(i - 1),
              times.get(i - 1),
              names.get(i),
              times.get(i));
    }
    return legible;
  }

  boolean check(boolean holds, String subject, String detail, Object... arguments) {
    return notes.check(holds, subject, detail, arguments);
  }
}
