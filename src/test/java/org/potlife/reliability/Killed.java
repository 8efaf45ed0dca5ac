package org.potlife.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.potlife.outbox.Receiver;
import org.potlife.testing.DatabaseServer;
import org.potlife.testing.PackagedService;

/**
 * Orders, events and plans come in all the time while something is killed again and again; then the
 * books are compared.
 */
abstract class Killed {

  private static final Duration PATIENCE = Duration.ofSeconds(120);

  /** Every so many lives are long enough for a search that a kill interrupted to be taken up. */
  private static final int LONG_LIFE = 5;

  private final Path folder;
  private final SplittableRandom random;

  Killed(Path folder, long seed) {
    this.folder = folder;
    this.random = new SplittableRandom(seed);
  }

  /** What was counted. */
  record Figures(
      int kills,
      int acknowledgedWrites,
      int repeatedRequests,
      long events,
      int streams,
      int deliveries,
      long repeatedDeliveries,
      int publications,
      int refusedPublications,
      long seconds) {}

  /** Kills once, and sees to it that the service answers again. */
  abstract void kill(DatabaseServer database, PackagedService service, SplittableRandom random)
      throws Exception;

  /**
   * Lives through it.
   *
   * @param kills how many, at most
   * @param atMost no further kill after this time
   */
  final Figures run(int kills, Duration atMost) throws Exception {
    long begun = System.nanoTime();
    try (DatabaseServer database = new DatabaseServer(folder);
        Receiver erp = new Receiver()) {
      PackagedService service = new PackagedService(folder, settings(database));
      try {
        service.start("service");
        ready(service);
        Yard.setUp(service);
        subscribe(service, erp);
        return live(kills, atMost, database, service, erp, begun);
      } finally {
        service.end();
      }
    }
  }

  private Figures live(
      int most,
      Duration atMost,
      DatabaseServer database,
      PackagedService service,
      Receiver erp,
      long begun)
      throws Exception {
    String plant = service.address() + Yard.PATH;
    Gate gate = new Gate();
    Writers writers = new Writers(plant, gate);
    Witness witness = new Witness(plant);
    Planner planner = new Planner(plant, gate);
    int kills = 0;
    while (kills < most && System.nanoTime() - begun < atMost.toNanos()) {
      kills++;
      Thread.sleep(
          kills % LONG_LIFE == 0 ? random.nextInt(20_000, 30_000) : random.nextInt(100, 3000));
      kill(database, service, random);
      System.out.printf(
          "kill %d of %d: %d writes, %d publications, event %d%n",
          kills, most, writers.acknowledgedWrites(), planner.published().size(), witness.last());
    }
    ready(service);
    awaitPublication(planner);
    planner.stop();
    writers.stop();
    try (Connection connection = database.connect()) {
      Reckoning books = new Reckoning(connection);
      settled(books, witness, erp);
      witness.close();
      assertThat(writers.faults()).isEmpty();
      assertThat(writers.acknowledgedWrites()).isPositive();
      books.nothingIsLostAndNothingAppliedTwice(writers);
      books.eachChangeIsToldOnce(writers);
      books.theWitnessHeardAll(witness);
      return new Figures(
          kills,
          writers.acknowledgedWrites(),
          writers.repeatedRequests(),
          books.head(),
          witness.connections(),
          erp.posted().size(),
          books.theErpGotAll(erp),
          books.everyPublishedPlanIsSound(planner),
          planner.refused(),
          Duration.ofNanos(System.nanoTime() - begun).toSeconds());
    }
  }

  /** Life goes on: after the last kill a plan comes into force once more. */
  private static void awaitPublication(Planner planner) throws InterruptedException {
    int before = planner.published().size();
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    while (planner.published().size() == before) {
      assertThat(System.nanoTime()).as("no plan was published any more").isLessThan(deadline);
      Thread.sleep(200);
    }
  }

  /** Waits until nothing more happens and everybody was told. */
  private static void settled(Reckoning books, Witness witness, Receiver erp) throws Exception {
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    long head = -1;
    while (System.nanoTime() < deadline) {
      long now = books.head();
      long posted = erp.posted().isEmpty() ? 0 : erp.posted().get(erp.posted().size() - 1).seq();
      if (now == head && witness.last() == now && posted == now) {
        return;
      }
      head = now;
      Thread.sleep(3000);
    }
    throw new AssertionError(
        "not everybody was told up to "
            + books.head()
            + ": stream "
            + witness.last()
            + ", webhook "
            + erp.posted().size());
  }

  static Map<String, String> settings(DatabaseServer database) {
    Map<String, String> settings = new HashMap<>(database.settings());
    settings.put("POTLIFE_DEMO", "false");
    settings.put("POTLIFE_WEBHOOKS_LONGEST_WAIT", "PT1S");
    return settings;
  }

  private static void subscribe(PackagedService service, Receiver erp)
      throws IOException, InterruptedException {
    int status =
        service
            .send(
                service
                    .request(Yard.PATH + "/webhooks/erp")
                    .header("Content-Type", "application/json")
                    .PUT(
                        BodyPublishers.ofString(
                            "{\"url\":\""
                                + erp.url()
                                + "\",\"secret\":\""
                                + "s".repeat(40)
                                + "\"}")))
            .statusCode();
    assertThat(status).isEqualTo(201);
  }

  static void ready(PackagedService service) throws InterruptedException {
    service.await("/q/health/ready", answer -> answer.statusCode() == 200);
  }
}
