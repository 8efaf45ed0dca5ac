package org.potlife.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;

@QuarkusTest
class PagesTest {

  private PlannedPlant plant;

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    plant = PlannedPlant.ready();
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "activations", "screens", "presses", "belts", "late"})
  void everySheetSaysWhatItIsAndEscapesWhatComesFromOutside(String name) {
    Response page = page(plant.published(), name);

    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.contentType()).startsWith("text/html");
    String html = page.asString();
    assertThat(html).startsWith("<!DOCTYPE html>").contains("<html lang=\"en\">");
    assertThat(html).contains("Tuesday 1 December 2026", "plan 1, <b>published</b>");
    assertThat(html).contains("printed Mon 30 Nov 2026, 16:42");
    assertThat(html).contains("Fixture &lt;Yard&gt;").doesNotContain("<Yard>", "<b>Bakery");
    assertThat(html).doesNotContain("NOT_FOUND", "<th>");
  }

  @Test
  void theInkRoomReadsWhatToWeighAndUntilWhen() {
    String html = page(plant.published(), "activations").asString();

    assertThat(html).contains("formaldehyde", "declares nothing safe");
    assertThat(html).contains("brick pigment", ">2410<", "agent, 6 %", "fill=\"#a3412f\"");
    assertThat(html).contains(">10:58</time>", "no agent", "no clock");
    assertThat(html).contains("<span class=\"away\">Mon 30 Nov</span> 17:00</time>");
  }

  @Test
  void theDryersCrewReadsWhenToTurnTheSpeedAndWhatAMixedBeltCosts() {
    String html = page(plant.published(), "belts").asString();

    assertThat(html)
        .contains("when HC-2041 crest, front is off the belt")
        .contains("Mixed belt", "<b>HC-2041 crest, front</b>");
    assertThat(page(plant.published(), "presses").asString())
        .contains("2 lanes; on the belt within 60 s of the last stroke");
  }

  @Test
  void aDraftIsNoSheetToWorkFrom() {
    assertThat(page(plant.draft(), "presses").asString())
        .contains("Draft: not published", "Do not work from this sheet");
  }

  @Test
  void theSheetOfAnotherDayIsThatDays() {
    String html = page(plant.published(), "presses?day=" + DAY.plusDays(1)).asString();

    assertThat(html).contains("Wednesday 2 December 2026", "lot 2 of 2");
  }

  @Test
  void aPlanInTheMakingLooksAgainByItself() {
    String id = plant.request(60).path("id");

    assertThat(page(id, "plan").asString())
        .contains("The plan is being made", "http-equiv=\"refresh\"");
    given().post(plant.plans() + "/" + id + "/stop");
    plant.await(id);
  }

  @Test
  void withoutAPlanThePageSaysWhatToDo() {
    Response page = page("current", "plan");

    assertThat(page.statusCode()).isEqualTo(404);
    assertThat(page.contentType()).startsWith("text/html");
    assertThat(page.asString()).contains("No plan is in force. Ask for one");
    assertThat(page(plant.published(), "plan?day=x").statusCode()).isEqualTo(400);
  }

  @Test
  void theStartPageLeadsToTheSheetsAndShowsTomorrow() {
    String before = given().get("/").asString();
    assertThat(before).contains("No plan is in force").doesNotContain("<Yard>");

    String id = plant.published();

    String html = given().get("/").asString();
    assertThat(html)
        .contains(
            "/plants/" + plant.id() + "/plans/" + id + "/pages/activations",
            "Tomorrow, Tuesday 1 December 2026",
            "HC-2041");
  }

  @Test
  void theStyleIsServed() {
    Response css = given().get("/potlife.css");

    assertThat(css.statusCode()).isEqualTo(200);
    assertThat(css.asString()).contains("@page");
  }

  private Response page(String plan, String name) {
    return given().get("/plants/" + plant.id() + "/plans/" + plan + "/pages/" + name);
  }
}
