package org.potlife.platform;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.function.LongSupplier;

/**
 * A clock that begins at a chosen moment when it is made and runs at a chosen speed. After a
 * restart it begins anew.
 */
final class ReplayedClock extends Clock {

  private static final double FASTEST = 10_000;
  private static final String FORM =
      "potlife.clock must be real, or a moment and a speed such as 2026-12-01T05:30:00+01:00@60"
          + " (speed above 0, at most 10000; 1 when left out)";

  private final Instant start;
  private final double speed;
  private final LongSupplier nanos;
  private final long begunNs;

  /**
   * @param speed seconds of this clock per second
   * @param nanos counts nanoseconds
   */
  ReplayedClock(Instant start, double speed, LongSupplier nanos) {
    this.start = start;
    this.speed = speed;
    this.nanos = nanos;
    this.begunNs = nanos.getAsLong();
  }

  /**
   * Reads the setting.
   *
   * @throws IllegalArgumentException with the form that is expected
   */
  static ReplayedClock parse(String setting, LongSupplier nanos) {
    String[] parts = setting.strip().split("@", -1);
    if (parts.length > 2) {
      throw new IllegalArgumentException(FORM);
    }
    try {
      double speed = parts.length == 1 ? 1 : Double.parseDouble(parts[1]);
      if (!(speed > 0 && speed <= FASTEST)) {
        throw new IllegalArgumentException(FORM);
      }
      return new ReplayedClock(OffsetDateTime.parse(parts[0]).toInstant(), speed, nanos);
    } catch (DateTimeException | NumberFormatException e) {
      throw new IllegalArgumentException(FORM, e);
    }
  }

  double speed() {
    return speed;
  }

  @Override
  public Instant instant() {
    return start.plus(Duration.ofNanos(Math.round((nanos.getAsLong() - begunNs) * speed)));
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("instants need no zone");
  }
}
