package org.potlife.outbox.internal;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jboss.logging.Logger;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;

/**
 * Rings when any instance of the service has written to the outbox: PostgreSQL notifies after the
 * commit, on a connection that does nothing else. It also rings for everyone every two seconds,
 * because a notification is lost while the connection is.
 */
@ApplicationScoped
class OutboxBell {

  private static final Logger LOG = Logger.getLogger(OutboxBell.class);
  private static final Duration NET = Duration.ofSeconds(2);

  private final DataSource dataSource;
  private final StreamHub streams;
  private final HookJobs hooks;

  private volatile boolean closing;
  private volatile Thread thread;

  @Inject
  OutboxBell(DataSource dataSource, StreamHub streams, HookJobs hooks) {
    this.dataSource = dataSource;
    this.streams = streams;
    this.hooks = hooks;
  }

  void start(@Observes StartupEvent event) {
    thread = new Thread(this::listen, "outbox-bell");
    thread.setDaemon(true);
    thread.start();
  }

  void stop(@Observes ShutdownEvent event) {
    closing = true;
    thread.interrupt();
  }

  private void listen() {
    while (!closing) {
      try (Connection connection = dataSource.getConnection();
          Statement statement = connection.createStatement()) {
        statement.execute("listen " + WrittenOutbox.CHANNEL);
        try {
          hear(connection.unwrap(PGConnection.class));
        } finally {
          // the connection goes back to the pool
          if (!connection.isClosed()) {
            statement.execute("unlisten *");
          }
        }
      } catch (SQLException | RuntimeException e) {
        if (!closing) {
          LOG.warnf("Not notified of events, which are looked for instead: %s", e.getMessage());
          pause();
          streams.ringForAll();
        }
      }
    }
  }

  private void hear(PGConnection connection) throws SQLException {
    long rungForAll = System.nanoTime() - NET.toNanos();
    while (!closing) {
      long left = rungForAll + NET.toNanos() - System.nanoTime();
      if (left <= 0) {
        streams.ringForAll();
        rungForAll = System.nanoTime();
        left = NET.toNanos();
      }
      PGNotification[] heard =
          connection.getNotifications((int) Math.max(1, Duration.ofNanos(left).toMillis()));
      plants(heard)
          .forEach(
              plant -> {
                streams.ring(plant);
                hooks.ring(plant);
              });
    }
  }

  /** Each plant once, however many of its transactions were committed meanwhile. */
  private static Set<String> plants(PGNotification[] heard) {
    return heard == null
        ? Set.of()
        : Arrays.stream(heard).map(PGNotification::getParameter).collect(Collectors.toSet());
  }

  private static void pause() {
    try {
      Thread.sleep(NET.toMillis());
    } catch (InterruptedException e) {
      // the service ends, or looks a little early
      Thread.interrupted();
    }
  }
}
