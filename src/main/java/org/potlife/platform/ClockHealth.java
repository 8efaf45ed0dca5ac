package org.potlife.platform;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Liveness;

/** Says on /q/health by which clock the service works. */
@Liveness
@Singleton
final class ClockHealth implements HealthCheck {

  private final Clock clock;

  @Inject
  ClockHealth(Clock clock) {
    this.clock = clock;
  }

  @Override
  public HealthCheckResponse call() {
    var response = HealthCheckResponse.named("clock").up();
    return clock instanceof ReplayedClock replayed
        ? response
            .withData("clock", "NOT REAL")
            .withData("now", replayed.instant().toString())
            .withData("speed", String.valueOf(replayed.speed()))
            .build()
        : response.withData("clock", "real").build();
  }
}
