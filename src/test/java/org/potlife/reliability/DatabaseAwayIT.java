package org.potlife.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.testing.DatabaseServer;
import org.potlife.testing.PackagedService;

/**
 * The database goes away for a while, as in an update of its machine: 8 s here, or as many as
 * {@code -Dpotlife.away=60} says.
 */
class DatabaseAwayIT {

  private static final Duration AWAY = Duration.ofSeconds(Integer.getInteger("potlife.away", 8));
  private static final Duration PATIENCE = Duration.ofSeconds(180);

  @TempDir private Path folder;
  private DatabaseServer database;
  private PackagedService service;
  private Witness witness;

  @BeforeEach
  void aShopAtWork() throws Exception {
    database = new DatabaseServer(folder);
    service = new PackagedService(folder, Killed.settings(database));
    service.start("service");
    Killed.ready(service);
    Yard.setUp(service);
    witness = new Witness(service.address() + Yard.PATH);
  }

  @AfterEach
  void home() throws Exception {
    witness.close();
    service.end();
    database.close();
  }

  private HttpResponse<String> put(String reference) throws IOException, InterruptedException {
    return service.send(
        service
            .request(Yard.PATH + "/orders/" + reference)
            .header("Content-Type", "application/json")
            .PUT(BodyPublishers.ofString(Yard.order(reference))));
  }

  @Test
  void meanwhileRequestsAreAskedToComeBackAndAfterwardsAllGoesOnByItself() throws Exception {
    assertThat(put("before").statusCode()).isEqualTo(201);
    String plan =
        PackagedService.made(
            service.send(
                service
                    .request(Yard.PATH + "/plans")
                    .POST(BodyPublishers.ofString("{\"solveSeconds\":3}"))));

    database.stop();
    long until = System.nanoTime() + AWAY.toNanos();
    int asked = 0;
    do {
      for (HttpResponse<String> answer :
          List.of(put("meanwhile"), service.send(service.request(plan)))) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow())
            .startsWith("application/problem+json");
        assertThat(answer.body()).contains("urn:potlife:problem:unavailable");
        asked++;
      }
      Thread.sleep(500);
    } while (System.nanoTime() < until);
    assertThat(service.send(service.request("/q/health/ready")).statusCode()).isEqualTo(503);

    database.start();
    long back = System.nanoTime();
    HttpResponse<String> after = put("after");
    while (after.statusCode() == 503 && System.nanoTime() - back < PATIENCE.toNanos()) {
      Thread.sleep(200);
      after = put("after");
    }
    System.out.printf(
        "away %d s, %d requests answered 503, the first write was taken %d ms after the database"
            + " was back%n",
        AWAY.toSeconds(), asked, Duration.ofNanos(System.nanoTime() - back).toMillis());

    assertThat(after.statusCode()).isEqualTo(201);
    Killed.ready(service);
    assertThat(service.send(service.request(Yard.PATH + "/orders/before")).statusCode())
        .isEqualTo(200);
    assertThat(service.send(service.request(Yard.PATH + "/orders/meanwhile")).statusCode())
        .isEqualTo(404);
    service.await(plan, answer -> answer.body().contains("\"state\":\"draft\""));
    service.await(
        "/q/health/ready",
        answer ->
            witness.heard().values().stream().anyMatch(event -> event.contains("plan.drafted")));
    assertThat(witness.faults()).isEmpty();
    assertThat(witness.heard().values())
        .anyMatch(event -> event.contains("\"subject\":\"after\""))
        .noneMatch(event -> event.contains("\"subject\":\"meanwhile\""));
  }
}
