package org.potlife.reliability;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import org.potlife.testing.DatabaseServer;
import org.potlife.testing.PackagedService;

/** The database server is killed at random moments and comes back a little later. */
final class DatabaseKilled extends Killed {

  DatabaseKilled(Path folder, long seed) {
    super(folder, seed);
  }

  @Override
  void kill(DatabaseServer database, PackagedService service, SplittableRandom random)
      throws Exception {
    database.kill();
    Thread.sleep(random.nextInt(1500));
    database.start();
    ready(service);
  }

  /** Arguments: number of kills, and how many minutes they may take. */
  public static void main(String... args) throws Exception {
    Path folder = Files.createTempDirectory("database-killed");
    System.out.println(
        new DatabaseKilled(folder, 1)
            .run(Integer.parseInt(args[0]), Duration.ofMinutes(Long.parseLong(args[1]))));
    System.exit(0);
  }
}
