package org.potlife.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A PostgreSQL server outside the service, which can go away and come back on the same port. */
public final class DatabaseServer implements AutoCloseable {

  private static final int TRIES = 30;

  private final Path data;
  private final int port;
  private EmbeddedPostgres server;

  /** Starts it on an empty folder, with every commit on disk as a production server has it. */
  public DatabaseServer(Path folder) throws IOException {
    data = folder.resolve("postgres");
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    start();
  }

  /** The settings by which the service finds it. */
  public Map<String, String> settings() {
    return Map.of(
        "QUARKUS_DATASOURCE_JDBC_URL", "jdbc:postgresql://127.0.0.1:" + port + "/postgres",
        "QUARKUS_DATASOURCE_USERNAME", "postgres",
        "QUARKUS_DATASOURCE_PASSWORD", "none");
  }

  public Connection connect() throws SQLException {
    return server.getPostgresDatabase().getConnection();
  }

  /** Starts it again. */
  public void start() throws IOException {
    for (int failures = 0; ; failures++) {
      try {
        server =
            EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setPort(port)
                .setPGStartupWait(Duration.ofSeconds(60))
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setOutputRedirector(
                    ProcessBuilder.Redirect.appendTo(data.resolveSibling("server.log").toFile()))
                .setErrorRedirector(
                    ProcessBuilder.Redirect.appendTo(data.resolveSibling("server.log").toFile()))
                .start();
        return;
      } catch (IOException | IllegalStateException e) {
        // children of a killed server hold its memory for a moment
        if (failures == TRIES) {
          throw e;
        }
        pause();
      }
    }
  }

  /** Ends it as an administrator would. */
  public void stop() throws IOException {
    server.close();
  }

  /**
   * Ends it without a warning: the server's process is killed. What it gave to the operating system
   * is not lost, as it could be with the power.
   */
  public void kill() throws Exception {
    List<String> pidFile = Files.readAllLines(data.resolve("postmaster.pid"));
    ProcessHandle process = ProcessHandle.of(Long.parseLong(pidFile.get(0).strip())).orElseThrow();
    process.destroyForcibly();
    process.onExit().get(30, TimeUnit.SECONDS);
    Files.deleteIfExists(data.resolve("postmaster.pid"));
    // gives the library's lock back; without a pid file it stops nothing
    server.close();
  }

  private static void pause() {
    try {
      Thread.sleep(500);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
