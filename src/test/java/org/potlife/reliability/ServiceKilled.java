package org.potlife.reliability;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import org.potlife.testing.DatabaseServer;
import org.potlife.testing.PackagedService;

/** The service is killed at random moments, now and then while it starts. */
final class ServiceKilled extends Killed {

  private static final double WHILE_STARTING = 0.2;

  ServiceKilled(Path folder, long seed) {
    super(folder, seed);
  }

  @Override
  void kill(DatabaseServer database, PackagedService service, SplittableRandom random)
      throws Exception {
    service.last().destroyForcibly().waitFor();
    Process next = service.start("service");
    if (random.nextDouble() < WHILE_STARTING) {
      Thread.sleep(random.nextInt(4000));
      next.destroyForcibly().waitFor();
      service.start("service");
    }
    ready(service);
  }

  /** Arguments: number of kills, and how many minutes they may take. */
  public static void main(String... args) throws Exception {
    Path folder = Files.createTempDirectory("service-killed");
    System.out.println(
        new ServiceKilled(folder, 1)
            .run(Integer.parseInt(args[0]), Duration.ofMinutes(Long.parseLong(args[1]))));
    System.exit(0);
  }
}
