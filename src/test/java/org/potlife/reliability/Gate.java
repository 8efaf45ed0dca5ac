package org.potlife.reliability;

import java.time.Duration;

/**
 * Closed while the planner wants no order to come or go, so that a draft can be published; for a
 * few seconds at most.
 */
final class Gate {

  private static final long LOOK_MS = 20;
  private static final long LONGEST_NS = Duration.ofSeconds(8).toNanos();

  private volatile long closedUntilNs = System.nanoTime();

  void close() {
    closedUntilNs = System.nanoTime() + LONGEST_NS;
  }

  void open() {
    closedUntilNs = System.nanoTime();
  }

  /** Waits until it is open. */
  void pass() throws InterruptedException {
    while (closedUntilNs - System.nanoTime() > 0) {
      Thread.sleep(LOOK_MS);
    }
  }
}
