package org.potlife.platform;

import io.quarkus.runtime.Application;
import java.time.Duration;

/**
 * Closes what the application needs until its last moment. Shutdown hooks run side by side, and the
 * application stops in one of its own, so this one waits for it.
 */
final class CloseAfterStop implements Runnable {

  private static final Duration PATIENCE = Duration.ofSeconds(40);

  private final AutoCloseable resource;

  CloseAfterStop(AutoCloseable resource) {
    this.resource = resource;
  }

  @Override
  public void run() {
    awaitApplication();
    try {
      resource.close();
    } catch (Exception e) {
      System.err.println("Not closed: " + e.getMessage());
    }
  }

  private static void awaitApplication() {
    Application application = Application.currentApplication();
    if (application == null) {
      return;
    }
    Thread waiter = new Thread(application::awaitShutdown, "application-stop-waiter");
    waiter.setDaemon(true);
    waiter.start();
    try {
      // bounded: an application that failed half-way through its start may never report its stop
      waiter.join(PATIENCE.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
