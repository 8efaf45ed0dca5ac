package org.potlife.plan;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.Rows;

@QuarkusTest
class SolveJobTest {

  @Inject ScriptedPlanner planner;
  @Inject Rows rows;

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:30"));
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void aPlantIsPlannedByOneWorkerAtATime() {
    PlannedPlant plant = PlannedPlant.ready("one at a time");

    List<String> ids =
        IntStream.range(0, 4).mapToObj(i -> plant.request(10).<String>path("id")).toList();

    assertThat(ids).allSatisfy(id -> assertThat(state(plant, id)).isEqualTo("draft"));
    assertThat(planner.mostAtATime()).isEqualTo(1);
  }

  @Test
  void aStoppedSearchKeepsTheBestPlanSoFar() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.request(300).path("id");
    while (plant.get(id).getList("progress").isEmpty()) {
      PlannedPlant.pause();
    }

    int status = given().post(plant.plans() + "/" + id + "/stop").statusCode();

    assertThat(status).isEqualTo(202);
    assertThat(state(plant, id)).isEqualTo("draft");
    JsonPath plan = plant.get(id);
    assertThat(plan.getList("progress").size()).isBetween(1, 200);
    assertThat(plan.getList("runs")).hasSize(5);
  }

  @Test
  void theCurveCanBePolledWhileThePlanIsSolved() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.request(60).path("id");
    while (plant.get(id).getList("progress").isEmpty()) {
      PlannedPlant.pause();
    }

    JsonPath curve = plant.api().get(plant.plans() + "/" + id + "/progress").jsonPath();

    assertThat(curve.getString("state")).isEqualTo("solving");
    assertThat(curve.getInt("points[0].weightedLateMinutes")).isEqualTo(1000);
    plant.await(id);
  }

  @Test
  void theCurveCanBeWatchedUntilThePlanStands() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.request(30).path("id");

    String stream =
        given()
            .accept("text/event-stream")
            .get(plant.plans() + "/" + id + "/progress")
            .then()
            .statusCode(200)
            .extract()
            .asString();

    assertThat(stream).contains("event:improved", "\"weightedLateMinutes\":1000");
    assertThat(stream.split("event:ended", -1)).hasSize(2);
    assertThat(stream).contains("\"state\":\"draft\"");
  }

  @Test
  void aWatcherThatComesBackIsNotToldOldPointsAgain() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.request(10).path("id");
    plant.await(id);

    String stream =
        given()
            .accept("text/event-stream")
            .header("Last-Event-ID", "100")
            .get(plant.plans() + "/" + id + "/progress")
            .asString();

    assertThat(stream).doesNotContain("id:0\n", "id:100\n").contains("id:150", "event:ended");
  }

  @Test
  void aPlanWhoseWorkerDiedIsBegunAnew() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();
    rows.change("update plan set state = 'solving', sheet = null where plant = ?", plant.id());
    rows.change(
        "insert into scheduled_tasks (task_name, task_instance, execution_time, picked, picked_by,"
            + " last_heartbeat, consecutive_failures, version) values ('plan-solve', ?,"
            + " now() - interval '1 hour', true, 'gone', now() - interval '1 hour', 0, 1)",
        id);

    assertThat(state(plant, id)).isEqualTo("draft");
    assertThat(plant.get(id).getList("runs")).hasSize(5);
  }

  @Test
  void aPlanThatEndsTheServiceAgainAndAgainIsGivenUp() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();
    rows.change("update plan set state = 'solving', attempts = 5 where plant = ?", plant.id());
    rows.change(
        "insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)"
            + " values ('plan-solve', ?, now(), false, 1)",
        id);

    assertThat(state(plant, id)).isEqualTo("failed");
    assertThat(plant.get(id).getString("failure")).contains("begun 5 times");
  }

  @Test
  void solvesAndPlansInForceAreMeasured() {
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    String ofPlant = "{plant=\"" + plant.id() + "\"} ";
    String lost = "potlife_plan_ink_lost_grams" + ofPlant + "1380.0";

    String metrics = metrics();
    for (int i = 0; i < 200 && !metrics.contains(lost); i++) {
      PlannedPlant.pause();
      metrics = metrics();
    }

    assertThat(metrics).contains(lost);
    assertThat(metrics).contains("potlife_orders_open" + ofPlant + "4.0");
    assertThat(metrics).contains("potlife_plan_late_weighted_minutes" + ofPlant + "400.0");
    assertThat(metrics).contains("potlife_plan_ink_activated_grams" + ofPlant + "16676.0");
    assertThat(metrics).contains("potlife_solve_seconds_count{outcome=\"done\"}");
    assertThat(metrics).contains("potlife_solve_seconds_count{outcome=\"failed\"}");
  }

  private static String metrics() {
    return given().get("/q/metrics").asString();
  }

  private static String state(PlannedPlant plant, String id) {
    return plant.await(id).getString("state");
  }
}
