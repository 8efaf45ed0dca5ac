package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.Api;

@QuarkusTest
@TestProfile(RealSearch.class)
class InstructionApiTest {

  private static final String NONE = "{\"held\":[],\"runs\":[],\"lots\":[]}";
  private static final String HELD = "{\"held\":[\"HC-2041\"]}";

  private PlannedPlant plant;
  private String path;

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    plant = PlannedPlant.ready();
    path = "/api/v1/plants/" + plant.id() + "/instructions";
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  private Response put(String body, String... headers) {
    return plant.api().put(path, body, headers);
  }

  private static String run(String wish) {
    return "{\"runs\":[" + wish + "]}";
  }

  private String tag() {
    return plant.api().get(path).header("ETag");
  }

  @Test
  void theFirstInstructionsNeedNoTagAndEachChangeNamesTheOneItIsBasedOn() {
    assertThat(tag()).isEqualTo("\"0\"");

    Response first = put(HELD);
    assertThat(first.statusCode()).isEqualTo(200);
    assertThat(first.header("ETag")).isEqualTo("\"1\"");

    assertThat(put(NONE).statusCode()).isEqualTo(428);
    assertThat(put(NONE, "If-Match", "\"1\"").header("ETag")).isEqualTo("\"2\"");
    assertThat(put(HELD, "If-Match", "\"1\"").statusCode()).isEqualTo(412);
    assertThat(plant.api().get(path).jsonPath().getList("held")).isEmpty();
  }

  @Test
  void whatCannotBeAskedIsRefusedAtItsFieldAndNothingIsKept() {
    Response wrong =
        put(
            """
            {"held":[""],
             "runs":[{"run":"A:x:front:1","press":"P9"},
                     {"run":"B:x:front:1","before":"A:x:front:1"},
                     {"run":"C:x:front:1","press":"P1","before":"C:x:front:1"},
                     {"run":"D:x:front:1","press":"P2","before":"E:x:front:1"},
                     {"run":"E:x:front:1","press":"P1","before":"F:x:front:1"},
                     {"run":"F:x:front:1","press":"P1","before":"G:x:front:1"},
                     {"run":"G:x:front:1","press":"P1","before":"E:x:front:1"},
                     {"press":"P1"}],
             "lots":[{"order":"A","lots":1}]}
            """);

    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(wrong))
        .containsExactlyInAnyOrder(
            "/held/0",
            "/runs/0/press",
            "/runs/1/press",
            "/runs/2/before",
            "/runs/3/before",
            "/runs/4/before",
            "/runs/5/before",
            "/runs/6/before",
            "/runs/7/run",
            "/lots/0/lots");
    assertThat(tag()).isEqualTo("\"0\"");
  }

  @Test
  void whatIsNotJsonIsNotRead() {
    assertThat(put("{\"held\":").statusCode()).isEqualTo(400);
    assertThat(plant.api().post(path + "/effect", "{\"held\":").statusCode()).isEqualTo(400);
  }

  @Test
  void theEffectIsToldAndNothingIsKept() {
    String published = plant.published();
    List<String> plans = plant.api().get(plant.plans()).jsonPath().getList("plans.id");

    Response effect = plant.api().post(path + "/effect", HELD);

    assertThat(effect.statusCode()).isEqualTo(200);
    assertThat(effect.jsonPath().getInt("then.unplaced"))
        .isGreaterThan(effect.jsonPath().getInt("now.unplaced"));
    assertThat(tag()).isEqualTo("\"0\"");
    assertThat(plant.api().get(plant.plans()).jsonPath().<String>getList("plans.id"))
        .isEqualTo(plans);
    assertThat(plant.get("current").getString("id")).isEqualTo(published);
    assertThat(plant.get("current").getBoolean("stale")).isFalse();
  }

  @Test
  void theNextPlanPrintsARunBeforeTheOneThatThePlannerNames() {
    plant.published();
    List<String> before = inLine();
    String first = before.get(0);
    String last = before.get(before.size() - 1);
    assertThat(first.split(":")[0]).isNotEqualTo(last.split(":")[0]);

    put(run("{\"run\":\"%s\",\"press\":\"P1\",\"before\":\"%s\"}".formatted(last, first)))
        .then()
        .statusCode(200);
    assertThat(plant.get("current").getBoolean("stale")).isTrue();
    plant.published();

    assertThat(inLine()).containsSubsequence(last, first);
  }

  private List<String> inLine() {
    return plant
        .get("current")
        .getList("runs.findAll { it.press == 'P1' }.sort { it.setUpStart }.id", String.class);
  }
}
