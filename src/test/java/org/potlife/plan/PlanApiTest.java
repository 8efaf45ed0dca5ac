package org.potlife.plan;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.Api;

@QuarkusTest
class PlanApiTest {

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:30"));
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void aPlanIsAcceptedSolvedAndStandsWithAllItsParts() {
    PlannedPlant plant = PlannedPlant.ready();

    Response accepted = plant.request(1);

    assertThat(accepted.statusCode()).isEqualTo(202);
    assertThat(accepted.path("state").toString()).isEqualTo("solving");
    String id = accepted.path("id");
    assertThat(accepted.header("Location"))
        .endsWith("/api/v1/plants/" + plant.id() + "/plans/" + id);
    JsonPath plan = plant.await(id);
    assertThat(plan.getString("state")).isEqualTo("draft");
    assertThat(plan.getInt("version")).isEqualTo(1);
    assertThat(plan.getString("day")).isEqualTo("2026-12-01");
    assertThat(plan.getString("plannedAt")).isEqualTo("2026-11-30T16:30:00+01:00");
    assertThat(plan.getInt("score.unplaced")).isEqualTo(1);
    assertThat(plan.getList("runs")).hasSize(5);
    assertThat(plan.getList("batches")).hasSize(12);
    assertThat(plan.getList("screens")).hasSize(13);
    assertThat(plan.getList("belts")).hasSize(5);
    assertThat(plan.getString("late[0].order")).isEqualTo("LR-77");
    assertThat(plan.getString("unplaced[0].cause")).contains("does not discharge");
    assertThat(plan.getBoolean("stale")).isFalse();
    assertThat(plan.getBoolean("auditPassed")).isTrue();
  }

  @Test
  void withoutABodyThePlanIsForTomorrowInThePlantsZone() {
    SettableClock.set(at(DAY, "23:30"));
    PlannedPlant plant = PlannedPlant.ready();

    Response accepted = given().post(plant.plans());

    assertThat(accepted.statusCode()).isEqualTo(202);
    assertThat(accepted.path("day").toString()).isEqualTo(DAY.plusDays(1).toString());
    assertThat((Integer) accepted.path("solveSeconds")).isEqualTo(10);
  }

  @Test
  void aDayThatIsOverAndATooLongSearchAreBothRefused() {
    PlannedPlant plant = PlannedPlant.ready();

    Response refused = plant.request("{\"day\":\"2026-11-29\",\"solveSeconds\":301}");

    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    assertThat(Api.pointers(refused)).containsExactlyInAnyOrder("/day", "/solveSeconds");
    assertThat(plant.api().get(plant.plans()).jsonPath().getList("")).isEmpty();
  }

  @Test
  void aBodyThatIsNotJsonOrHasWrongFieldsIsRefused() {
    PlannedPlant plant = PlannedPlant.ready();

    assertThat(plant.request("{\"day\":").statusCode()).isEqualTo(400);
    assertThat(Api.pointers(plant.request("{\"day\":\"soon\"}"))).containsExactly("/day");
    assertThat(Api.pointers(plant.request("{\"days\":1}"))).containsExactly("/days");
    assertThat(plant.request("{\"solveSeconds\":0}").statusCode()).isEqualTo(422);
  }

  @Test
  void unknownPlantsAndPlansAreNotFound() {
    PlannedPlant plant = PlannedPlant.ready();
    PlannedPlant other = PlannedPlant.ready();
    String id = plant.draft();

    assertThat(other.api().get(other.plans() + "/" + id).statusCode()).isEqualTo(404);
    assertThat(other.api().get(other.plans() + "/current").statusCode()).isEqualTo(404);
    assertThat(other.publish(id).statusCode()).isEqualTo(404);
    assertThat(given().post("/api/v1/plants/nobody/plans").statusCode()).isEqualTo(404);
    assertThat(given().get("/api/v1/plants/nobody/plans").statusCode()).isEqualTo(404);
  }

  @Test
  void plansAreListedTheNewestFirst() {
    PlannedPlant plant = PlannedPlant.ready();
    String first = plant.draft();
    String second = plant.draft();

    JsonPath list = plant.api().get(plant.plans()).jsonPath();

    assertThat(list.getList("id")).isEqualTo(java.util.List.of(second, first));
    assertThat(list.getInt("[0].score.lateMinutes")).isEqualTo(40);
    assertThat(plant.api().get(plant.plans() + "?limit=1").jsonPath().getList("id"))
        .containsExactly(second);
    assertThat(plant.api().get(plant.plans() + "?limit=0").statusCode()).isEqualTo(400);
  }

  @Test
  void aSearchThatFailsLeavesItsCause() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.request("{\"seed\":" + ScriptedPlanner.UNLUCKY + "}").path("id");

    JsonPath plan = plant.await(id);

    assertThat(plan.getString("state")).isEqualTo("failed");
    assertThat(plan.getString("failure")).contains("nothing fits anywhere");
    assertThat(plant.publish(id).statusCode()).isEqualTo(409);
    assertThat(plant.api().get(plant.plans() + "/" + id + "/activations").statusCode())
        .isEqualTo(409);
  }

  @Test
  void theAuditIsShownRuleByRule() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();

    JsonPath audit = plant.api().get(plant.plans() + "/" + id + "/audit").jsonPath();

    assertThat(audit.getBoolean("passed")).isTrue();
    assertThat(audit.getInt("checks")).isEqualTo(5);
    assertThat(audit.getString("rules[0].rule")).isEqualTo("R14");
    assertThat(audit.getList("rules[0].findings")).isEmpty();
  }
}
