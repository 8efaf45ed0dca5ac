package org.potlife.plan;

import jakarta.annotation.Priority;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** The service's clock in tests: the machine's, until a test sets it. */
public final class SettableClock extends Clock {

  private static final AtomicReference<Instant> SET = new AtomicReference<>();

  /** Stops the clock at this moment. */
  public static void set(OffsetDateTime now) {
    SET.set(now.toInstant());
  }

  /** Lets the machine's time through again. */
  public static void release() {
    SET.set(null);
  }

  @Override
  public Instant instant() {
    Instant set = SET.get();
    return set == null ? Clock.systemUTC().instant() : set;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("nobody should need it");
  }

  /** Puts it in the place of the machine's. */
  static final class Source {

    @Produces
    @Singleton
    @Alternative
    @Priority(1)
    Clock clock() {
      return new SettableClock();
    }
  }
}
