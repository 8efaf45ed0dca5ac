package org.potlife.plan.internal;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.Locale;

/** Times the solves, by outcome. */
@Singleton
class SolveMeter {

  private static final String NAME = "potlife.solve";

  private final MeterRegistry registry;

  @Inject
  SolveMeter(MeterRegistry registry) {
    this.registry = registry;
    for (Outcome outcome : Outcome.values()) {
      // present from the start, so that a rate can be taken of the first failure
      timer(outcome);
    }
  }

  /** How a solve ended. */
  enum Outcome {
    /** Its time was up. */
    DONE,
    /** Somebody took the best plan so far. */
    STOPPED,
    /** No plan came out. */
    FAILED,
    /** The service was ended; it is begun anew. */
    INTERRUPTED
  }

  /** A solve that is timed. */
  interface Running {
    void end(Outcome outcome);
  }

  Running start() {
    Timer.Sample sample = Timer.start(registry);
    return outcome -> sample.stop(timer(outcome));
  }

  private Timer timer(Outcome outcome) {
    return Timer.builder(NAME)
        .description("Time from the start of a search to its audited plan")
        .tag("outcome", outcome.name().toLowerCase(Locale.ROOT))
        .register(registry);
  }
}
