package org.potlife.outbox.internal;

import java.time.Duration;
import java.util.random.RandomGenerator;

/**
 * How long to wait after failures: a second, doubled with every further one, up to a longest wait,
 * of which a random part of at most half is taken off so that many hooks do not come back at once.
 */
record Backoff(Duration longest, RandomGenerator random) {

  private static final int MOST_DOUBLINGS = 30;

  /**
   * @param failures from 1
   */
  Duration after(int failures) {
    long doubled = 1000L << Math.min(MOST_DOUBLINGS, failures - 1);
    long capped = Math.min(doubled, longest.toMillis());
    return Duration.ofMillis(Math.round(capped * (1 - random.nextDouble() / 2)));
  }
}
