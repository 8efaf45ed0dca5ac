package org.potlife.event;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Api;

/** The log of what happened, and what a person decides about what is parked. */
@QuarkusTest
class EventLogTest {

  private PlannedPlant plant;

  @BeforeEach
  void aPlantWithAPlan() {
    SettableClock.set(OffsetDateTime.parse("2026-11-30T16:30:00+01:00"));
    plant = PlannedPlant.ready();
    plant.published();
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  private String events() {
    return "/api/v1/plants/" + plant.id() + "/events";
  }

  private String tell(String id, String type, String data) {
    return plant
        .api()
        .post(
            events(),
            "{\"specversion\":\"1.0\",\"id\":\"%s\",\"source\":\"/rooms/1\",\"type\":\"org.potlife.%s\",\"time\":\"2026-11-30T16:22:03.123456+01:00\",\"data\":%s}"
                .formatted(id, type, data))
        .path("events[0].outcome");
  }

  private static String reading(String room) {
    return "{\"room\":\"" + room + "\",\"temperatureC\":24,\"humidityPercent\":55}";
  }

  private JsonPath list(String query) {
    return plant.api().get(events() + query).then().statusCode(200).extract().jsonPath();
  }

  private long parked() {
    return list("?state=parked").getLong("events[0].seq");
  }

  private Response settle(long seq, String body) {
    return plant.api().post(events() + "/" + seq + "/settlement", body);
  }

  @Test
  void whatIsParkedIsListedWithItsCauseAndTheOrdersEventsAreInTheLogToo() {
    assertThat(tell("a", "climate.reading", reading("C9"))).isEqualTo("parked");

    JsonPath parked = list("?state=parked");
    assertThat(parked.getList("events")).hasSize(1);
    assertThat(parked.getString("events[0].id")).isEqualTo("a");
    assertThat(parked.getString("events[0].type")).isEqualTo("org.potlife.climate.reading");
    assertThat(parked.getString("events[0].state")).isEqualTo("parked");
    assertThat(parked.getString("events[0].cause")).contains("no place C9");
    assertThat(parked.getString("events[0].data.room")).isEqualTo("C9");
    assertThat(parked.getString("events[0].recordedAt")).isEqualTo("2026-11-30T16:30:00+01:00");
    assertThat(list("").getList("events.state")).contains("applied", "parked");
    assertThat(list("?state=applied").getList("events.type"))
        .doesNotContain("org.potlife.climate.reading");
  }

  @Test
  void theLogIsReadPageByPage() {
    tell("a", "climate.reading", reading("C8"));
    tell("b", "climate.reading", reading("C9"));

    JsonPath first = list("?state=parked&limit=1");
    JsonPath second = list("?state=parked&limit=1&cursor=" + first.getString("next"));

    assertThat(first.getString("events[0].id")).isEqualTo("a");
    assertThat(second.getString("events[0].id")).isEqualTo("b");
    assertThat(second.getString("next")).isNull();
  }

  @Test
  void whatIsDismissedNeverTakesEffectAndItIsKeptWhoDecidedSo() {
    tell("a", "climate.reading", reading("C9"));
    long seq = parked();

    Response dismissed =
        settle(seq, "{\"how\":\"dismiss\",\"by\":\"Mira\",\"note\":\"a sensor of another shop\"}");

    assertThat(dismissed.statusCode()).isEqualTo(200);
    JsonPath event = dismissed.jsonPath();
    assertThat(event.getString("state")).isEqualTo("dismissed");
    assertThat(event.getString("settlements[0].by")).isEqualTo("Mira");
    assertThat(event.getString("settlements[0].note")).isEqualTo("a sensor of another shop");
    assertThat(event.getString("settlements[0].at")).isEqualTo("2026-11-30T16:30:00+01:00");
    assertThat(event.getString("settlements[0].cause")).contains("no place C9");
    assertThat(list("?state=parked").getList("events")).isEmpty();
    assertThat(list("?state=dismissed").getList("events.id")).containsExactly("a");
    assertThat(settle(seq, "{\"how\":\"apply-again\",\"by\":\"Mira\"}").statusCode())
        .isEqualTo(409);
  }

  @Test
  void appliedAgainItMayBeParkedAgainUntilTheShopKnowsWhatItSpeaksOf() {
    tell("a", "climate.reading", reading("C9"));
    long seq = parked();
    Response again = settle(seq, "{\"how\":\"apply-again\",\"by\":\"Mira\"}");
    assertThat(again.path("state").toString()).isEqualTo("parked");
    assertThat(again.path("settlements[0].outcome").toString()).isEqualTo("parked");

    Response shop = plant.api().get(plant.api().shop());
    plant
        .api()
        .put(
            plant.api().shop(),
            shop.asString().replace("\"id\":\"C2\"", "\"id\":\"C9\""),
            "If-Match",
            shop.header("ETag"))
        .then()
        .statusCode(200);
    String draft = plant.draft();
    JsonPath applied = settle(seq, "{\"how\":\"apply-again\",\"by\":\"Mira\"}").jsonPath();

    assertThat(applied.getString("state")).isEqualTo("applied");
    assertThat(applied.getString("cause")).isNull();
    assertThat(applied.getList("settlements.outcome")).containsExactly("parked", "applied");
    assertThat(plant.get(draft).getBoolean("stale")).isTrue();
  }

  @Test
  void aCauseNamesTimesAsTheyStandOnTheWall() {
    String batch = plant.get("current").getString("batches[0].id");
    String data = "{\"batch\":\"" + batch + "\",\"reason\":\"spilt\"}";
    assertThat(tell("a", "batch.discarded", data)).isEqualTo("applied");
    assertThat(tell("b", "batch.discarded", data)).isEqualTo("parked");
    assertThat(list("?state=parked").getString("events[0].cause"))
        .isEqualTo(batch + " is gone since Mon 30 Nov 16:22.");
  }

  @Test
  void whatCannotBeSettledSoIsRefused() {
    tell("a", "climate.reading", reading("C9"));
    long seq = parked();

    assertThat(Api.pointers(settle(seq, "{\"how\":\"dismiss\",\"by\":\"Mira\"}")))
        .containsExactly("/note");
    assertThat(Api.pointers(settle(seq, "{\"how\":\"forget\"}")))
        .containsExactlyInAnyOrder("/how", "/by");
    assertThat(settle(seq, "{").statusCode()).isEqualTo(400);
    String wish = "{\"how\":\"apply-again\",\"by\":\"Mira\"}";
    assertThat(settle(Long.MAX_VALUE / 100, wish).statusCode()).isEqualTo(404);
    assertThat(plant.api().post(events() + "/first/settlement", wish).statusCode()).isEqualTo(404);
    String elsewhere = "/api/v1/plants/" + PlannedPlant.ready().id() + "/events/" + seq;
    assertThat(plant.api().post(elsewhere + "/settlement", wish).statusCode()).isEqualTo(404);
    assertThat(plant.api().get(events() + "?state=lost").statusCode()).isEqualTo(400);
    assertThat(plant.api().get(events() + "?cursor=x").statusCode()).isEqualTo(400);
    assertThat(plant.api().get(events() + "?limit=0").statusCode()).isEqualTo(400);
    assertThat(plant.api().get("/api/v1/plants/nobody/events").statusCode()).isEqualTo(404);
    assertThat(list("?state=parked").getList("events[0].settlements")).isNull();
  }
}
