package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** Plans follow what happens; who publishes them; and how one is taken back. */
@QuarkusTest
class FollowingTest {

  private static final String AT_ONCE =
      "{\"automatic\":true,\"settleSeconds\":0,\"solveSeconds\":1}";

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

  /** A plant with a plan in force that follows like this. */
  private static PlannedPlant following(String following) {
    PlannedPlant plant = PlannedPlant.ready();
    assertThat(set(plant, following).statusCode()).isEqualTo(200);
    plant.published();
    return plant;
  }

  private static Response set(PlannedPlant plant, String following) {
    Response shop = plant.api().get(plant.api().shop());
    String changed =
        shop.asString().replaceFirst("\"following\":\\{[^}]*}", "\"following\":" + following);
    return plant.api().put(plant.api().shop(), changed, "If-Match", shop.header("ETag"));
  }

  /** The customer of the first order wants it with another priority. */
  private static void change(PlannedPlant plant, int priority) {
    Order order = PlanFixture.orders().get(0);
    plant.put(
        new Order(
            order.reference(),
            order.customer(),
            priority,
            order.dueAt(),
            false,
            order.garments(),
            order.prints()));
  }

  private static JsonPath plans(PlannedPlant plant) {
    return plant.api().get(plant.plans()).jsonPath();
  }

  private static void await(BooleanSupplier until) {
    for (int i = 0; i < 600 && !until.getAsBoolean(); i++) {
      PlannedPlant.pause();
    }
    assertThat(until.getAsBoolean()).isTrue();
  }

  private static void awaitPlans(PlannedPlant plant, int number) {
    await(() -> plans(plant).getList("id").size() == number);
  }

  private long pending(PlannedPlant plant) {
    return rows.change("update plan_pending set plant = plant where plant = ?", plant.id());
  }

  @Test
  void aChangeIsFollowedByADraftOnceItHasSettled() {
    PlannedPlant plant = following("{\"automatic\":true,\"settleSeconds\":20,\"solveSeconds\":1}");
    change(plant, 3);
    SettableClock.set(at(DAY.minusDays(1), "16:30:15"));
    change(plant, 4);
    SettableClock.set(at(DAY.minusDays(1), "16:30:34"));
    assertThat(pending(plant)).isEqualTo(1);
    assertThat(plans(plant).getList("id")).hasSize(1);

    SettableClock.set(at(DAY.minusDays(1), "16:30:35"));

    awaitPlans(plant, 2);
    JsonPath draft = plant.await(plans(plant).getString("[0].id"));
    assertThat(draft.getString("state")).isEqualTo("draft");
    assertThat(draft.getString("origin")).isEqualTo("events");
    assertThat(draft.getString("day")).isEqualTo(DAY.toString());
    assertThat(draft.getBoolean("stale")).isFalse();
    assertThat(draft.getInt("stability.runs")).isEqualTo(5);
    assertThat(draft.getInt("stability.runsMoved")).isZero();
    assertThat(draft.getString("held")).isNull();
    assertThat(pending(plant)).isZero();
  }

  @Test
  void withoutAPlanInForceNothingIsFollowed() {
    PlannedPlant plant = PlannedPlant.ready();
    assertThat(set(plant, AT_ONCE).statusCode()).isEqualTo(200);
    plant.draft();
    change(plant, 3);
    assertThat(pending(plant)).isZero();
  }

  @Test
  void aPlantThatDoesNotWantItIsLeftAlone() {
    PlannedPlant plant = following("{\"automatic\":false,\"settleSeconds\":0}");
    change(plant, 3);
    await(() -> pending(plant) == 0);
    assertThat(plans(plant).getList("id")).hasSize(1);
  }

  @Test
  void aPlanThatThePlannerAskedForInTheMeantimeIsEnough() {
    PlannedPlant plant = following("{\"automatic\":true,\"settleSeconds\":20,\"solveSeconds\":1}");
    change(plant, 3);
    plant.draft();
    SettableClock.set(at(DAY.minusDays(1), "16:40"));
    await(() -> pending(plant) == 0);
    assertThat(plans(plant).getList("origin")).containsExactly("planner", "planner");
  }

  @Test
  void whatHappensWhileItIsSolvedMakesTheSearchBeginAnewFromItsBest() {
    PlannedPlant plant = following("{\"automatic\":true,\"settleSeconds\":0,\"solveSeconds\":120}");
    int warmBefore = planner.warmStarts();
    change(plant, 3);
    awaitPlans(plant, 2);
    String id = plans(plant).getString("[0].id");
    await(() -> !plant.get(id).getList("progress").isEmpty());

    change(plant, 4);

    JsonPath draft = plant.await(id);
    assertThat(draft.getString("state")).isEqualTo("draft");
    assertThat(draft.getBoolean("stale")).isFalse();
    assertThat(planner.warmStarts()).isGreaterThan(warmBefore);
    assertThat(plans(plant).getList("id")).hasSize(2);
  }

  @Test
  void aSearchThatWasBegunAnewOftenEnoughComesToItsEndAndAFurtherPlanFollows() {
    PlannedPlant plant = following("{\"automatic\":true,\"settleSeconds\":0,\"solveSeconds\":40}");
    change(plant, 3);
    awaitPlans(plant, 2);
    String id = plans(plant).getString("[0].id");
    await(() -> !plant.get(id).getList("progress").isEmpty());
    rows.change("update plan set restarts = 3 where state = 'solving' and plant = ?", plant.id());

    change(plant, 4);

    assertThat(plant.await(id).getBoolean("stale")).isTrue();
    awaitPlans(plant, 3);
    assertThat(plant.await(plans(plant).getString("[0].id")).getBoolean("stale")).isFalse();
    assertThat(pending(plant)).isZero();
  }

  @Test
  void changesWhoseInstanceDiedAreFollowedByAnother() {
    PlannedPlant plant = following(AT_ONCE);
    rows.change("update plan set data_stamp = -1 where plant = ?", plant.id());
    rows.change(
        "insert into plan_pending select id, 'gone-' || id, now() - interval '1 day',"
            + " now() - interval '1 day' from plant where id = ?",
        plant.id());
    rows.change(
        "insert into scheduled_tasks (task_name, task_instance, execution_time, picked, picked_by,"
            + " last_heartbeat, consecutive_failures, version) select 'plan-follow',"
            + " 'gone-' || id, now() - interval '1 hour', true, 'gone', now() - interval '1 hour',"
            + " 0, 1 from plant where id = ?",
        plant.id());

    awaitPlans(plant, 2);
    assertThat(plans(plant).getString("[0].origin")).isEqualTo("events");
  }

  @Test
  void whereThePlantLetsItThePlanIsPublishedByItself() {
    PlannedPlant plant =
        following(
            "{\"automatic\":true,\"settleSeconds\":0,\"solveSeconds\":1,"
                + "\"publish\":\"when-no-promise-gets-worse\",\"fewerThanRuns\":1}");
    change(plant, 3);
    awaitPlans(plant, 2);
    String id = plans(plant).getString("[0].id");
    assertThat(plant.await(id, List.of("published")).getString("state")).isEqualTo("published");
    assertThat(plant.get("current").getString("id")).isEqualTo(id);
  }

  @Test
  void whereMoreRunsMoveThanThePlantLetsItWaitsAndSaysWhy() {
    PlannedPlant plant =
        following(
            "{\"automatic\":true,\"settleSeconds\":0,\"solveSeconds\":1,"
                + "\"publish\":\"when-no-promise-gets-worse\",\"fewerThanRuns\":0}");
    change(plant, 3);
    awaitPlans(plant, 2);
    String id = plans(plant).getString("[0].id");
    await(() -> plant.get(id).getString("held") != null);
    assertThat(plant.get(id).getString("held")).contains("0 runs move", "fewer than 0");
    assertThat(plant.get(id).getString("state")).isEqualTo("draft");

    plant.publish(id).then().statusCode(200);
    assertThat(plant.get(id).getString("held")).isNull();
  }

  @Test
  void aDraftThatNobodyDecidedOnBeforeAKillIsDecidedOnAfterIt() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();
    // what a kill leaves between the draft and its publication: the wish, and the job of a dead one
    rows.change("update plan set decision_due = true where plant = ?", plant.id());
    rows.change(
        "insert into scheduled_tasks (task_name, task_instance, execution_time, picked, picked_by,"
            + " last_heartbeat, consecutive_failures, version) select 'plan-solve', id,"
            + " now() - interval '1 hour', true, 'gone', now() - interval '1 hour', 0, 1 from plan"
            + " where plant = ?",
        plant.id());

    await(() -> plant.get(id).getString("state").equals("published"));
    assertThat(
            rows.change("update plan set day = day where plant = ? and decision_due", plant.id()))
        .isZero();
  }

  @Test
  void wrongSettingsAreRefusedWithTheirPointers() {
    PlannedPlant plant = PlannedPlant.ready();
    assertThat(Api.pointers(set(plant, "{\"settleSeconds\":30,\"settleAtMostSeconds\":20}")))
        .containsExactly("/settings/following/settleAtMostSeconds");
    assertThat(Api.pointers(set(plant, "{\"publish\":\"always\",\"solveSeconds\":0}")))
        .containsExactlyInAnyOrder(
            "/settings/following/publish", "/settings/following/solveSeconds");
  }

  @Test
  void ofTwoPlannersTheOneWhoseViewIsOldIsToldSo() {
    PlannedPlant plant = PlannedPlant.ready();
    String id = plant.draft();
    String publication = plant.plans() + "/" + id + "/publication";
    String read = plant.api().get(plant.plans() + "/" + id).header("ETag");

    assertThat(plant.api().post(publication, "", "If-Match", "\"99\"").statusCode()).isEqualTo(412);
    assertThat(plant.get(id).getString("state")).isEqualTo("draft");
    Response published = plant.api().post(publication, "", "If-Match", read);
    assertThat(published.statusCode()).isEqualTo(200);
    assertThat(published.header("ETag")).isNotEqualTo(read);
    assertThat(plant.api().post(publication, "", "If-Match", read).statusCode()).isEqualTo(412);
  }

  @Test
  void aPlanThatWasSupersededIsBroughtBackAsAFurtherVersion() {
    PlannedPlant plant = PlannedPlant.ready();
    String first = plant.published();
    String second = plant.published();
    String restoration = plant.plans() + "/" + first + "/restoration";

    assertThat(plant.api().post(restoration, "", "If-Match", "\"99\"").statusCode()).isEqualTo(412);
    Response restored = plant.api().post(restoration, "");

    assertThat(restored.statusCode()).isEqualTo(201);
    JsonPath plan = restored.jsonPath();
    assertThat(restored.header("Location")).endsWith(plan.getString("id"));
    assertThat(plan.getInt("version")).isEqualTo(3);
    assertThat(plan.getString("state")).isEqualTo("published");
    assertThat(plan.getString("origin")).isEqualTo("restoration");
    assertThat(plan.getString("restores")).isEqualTo(first);
    assertThat(plan.getBoolean("stale")).isFalse();
    assertThat(plant.get(first).getString("state")).isEqualTo("superseded");
    assertThat(plant.get(second).getString("state")).isEqualTo("superseded");
  }

  @Test
  void whatCannotBeBroughtBackIsRefusedWithItsReason() {
    PlannedPlant plant = PlannedPlant.ready();
    String first = plant.published();
    Response inForce = plant.api().post(plant.plans() + "/" + first + "/restoration", "");
    assertThat(inForce.statusCode()).isEqualTo(409);
    assertThat(inForce.contentType()).startsWith("application/problem+json");
    assertThat(inForce.path("detail").toString()).contains("this plan is published");

    plant.published();
    SettableClock.set(at(DAY.plusDays(5), "06:00"));
    Response over = plant.api().post(plant.plans() + "/" + first + "/restoration", "");
    assertThat(over.statusCode()).isEqualTo(409);
    assertThat(over.path("detail").toString()).contains("Nothing of this plan");
    assertThat(plans(plant).getList("id")).hasSize(2);
    assertThat(plant.api().post(plant.plans() + "/no-such/restoration", "").statusCode())
        .isEqualTo(404);
  }
}
