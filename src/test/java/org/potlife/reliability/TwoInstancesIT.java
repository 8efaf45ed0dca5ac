package org.potlife.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.potlife.testing.DatabaseServer;
import org.potlife.testing.PackagedService;

/** Two instances of the service on one PostgreSQL. */
class TwoInstancesIT {

  @TempDir private Path folder;
  private DatabaseServer database;
  private PackagedService one;
  private PackagedService other;

  @BeforeEach
  void twoInstances() throws Exception {
    database = new DatabaseServer(folder);
    one = new PackagedService(folder, Killed.settings(database));
    one.start("one");
    Killed.ready(one);
    other = new PackagedService(folder, Killed.settings(database));
    other.start("other");
    Killed.ready(other);
    Yard.setUp(one);
  }

  @AfterEach
  void home() throws Exception {
    one.end();
    other.end();
    database.close();
  }

  private int put(PackagedService service, String reference)
      throws IOException, InterruptedException {
    return service
        .send(
            service
                .request(Yard.PATH + "/orders/" + reference)
                .header("Content-Type", "application/json")
                .PUT(BodyPublishers.ofString(Yard.order(reference))))
        .statusCode();
  }

  private boolean solves(PackagedService service, String name) throws IOException {
    return Files.readString(service.log(name)).contains("Solving for");
  }

  @Test
  void eachTellsWhatTheOtherTookInAndOneGoesOnWhenTheOtherIsKilled() throws Exception {
    Witness atOne = new Witness(one.address() + Yard.PATH);
    Witness atOther = new Witness(other.address() + Yard.PATH);
    while (atOne.connections() == 0 || atOther.connections() == 0) {
      Thread.sleep(50);
    }

    long begun = System.nanoTime();
    assertThat(put(one, "A-1")).isEqualTo(201);
    await(() -> atOther.last() == 1);
    long thereMs = Duration.ofNanos(System.nanoTime() - begun).toMillis();
    assertThat(put(other, "A-2")).isEqualTo(201);
    await(() -> atOne.last() == 2);
    System.out.println("an order put at one was heard at the other " + thereMs + " ms later");

    String plan =
        PackagedService.made(
            one.send(
                one.request(Yard.PATH + "/plans")
                    .POST(BodyPublishers.ofString("{\"solveSeconds\":20}"))));
    await(() -> solves(one, "one") || solves(other, "other"));
    boolean firstSolves = solves(one, "one");
    PackagedService solving = firstSolves ? one : other;
    PackagedService left = firstSolves ? other : one;
    Thread.sleep(2000);
    assertThat(left.send(left.request(plan)).body()).contains("\"state\":\"solving\"");

    solving.last().destroyForcibly().waitFor();
    long killed = System.nanoTime();
    String draft = left.await(plan, answer -> answer.body().contains("\"finishedAt\":"));

    assertThat(draft).contains("\"state\":\"draft\"");
    System.out.printf(
        "the instance that solved was killed; the other had the plan of a search of 20 s after %d"
            + " s%n",
        Duration.ofNanos(System.nanoTime() - killed).toSeconds());
    Witness rest = firstSolves ? atOther : atOne;
    await(() -> rest.last() == 3);
    assertThat(rest.heard().get(3L)).contains("plan.drafted");
    atOne.close();
    atOther.close();
  }

  private interface Condition {
    boolean holds() throws IOException;
  }

  private static void await(Condition condition) throws IOException, InterruptedException {
    long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
    while (!condition.holds()) {
      assertThat(System.nanoTime()).isLessThan(end);
      Thread.sleep(1);
    }
  }
}
