package org.potlife.plan;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PlanListApiTest {

  private PlannedPlant plant;
  private String plan;

  @BeforeEach
  void aPlanInForce() {
    SettableClock.set(at(DAY.minusDays(1), "16:30"));
    plant = PlannedPlant.ready();
    plan = plant.plans() + "/" + plant.published();
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  @Test
  void activationsAreThePlansDayUnlessAnotherIsAskedFor() {
    JsonPath day = given().get(plan + "/activations").jsonPath();
    JsonPath evening = given().get(plan + "/activations?day=2026-11-30").jsonPath();

    assertThat(day.getString("day")).isEqualTo("2026-12-01");
    assertThat(day.getString("timeZone")).isEqualTo("Europe/Berlin");
    assertThat(day.getString("state")).isEqualTo("published");
    assertThat(day.getList("batches")).hasSize(12);
    assertThat(day.getString("batches[0].swatch")).isEqualTo("#efe6d2");
    assertThat(day.getString("batches[0].components[0].name")).isEqualTo("discharge base");
    assertThat(day.getString("batches[0].ink")).isEqualTo("bone");
    assertThat(day.getList("batches[0].runs")).isNotEmpty();
    assertThat(day.getList("cautions", String.class))
        .anyMatch(line -> line.contains("formaldehyde and sulphur dioxide"))
        .anyMatch(line -> line.contains("eye protection"))
        .anyMatch(line -> line.contains("declares nothing safe"));
    assertThat(evening.getList("batches.id")).containsExactly("bone-2");
  }

  @Test
  void screensComeWithStagesLoadsAndStencilsToFetch() {
    JsonPath screens = given().get(plan + "/screens").jsonPath();

    assertThat(screens.getList("fetches")).hasSize(2);
    assertThat(screens.getList("stages.step")).contains("coat", "dry-coated", "tape");
    assertThat(screens.getList("loads")).isNotEmpty();
    assertThat(screens.getList("screens")).hasSize(11);
  }

  @Test
  void theListInForceIsReadUnderCurrent() {
    assertThat(given().get(plant.plans() + "/current/activations").statusCode()).isEqualTo(200);
  }

  @Test
  void listsAreFilesByAcceptOrByFormat() {
    Response byAccept = given().accept("text/csv").get(plan + "/activations");
    Response byFormat = given().get(plan + "/activations?format=csv");

    assertThat(byAccept.contentType()).isEqualToIgnoringCase("text/csv;charset=utf-8");
    assertThat(byAccept.asString()).startsWith("batch,ink,process,step,component").contains("\r\n");
    assertThat(byFormat.asString()).isEqualTo(byAccept.asString());
    assertThat(byFormat.header("Content-Disposition"))
        .isEqualTo("attachment; filename=\"activations-2026-12-01.csv\"");
    for (String list :
        List.of("screens", "presses", "belts", "late", "promises", "changes", "audit")) {
      assertThat(given().get(plan + "/" + list + "?format=csv").contentType())
          .as(list)
          .startsWith("text/csv");
      assertThat(given().get(plan + "/" + list).contentType())
          .as(list)
          .startsWith("application/json");
    }
  }

  @Test
  void jsonIsGivenToWhoeverTakesAnything() {
    assertThat(given().accept("*/*").get(plan + "/belts").contentType())
        .startsWith("application/json");
    assertThat(
            given()
                .accept("text/html, application/xml;q=0.9, */*;q=0.8")
                .get(plan + "/belts")
                .contentType())
        .startsWith("application/json");
  }

  @Test
  void thePlanInForceIsACalendarForEachPress() {
    String press = given().get(plan + "/presses").jsonPath().getString("presses[0].press");
    String feed = "/api/v1/plants/" + plant.id() + "/presses/" + press + "/calendar.ics";

    Response calendar = given().get(feed);

    assertThat(calendar.contentType()).isEqualToIgnoringCase("text/calendar;charset=utf-8");
    assertThat(calendar.asString()).startsWith("BEGIN:VCALENDAR\r\n").contains("BEGIN:VEVENT");
    assertThat(given().header("If-None-Match", calendar.header("ETag")).get(feed).statusCode())
        .isEqualTo(304);
    assertThat(given().get(feed.replace(press, "P99")).statusCode()).isEqualTo(404);
  }

  @Test
  void aDayOrFormatThatIsNoneIsRefused() {
    assertThat(given().get(plan + "/activations?day=monday").statusCode()).isEqualTo(400);
    assertThat(given().get(plan + "/activations?format=xls").statusCode()).isEqualTo(400);
    assertThat(given().get(plan + "/activations?format=xls").contentType())
        .startsWith("application/problem+json");
  }
}
