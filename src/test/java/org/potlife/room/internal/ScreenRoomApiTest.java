package org.potlife.room.internal;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Api;

/**
 * The evening before: the crest's first screen is degreased from 17:00, in the cabinet C1 from
 * 17:05, and coated in C2 from 17:33.
 */
@QuarkusTest
class ScreenRoomApiTest {

  private static final String EVE = "2026-11-30T";

  private PlannedPlant plant;

  @BeforeEach
  void aPlantWithAPlan() {
    SettableClock.set(OffsetDateTime.parse(EVE + "16:30:00+01:00"));
    plant = PlannedPlant.ready();
    plant.published();
    SettableClock.set(OffsetDateTime.parse(EVE + "18:40:00+01:00"));
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  private Response tell(String time, String type, String data) {
    return plant
        .api()
        .post(
            "/api/v1/plants/" + plant.id() + "/events",
            "{\"specversion\":\"1.0\",\"id\":\""
                + type
                + time
                + data.hashCode()
                + "\",\"source\":\"/room\",\"type\":\"org.potlife."
                + type
                + "\",\"time\":\""
                + EVE
                + time
                + ":00+01:00\",\"data\":"
                + data.replace('\'', '"')
                + "}");
  }

  private static String outcome(Response response) {
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    return response.path("events[0].outcome");
  }

  private JsonPath get(String what) {
    Response response = plant.api().get("/api/v1/plants/" + plant.id() + "/screen-room/" + what);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    return response.jsonPath();
  }

  @Test
  void looksTeachTheAirflowOfACabinet() {
    JsonPath before = get("cabinets");
    double setUp = PlanFixture.shop().screenRoom().cabinets().get(0).airflowFactor();
    assertThat(before.getInt("cabinets[0].observations")).isZero();
    assertThat(before.getDouble("cabinets[0].factorInUse")).isEqualTo(setUp);

    outcome(tell("17:06", "emulsion.reading", "{'screen':'crest/bone','dry':true}"));
    outcome(tell("17:34", "emulsion.reading", "{'screen':'crest/bone','dry':true}"));

    JsonPath after = get("cabinets");
    assertThat(after.getInt("cabinets[0].observations") + after.getInt("cabinets[1].observations"))
        .isEqualTo(2);
    assertThat(after.getDouble("cabinets[0].factorInUse")).isEqualTo(setUp);
    assertThat(after.getDouble("cabinets[0].learnedFactor")).isGreaterThan(setUp);
  }

  @Test
  void aReadingSaysWhetherACabinetDries() {
    tell("18:30", "climate.reading", "{'room':'C1','temperatureC':22,'humidityPercent':75}");

    JsonPath cabinets = get("cabinets");
    assertThat(cabinets.getBoolean("cabinets[0].driesNow")).isFalse();
    assertThat(cabinets.getFloat("cabinets[0].lastReading.humidityPercent")).isEqualTo(75);
    assertThat(cabinets.getBoolean("cabinets[1].driesNow")).isTrue();
  }

  @Test
  void aScreenHasAStateThatIsPlannedUntilItIsReported() {
    JsonPath planned = get("screens/crest/bone");
    assertThat(planned.getString("basis")).isEqualTo("planned");
    assertThat(planned.getString("state")).isEqualTo("dry");

    String moved = "{'screen':'crest/bone','state':'coated-drying','frame':'F7','person':'Mia'}";
    assertThat(outcome(tell("18:35", "screen.moved", moved))).isEqualTo("applied");
    assertThat(outcome(tell("18:36", "screen.tension", "{'frame':'F7','newtonPerCm':24.5}")))
        .isEqualTo("applied");

    JsonPath reported = get("screens/crest/bone");
    assertThat(reported.getString("basis")).isEqualTo("reported");
    assertThat(reported.getString("state")).isEqualTo("coated-drying");
    assertThat(reported.getString("planned")).isEqualTo("dry");
    assertThat(reported.getString("frame")).isEqualTo("F7");
    assertThat(reported.getDouble("newtonPerCm")).isEqualTo(24.5);
    assertThat(reported.getList("history.person")).isEqualTo(List.of("Mia"));
  }

  @Test
  void whereAScreenIsMovesNoPlan() {
    String draft = plant.draft();

    tell("18:35", "screen.moved", "{'screen':'crest/bone','state':'dry'}");
    tell("18:36", "screen.tension", "{'screen':'crest/bone','newtonPerCm':22}");

    assertThat(plant.get(draft).getBoolean("stale")).isFalse();
  }

  @Test
  void theListHoldsPlannedScreensAndKeptStencils() {
    List<String> ids = get("screens").getList("screens.screen");

    assertThat(ids).contains("crest/bone", "roster/brick", "K-loaf-chalk");
  }

  @Test
  void whatNobodyKnowsIsKeptAside() {
    assertThat(outcome(tell("18:35", "screen.moved", "{'screen':'nobody','state':'dry'}")))
        .isEqualTo("parked");
    assertThat(outcome(tell("18:35", "screen.moved", "{'screen':'crest/bone','state':'broken'}")))
        .isEqualTo("parked");
    assertThat(outcome(tell("18:35", "screen.tension", "{'newtonPerCm':22}"))).isEqualTo("parked");
  }

  @Test
  void aStateThatThereIsNotIsRefused() {
    Response response = tell("18:35", "screen.moved", "{'screen':'crest/bone','state':'lost'}");

    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(response)).containsExactly("/data/state");
  }
}
