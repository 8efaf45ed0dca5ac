package org.potlife.platform.db;

import java.io.IOException;

/**
 * Ends the database server when this process was killed and could not do so itself.
 *
 * <p>A shell waits for a line on a pipe from this process. Whatever ends this process closes the
 * pipe; the shell then asks the server for a fast shutdown. On a regular stop it is told so first.
 * It uses nothing but {@code sh}, {@code read} and {@code kill}, which every supported system has.
 */
final class Watchdog implements AutoCloseable {

  // INT and TERM reach the whole group of a terminal; the watchdog has to survive them.
  private static final String SCRIPT =
      "trap '' INT TERM HUP; read word; [ \"$word\" = stopped ] || kill -INT \"$1\" 2>/dev/null";

  private final Process shell;

  private Watchdog(Process shell) {
    this.shell = shell;
  }

  static Watchdog over(long serverPid) throws IOException {
    return new Watchdog(
        new ProcessBuilder("sh", "-c", SCRIPT, "potlife-watchdog", String.valueOf(serverPid))
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start());
  }

  @Override
  public void close() {
    try (var pipe = shell.outputWriter()) {
      pipe.write("stopped\n");
    } catch (IOException e) {
      // it ended before; nothing is left to watch
    }
  }
}
