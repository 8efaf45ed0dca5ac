package org.potlife.platform.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jboss.logging.Logger;

/**
 * A server that outlived a killed instance. It holds {@code postmaster.pid}, so that no other
 * server starts on the same folder until it is gone.
 */
final class OrphanServer {

  private static final Logger LOG = Logger.getLogger(OrphanServer.class);
  private static final Duration FAST = Duration.ofSeconds(30);
  private static final Duration IMMEDIATE = Duration.ofSeconds(15);

  private OrphanServer() {}

  /**
   * Ends the server that the pid file names, or removes the file when no server of this folder runs
   * under that number.
   *
   * @throws StartRefused when it does not end
   */
  static void end(Path database) throws IOException {
    Path pidFile = database.resolve("postmaster.pid");
    if (!Files.exists(pidFile)) {
      return;
    }
    Optional<ProcessHandle> server =
        pidOf(pidFile).flatMap(ProcessHandle::of).filter(process -> serves(process, database));
    if (server.isEmpty()) {
      // The number may belong to any other process by now, and the server would take that for a
      // rival. Nobody else can be on this folder: this instance holds its lock.
      Files.deleteIfExists(pidFile);
      return;
    }
    ProcessHandle process = server.get();
    LOG.infof("Ending the database server %d of an earlier, killed instance", process.pid());
    signal(process, "INT");
    if (!gone(process, FAST)) {
      signal(process, "QUIT");
      if (!gone(process, IMMEDIATE)) {
        throw new StartRefused(
            "An earlier database server (process "
                + process.pid()
                + ") on "
                + database
                + " does not end. End it, then start again.");
      }
    }
    Files.deleteIfExists(pidFile);
  }

  /** The process number on the first line of the pid file. */
  static Optional<Long> pidOf(Path pidFile) throws IOException {
    List<String> lines = Files.readAllLines(pidFile);
    try {
      return lines.isEmpty() ? Optional.empty() : Optional.of(Long.valueOf(lines.get(0).trim()));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** Whether the process is a PostgreSQL server that was started on this folder. */
  private static boolean serves(ProcessHandle process, Path database) {
    ProcessHandle.Info info = process.info();
    boolean postgres = info.command().filter(c -> c.endsWith("/postgres")).isPresent();
    return postgres
        && info.arguments()
            .filter(arguments -> Arrays.asList(arguments).contains(database.toString()))
            .isPresent();
  }

  /** INT asks for a fast shutdown, QUIT for an immediate one; Java itself can only send TERM. */
  private static void signal(ProcessHandle process, String name) throws IOException {
    new ProcessBuilder("kill", "-" + name, String.valueOf(process.pid()))
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static boolean gone(ProcessHandle process, Duration atMost) {
    try {
      process.onExit().get(atMost.toSeconds(), TimeUnit.SECONDS);
      return true;
    } catch (TimeoutException e) {
      return false;
    } catch (ExecutionException e) {
      return !process.isAlive();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
