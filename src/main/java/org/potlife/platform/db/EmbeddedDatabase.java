package org.potlife.platform.db;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jboss.logging.Logger;

/** The PostgreSQL of this instance, on its folder, reachable from this machine only. */
public final class EmbeddedDatabase implements AutoCloseable {

  private static final Logger LOG = Logger.getLogger(EmbeddedDatabase.class);
  private static final Duration START = Duration.ofSeconds(60);
  private static final String USER = "postgres";
  private static final int MOST_RESTARTS = 30;

  private final DataFolder folder;
  private final String password;
  private final int port;
  private EmbeddedPostgres server;
  private ProcessHandle process;
  private Watchdog watchdog;
  private boolean closing;

  private EmbeddedDatabase(
      DataFolder folder,
      EmbeddedPostgres server,
      ProcessHandle process,
      Watchdog watchdog,
      String password) {
    this.folder = folder;
    this.server = server;
    this.process = process;
    this.watchdog = watchdog;
    this.password = password;
    this.port = server.getPort();
    startAgainWhenItEnds();
  }

  /** Where the environment wants the data. */
  public static Path locate() {
    return DataFolder.locate(System.getenv(), System.getProperty("user.home"));
  }

  /**
   * Starts the server on this folder; the first time it makes the cluster.
   *
   * @throws StartRefused when another instance runs on the folder or the server does not start
   */
  public static EmbeddedDatabase start(Path root) {
    DataFolder folder = DataFolder.take(root);
    try {
      OrphanServer.end(folder.database());
      boolean fresh = !folder.initialised();
      if (fresh) {
        folder.removeHalfDoneDatabase();
      }
      String password = fresh ? "" : Files.readString(folder.password()).strip();
      EmbeddedPostgres server = launch(folder, password, 0);
      ProcessHandle process = processOf(folder);
      Watchdog watchdog = Watchdog.over(process.pid());
      if (fresh) {
        password = demandPassword(server, folder);
        folder.markInitialised();
      }
      return new EmbeddedDatabase(folder, server, process, watchdog, password);
    } catch (IOException | SQLException | IllegalStateException e) {
      folder.close();
      throw new StartRefused(
          "The embedded database on "
              + root
              + " did not start ("
              + e.getMessage()
              + "). Its log is database.log there; or set QUARKUS_DATASOURCE_JDBC_URL to a"
              + " PostgreSQL of your own.",
          e);
    }
  }

  /**
   * @param port 0 for any that is free
   */
  private static EmbeddedPostgres launch(DataFolder folder, String password, int port)
      throws IOException {
    // The library deletes what it takes for stale below this folder, so no data may lie under it.
    System.setProperty("ot.epg.working-dir", folder.binaries().toString());
    Path log = folder.freshLog();
    EmbeddedPostgres.Builder builder = EmbeddedPostgres.builder();
    if (port != 0) {
      builder.setPort(port);
    }
    return builder
        .setDataDirectory(folder.database())
        .setCleanDataDirectory(false)
        .setRegisterShutdownHook(false)
        .setPGStartupWait(START)
        .setServerConfig("listen_addresses", "127.0.0.1")
        .setServerConfig("unix_socket_directories", "")
        // The library starts the server for throw-away tests, with both of them off.
        .setServerConfig("fsync", "on")
        .setServerConfig("synchronous_commit", "on")
        .setServerConfig("max_connections", "60")
        .setConnectConfig("password", password)
        .setOutputRedirector(ProcessBuilder.Redirect.appendTo(log.toFile()))
        .setErrorRedirector(ProcessBuilder.Redirect.appendTo(log.toFile()))
        .start();
  }

  /** The server detaches itself, so the process that the library holds is not the server's. */
  private static ProcessHandle processOf(DataFolder folder) throws IOException {
    return OrphanServer.pidOf(folder.database().resolve("postmaster.pid"))
        .flatMap(ProcessHandle::of)
        .orElseThrow(() -> new IllegalStateException("the server ended right after its start"));
  }

  /** A new cluster trusts every user of the machine; from here on a password is needed. */
  private static String demandPassword(EmbeddedPostgres server, DataFolder folder)
      throws SQLException, IOException {
    String password = UUID.randomUUID().toString();
    folder.writePassword(password);
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("alter user " + USER + " password '" + password + "'");
      Files.writeString(
          folder.database().resolve("pg_hba.conf"), "host all all 127.0.0.1/32 scram-sha-256\n");
      statement.execute("select pg_reload_conf()");
    }
    return password;
  }

  /** The configuration by which the application finds this database. */
  public Map<String, String> configuration() {
    return Map.of(
        "quarkus.datasource.jdbc.url",
        "jdbc:postgresql://127.0.0.1:" + port + "/" + USER,
        "quarkus.datasource.username",
        USER,
        "quarkus.datasource.password",
        password);
  }

  /** Nobody else would: a server that was killed leaves the service with nothing to work on. */
  private void startAgainWhenItEnds() {
    process.onExit().thenRunAsync(this::startAgain);
  }

  private void startAgain() {
    for (int failures = 0; failures < MOST_RESTARTS; failures++) {
      synchronized (this) {
        if (closing) {
          return;
        }
        LOG.error("The database server ended although nobody stopped it. It is started again.");
        try {
          watchdog.close();
          OrphanServer.end(folder.database());
          // only gives the library's lock back: without a pid file it stops nothing
          server.close();
          server = launch(folder, password, port);
          process = processOf(folder);
          watchdog = Watchdog.over(process.pid());
          startAgainWhenItEnds();
          LOG.info("The database server is back");
          return;
        } catch (IOException | IllegalStateException e) {
          // its children may still hold the memory that they shared
          LOG.warnf("Not yet: %s", e.getMessage());
        }
      }
      pause();
    }
    LOG.error("The database server does not start again; see database.log. Restart the service.");
  }

  private static void pause() {
    try {
      TimeUnit.SECONDS.sleep(1);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Stops the server. To be called when nothing uses it any more. */
  @Override
  public synchronized void close() {
    closing = true;
    try {
      server.close();
      // The library waits five seconds; a last checkpoint on a slow disk may need longer.
      process.onExit().get(60, TimeUnit.SECONDS);
    } catch (IOException | ExecutionException | TimeoutException e) {
      LOG.warn("The database server did not stop in time; the next start ends it", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      watchdog.close();
      folder.close();
    }
  }
}
