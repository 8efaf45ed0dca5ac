package org.potlife.reliability;

import java.util.concurrent.atomic.AtomicBoolean;

/** Closed while the planner wants no order to come or go, so that a draft can be published. */
final class Gate {

  private static final int LOOK_MS = 20;

  private final AtomicBoolean closed = new AtomicBoolean();

  void close() {
    closed.set(true);
  }

  void open() {
    closed.set(false);
  }

  /** Waits until it is open. */
  void pass() throws InterruptedException {
    while (closed.get()) {
      Thread.sleep(LOOK_MS);
    }
  }
}
