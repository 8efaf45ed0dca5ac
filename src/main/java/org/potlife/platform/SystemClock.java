package org.potlife.platform;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * The one place that reads the machine's time. Everything else is given a {@link Clock}: the
 * machine's, or with the setting {@code potlife.clock} one that replays a day.
 */
@Singleton
final class SystemClock {

  private static final Logger LOG = Logger.getLogger(SystemClock.class);
  private static final int FIRST = 1;

  private final String setting;
  private final Clock clock;

  @Inject
  SystemClock(@ConfigProperty(name = "potlife.clock", defaultValue = "real") String setting) {
    this.setting = setting;
    this.clock =
        setting.strip().equals("real")
            ? Clock.systemUTC()
            : ReplayedClock.parse(setting, System::nanoTime);
  }

  @Produces
  @Singleton
  Clock clock() {
    return clock;
  }

  void tell(@Observes @Priority(FIRST) StartupEvent event) {
    if (clock instanceof ReplayedClock) {
      LOG.warnf(
          "THE CLOCK IS NOT REAL: potlife.clock=%s, it is now %s. Times are replayed; nobody may"
              + " print by this plan.",
          setting, clock.instant());
    }
  }
}
