package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;

@QuarkusTest
class PublicationTest {

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:30"));
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void aPublishedPlanIsInForceUntilTheNextOneIs() {
    PlannedPlant plant = PlannedPlant.ready();
    String first = plant.published();
    assertThat(plant.get("current").getString("id")).isEqualTo(first);

    String second = plant.published();

    assertThat(plant.get("current").getString("id")).isEqualTo(second);
    assertThat(plant.get(first).getString("state")).isEqualTo("superseded");
    assertThat(plant.get(second).getString("publishedAt")).isEqualTo("2026-11-30T16:30:00+01:00");
  }

  @Test
  void onlyADraftCanBePublished() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.published();

    Response again = plant.publish(id);

    assertThat(again.statusCode()).isEqualTo(409);
    assertThat(again.contentType()).startsWith("application/problem+json");
    assertThat(again.path("detail").toString()).contains("this plan is published");
    assertThat(plant.get(id).getString("state")).isEqualTo("published");
  }

  @Test
  void aPlanMadeBeforeAnOrderChangedIsStaleAndNotPublished() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();
    Order order = PlanFixture.orders().get(0);
    plant.put(
        new Order(
            order.reference(),
            order.customer(),
            1,
            order.dueAt(),
            false,
            order.garments(),
            order.prints()));

    Response refused = plant.publish(id);

    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.path("detail").toString()).contains("stale");
    assertThat(plant.get(id).getBoolean("stale")).isTrue();
    assertThat(plant.get(id).getString("state")).isEqualTo("draft");
  }

  @Test
  void aPlanThatBreaksARuleIsNotPublishedAndTheFindingsAreNamed() {
    PlannedPlant plant = PlannedPlant.ready("an unsound yard");
    String id = plant.draft();

    Response refused = plant.publish(id);

    assertThat(refused.statusCode()).isEqualTo(409);
    JsonPath problem = refused.jsonPath();
    assertThat(problem.getString("type")).isEqualTo("urn:potlife:problem:conflict");
    assertThat(problem.getString("findings[0].rule")).isEqualTo("R14");
    assertThat(problem.getString("findings[0].detail")).contains("2.00 are allowed");
    assertThat(plant.get(id).getBoolean("auditPassed")).isFalse();
    assertThat(plant.api().get(plant.plans() + "/current").statusCode()).isEqualTo(404);
  }

  @Test
  void ofTwoDraftsPublishedAtOnceOneIsInForceInTheEnd() {
    PlannedPlant plant = PlannedPlant.ready();
    List<String> drafts = List.of(plant.draft(), plant.draft());

    List<Integer> statuses =
        Stream.of(drafts.get(0), drafts.get(1), drafts.get(0), drafts.get(1))
            .map(id -> CompletableFuture.supplyAsync(() -> plant.publish(id).statusCode()))
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    assertThat(statuses).containsOnly(200, 409);
    assertThat(drafts)
        .extracting(id -> plant.get(id).getString("state"))
        .containsExactlyInAnyOrder("published", "superseded");
  }

  @Test
  void anOrderShowsWhatThePlanInForcePromises() {
    PlannedPlant plant = PlannedPlant.ready();
    assertThat(order(plant, "LR-77").getMap("promise")).isNull();

    plant.published();

    JsonPath late = order(plant, "LR-77");
    assertThat(late.getString("promise.plannedFinish")).isEqualTo("2026-12-01T12:40:00+01:00");
    assertThat(late.getInt("promise.lateMinutes")).isEqualTo(40);
    assertThat(late.getString("promise.cause")).contains("belt has no room");
    JsonPath good = order(plant, "HC-2041");
    assertThat(good.getString("promise.plannedFinish")).isEqualTo("2026-12-01T10:55:00+01:00");
    assertThat(good.getInt("promise.lateMinutes")).isZero();
    JsonPath unplaced = order(plant, "RU-5");
    assertThat(unplaced.getString("promise.plannedFinish")).isNull();
    assertThat(unplaced.getString("promise.cause")).startsWith("R19");
  }

  private static JsonPath order(PlannedPlant plant, String reference) {
    return plant.api().get(plant.api().order(reference)).jsonPath();
  }
}
