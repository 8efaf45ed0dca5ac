package org.potlife.platform;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;

/** The one place that reads the machine's time. Everything else is given a {@link Clock}. */
@Singleton
final class SystemClock {

  @Produces
  @Singleton
  Clock clock() {
    return Clock.systemUTC();
  }
}
