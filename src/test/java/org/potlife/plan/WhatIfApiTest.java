package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** Questions to the plan in force over REST; what they are answered is tested in planning. */
@QuarkusTest
class WhatIfApiTest {

  private static final String SOONER =
      "{\"order\":\"HC-2041\",\"dueAt\":\"2026-12-01T09:00:00+01:00\"}";

  @Inject Rows rows;
  @Inject DataSource source;

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:30"));
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  private static Response ask(PlannedPlant plant, String question) {
    return plant.api().post("/api/v1/plants/" + plant.id() + "/what-if", question);
  }

  @Test
  void aQuestionIsAnsweredAgainstThePlanInForceAndNothingIsStored() {
    PlannedPlant plant = PlannedPlant.ready();
    String inForce = plant.published();
    long events = rows.events(plant.id());
    long stamp = rows.dataStamp(plant.id());

    Response answer = ask(plant, SOONER);

    assertThat(answer.statusCode()).isEqualTo(200);
    JsonPath told = answer.jsonPath();
    assertThat(told.getString("plan")).isEqualTo(inForce);
    assertThat(told.getBoolean("stale")).isFalse();
    assertThat(told.getInt("frozen")).isEqualTo(1);
    assertThat(told.getInt("now.weightedLateMinutes")).isEqualTo(400);
    assertThat(told.getInt("then.weightedLateMinutes")).isEqualTo(400);
    assertThat(told.getInt("changes.runs")).isEqualTo(5);
    assertThat(told.getList("becomeLate")).isEmpty();
    assertThat(plant.api().get(plant.plans()).jsonPath().getList("id")).containsExactly(inForce);
    assertThat(rows.events(plant.id())).isEqualTo(events);
    assertThat(rows.dataStamp(plant.id())).isEqualTo(stamp);
  }

  @Test
  void allThreeKindsOfQuestionsAreTaken() {
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    assertThat(
            ask(
                    plant,
                    "{\"press\":\"P1\",\"downFrom\":\"2026-12-01T08:00:00+01:00\","
                        + "\"downTo\":\"2026-12-01T10:00:00+01:00\",\"solveSeconds\":0}")
                .statusCode())
        .isEqualTo(200);
    assertThat(
            ask(
                    plant,
                    "{\"press\":\"P1\",\"shift\":{\"days\":[\"SATURDAY\"],\"from\":\"06:00\","
                        + "\"to\":\"12:00\",\"overtime\":true}}")
                .statusCode())
        .isEqualTo(200);
  }

  @Test
  void withoutAPlanInForceThereIsNothingToAsk() {
    PlannedPlant plant = PlannedPlant.ready();
    plant.draft();
    Response refused = ask(plant, SOONER);
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    assertThat(ask(plant, "{\"order\":").statusCode()).isEqualTo(400);
    assertThat(plant.api().post("/api/v1/plants/nobody/what-if", SOONER).statusCode())
        .isEqualTo(404);
  }

  @Test
  void whatIsNoQuestionIsRefusedWithPointers() {
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    assertThat(Api.pointers(ask(plant, "{}"))).containsExactly("");
    assertThat(Api.pointers(ask(plant, "{\"press\":\"P1\"}"))).containsExactly("");
    assertThat(Api.pointers(ask(plant, "{\"order\":\"HC-2041\"}"))).containsExactly("/dueAt");
    assertThat(
            Api.pointers(ask(plant, "{\"order\":\"X-1\",\"dueAt\":\"2026-12-01T09:00:00+01:00\"}")))
        .containsExactly("/order");
    assertThat(
            Api.pointers(
                ask(
                    plant,
                    "{\"order\":\"HC-2041\",\"dueAt\":\"2026-12-01T09:00:00+01:00\",\"press\":\"P1\"}")))
        .containsExactly("/press");
    assertThat(
            Api.pointers(
                ask(
                    plant,
                    "{\"press\":\"P9\",\"downFrom\":\"2026-12-01T08:00:00+01:00\","
                        + "\"downTo\":\"2026-12-01T10:00:00+01:00\"}")))
        .containsExactly("/press");
    assertThat(
            Api.pointers(
                ask(
                    plant,
                    "{\"press\":\"P1\",\"downFrom\":\"2026-12-01T10:00:00+01:00\","
                        + "\"downTo\":\"2026-12-01T08:00:00+01:00\",\"solveSeconds\":60}")))
        .containsExactlyInAnyOrder("/downTo", "/solveSeconds");
    assertThat(
            Api.pointers(
                ask(
                    plant,
                    "{\"press\":\"P1\",\"shift\":{\"days\":[\"SATURDAY\"],\"from\":\"06:00\","
                        + "\"to\":\"12:00\",\"breaks\":[{\"from\":\"13:00\",\"to\":\"13:10\"}]}}")))
        .containsExactly("/shift");
  }

  @Test
  void whileOneQuestionIsAnsweredTheNextIsToldToWait() throws SQLException {
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    try (Connection another = source.getConnection();
        PreparedStatement hold =
            another.prepareStatement("select pg_advisory_lock(hashtextextended(?, 0))");
        PreparedStatement let =
            another.prepareStatement("select pg_advisory_unlock(hashtextextended(?, 0))")) {
      hold.setString(1, "potlife-question:" + plant.id());
      hold.execute();
      Response refused = ask(plant, SOONER);
      assertThat(refused.statusCode()).isEqualTo(429);
      assertThat(refused.path("detail").toString()).contains("Ask again");
      let.setString(1, "potlife-question:" + plant.id());
      let.execute();
    }
    assertThat(ask(plant, SOONER).statusCode()).isEqualTo(200);
  }

  @Test
  void aPlanThatIsBeingSolvedGoesOn() {
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    String id = plant.request(100).path("id");
    while (plant.get(id).getList("progress").isEmpty()) {
      PlannedPlant.pause();
    }
    assertThat(ask(plant, SOONER).statusCode()).isEqualTo(200);
    assertThat(plant.await(id).getString("state")).isEqualTo("draft");
  }
}
