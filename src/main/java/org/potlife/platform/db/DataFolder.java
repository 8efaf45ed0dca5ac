package org.potlife.platform.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The folder of one instance, held by a lock while the instance runs. */
final class DataFolder implements AutoCloseable {

  private final Path root;
  private final FileChannel channel;
  private final FileLock lock;

  private DataFolder(Path root, FileChannel channel, FileLock lock) {
    this.root = root;
    this.channel = channel;
    this.lock = lock;
  }

  /** Where the environment wants the data. */
  static Path locate(Map<String, String> environment, String userHome) {
    String configured = environment.get("POTLIFE_DATA");
    Path path =
        configured == null || configured.isBlank()
            ? Path.of(userHome, ".potlife")
            : Path.of(configured);
    return path.toAbsolutePath().normalize();
  }

  /**
   * Takes the folder, made if missing.
   *
   * @throws StartRefused when another instance holds it, or it cannot be written
   */
  static DataFolder take(Path root) {
    FileChannel channel = null;
    try {
      if (!Files.exists(root)) {
        // programs and data lie here: nobody else may write into it
        Files.createDirectories(
            root,
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
      }
      // the system's own name of the folder, as PostgreSQL will write it into its pid file
      Path real = root.toRealPath();
      channel =
          FileChannel.open(
              real.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        channel.close();
        throw new StartRefused(
            "Another Potlife already runs on "
                + real
                + ". Stop it, or set POTLIFE_DATA to another folder.");
      }
      return new DataFolder(real, channel, lock);
    } catch (IOException e) {
      throw new StartRefused(
          "Cannot write to "
              + root
              + " ("
              + e
              + "). Set POTLIFE_DATA to a folder that can be written.");
    }
  }

  private static FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException heldByThisProcess) {
      return null;
    }
  }

  Path database() {
    return root.resolve("database");
  }

  Path binaries() {
    return root.resolve("binaries");
  }

  Path password() {
    return root.resolve("password");
  }

  /** The server's log; that of the start before is kept beside it. */
  Path freshLog() throws IOException {
    Path log = root.resolve("database.log");
    if (Files.exists(log)) {
      Files.move(log, root.resolve("database.log.previous"), StandardCopyOption.REPLACE_EXISTING);
    }
    return log;
  }

  boolean initialised() {
    return Files.exists(root.resolve("initialised"));
  }

  void markInitialised() throws IOException {
    Files.writeString(root.resolve("initialised"), "The database folder is complete.\n");
  }

  /** Removes the remains of a start that broke off before the cluster was complete. */
  void removeHalfDoneDatabase() throws IOException {
    if (!Files.exists(database())) {
      return;
    }
    try (Stream<Path> files = Files.walk(database())) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Writes a secret that only the owner of the folder can read. */
  void writePassword(String secret) throws IOException {
    Files.deleteIfExists(password());
    Files.createFile(
        password(),
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    Files.write(password(), List.of(secret));
  }

  @Override
  public void close() {
    try {
      lock.release();
      channel.close();
    } catch (IOException e) {
      // the lock goes with the process
    }
  }
}
