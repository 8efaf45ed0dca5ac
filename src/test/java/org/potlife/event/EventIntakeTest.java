package org.potlife.event;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** What is told to the service: CloudEvents 1.0 in the JSON format. */
@QuarkusTest
class EventIntakeTest {

  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-30T16:30:00+01:00");

  @Inject Rows rows;

  private PlannedPlant plant;

  @BeforeEach
  void aPlantWithAPlan() {
    SettableClock.set(NOW);
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

  private Response tell(String body) {
    return plant.api().post(events(), body);
  }

  private static String event(String id, String type, String data) {
    return "{\"specversion\":\"1.0\",\"id\":\""
        + id
        + "\",\"source\":\"/sensors/1\",\"type\":\"org.potlife."
        + type
        + "\",\"time\":\"2026-11-30T16:2"
        + (id.charAt(0) - 'a') % 8
        + ":00+01:00\",\"data\":"
        + data
        + "}";
  }

  private static String reading(String id, double humidityPercent) {
    return event(
        id,
        "climate.reading",
        "{\"room\":\""
            + PlanFixture.shop().screenRoom().cabinets().get(0).id()
            + "\",\"temperatureC\":30,\"humidityPercent\":"
            + humidityPercent
            + "}");
  }

  private long recorded() {
    return rows.eventsOf(plant.id(), "/sensors/1");
  }

  @Test
  void aReadingIsRecordedOnce() {
    assertThat(tell(reading("a", 35)).path("events[0].outcome").toString()).isEqualTo("applied");

    Response again = tell(reading("a", 35));

    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.path("events[0].outcome").toString()).isEqualTo("known");
    assertThat(recorded()).isEqualTo(1);
  }

  @Test
  void aReadingThatIsLikeTheOneBeforeMovesNoPlan() {
    tell(reading("a", 35));
    String draft = plant.draft();

    tell(reading("b", 36.5));
    assertThat(plant.get(draft).getBoolean("stale")).isFalse();

    tell(reading("c", 47));
    assertThat(plant.get(draft).getBoolean("stale")).isTrue();
  }

  @Test
  void severalAreTakenInTogetherOrNotAtAll() {
    Response response =
        tell("[" + reading("a", 35) + "," + reading("b", 135) + ",{\"specversion\":\"0.3\"}]");

    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(response))
        .containsExactly(
            "/1/data/humidityPercent",
            "/2/specversion",
            "/2/source",
            "/2/id",
            "/2/type",
            "/2/data");
    assertThat(recorded()).isZero();

    assertThat(tell("[" + reading("a", 35) + "," + reading("b", 36) + "]").statusCode())
        .isEqualTo(200);
    assertThat(recorded()).isEqualTo(2);
  }

  @Test
  void whatThePlantDoesNotKnowIsParkedWithItsCause() {
    Response response =
        tell(event("x", "emulsion.reading", "{\"screen\":\"nobody-1\",\"dry\":true}"));

    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.path("events[0].outcome").toString()).isEqualTo("parked");
    assertThat(response.path("events[0].cause").toString())
        .isEqualTo("The plan in force has no screen nobody-1.");
  }

  @Test
  void aTimeAheadOfTheClockOrAnUnknownFieldIsRefused() {
    Response ahead = tell(reading("a", 35).replace("T16:20:00", "T17:20:00"));
    Response unknown =
        tell(event("b", "emulsion.reading", "{\"screen\":\"s\",\"dry\":true,\"wet\":false}"));
    Response type = tell(event("c", "emulsion.tasted", "{}"));

    assertThat(Api.pointers(ahead)).containsExactly("/time");
    assertThat(Api.pointers(unknown)).containsExactly("/data/wet");
    assertThat(Api.pointers(type)).containsExactly("/type");
    assertThat(recorded()).isZero();
  }

  @Test
  void aDeviceWhoseClockGoesAheadTellsOfNow() {
    tell(reading("a", 35).replace("T16:20:00", "T16:33:00"));

    String time = plant.api().get(events()).path("events.find { it.id == 'a' }.time");

    assertThat(OffsetDateTime.parse(time).toInstant()).isEqualTo(NOW.toInstant());
  }

  @Test
  void theMediaTypesOfTheStandardAreRead() {
    for (String type :
        List.of("application/cloudevents+json", "application/cloudevents-batch+json")) {
      Response response =
          io.restassured.RestAssured.given()
              .header("Content-Type", type)
              .body("[" + reading(type, 35) + "]")
              .post(events());
      assertThat(response.statusCode()).as(type).isEqualTo(200);
    }
  }

  @Test
  void theServicesOwnSourceIsRefusedSoThatNobodyTakesItsIds() {
    Response response =
        tell(reading("a", 35).replace("/sensors/1", "/plants/" + plant.id() + "/orders"));

    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(response)).containsExactly("/source");
  }

  @Test
  void aNumberThatOnlyTheDatabaseCannotKeepIsRefused() {
    Response response = tell(reading("a", 35).replace("35.0", "1E-20000"));

    assertThat(response.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(response)).containsExactly("/data/humidityPercent");
  }

  @Test
  void aBrokenScreenOrAContainerWithoutANameCannotBeTold() {
    assertThat(Api.pointers(tell(event("a", "screen.broken", "{\"screen\":\" \"}"))))
        .containsExactly("/data/screen");
    assertThat(
            Api.pointers(
                tell(
                    event(
                        "b", "ink.returned", "{\"batch\":\"x\",\"massG\":5,\"container\":\" \"}"))))
        .containsExactly("/data/container");
  }
}
