package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@QuarkusTest
class ScreensTest extends EveningBefore {

  private static final List<String> SCREENS =
      List.of(
          "plan",
          "ink-room",
          "screen-room",
          "presses",
          "presses/P1",
          "orders",
          "orders/HC-2041",
          "order-table",
          "shop",
          "days-end");

  /** What a mark waits before it is sent, and a little more, ms. */
  private static final long UNDO_MS = 5500;

  @ParameterizedTest
  @EnumSource(names = {"LIGHT", "DARK"})
  void everyScreenCanBeReadByEverybody(ColorScheme scheme) {
    plant.published();
    look(scheme);
    for (String screen : SCREENS) {
      open(screen);
      if (screen.equals("plan")) {
        assertThat(page.locator("#board")).isVisible();
      }
      if (screen.equals("shop")) {
        assertThat(page.locator("#shop-form")).isVisible();
      }
      window.read(screen);
    }
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void thePlannerMakesAPlanAndPutsItIntoForce() {
    open("plan");
    assertThat(page.locator("main h1")).hasText("No plan yet");

    page.locator("#solve input[name=day]").fill(DAY.toString());
    page.locator("#solve input[name=seconds]").fill("1");
    page.locator("#solve button").click();
    assertThat(page.locator("#publish")).isVisible();
    page.locator("#publish").click();

    assertThat(page.locator("main h1")).containsText("in force");
    assertThat(page.locator("#drawing[data-drawn=yes]")).isVisible();
    assertThat(plant.get("current").getInt("version")).isEqualTo(1);
  }

  @Test
  void thePlannerNeedsNoMouse() {
    plant.draft();
    open("plan");
    assertThat(page.locator("#drawing[data-drawn=yes]")).isVisible();

    page.keyboard().press("Tab");
    assertThat(page.locator(".skip")).isFocused();
    page.keyboard().press("Enter");
    window.walkTo("#runs");
    page.keyboard().press("ArrowRight");
    assertThat(page.locator("#runs [role=option]")).hasCount(1);
    String first = page.locator("#about h2").textContent();
    page.keyboard().press("ArrowRight");
    assertThat(page.locator("#about h2")).not().hasText(first);
    page.keyboard().press("ArrowLeft");
    assertThat(page.locator("#about h2")).hasText(first);
    assertThat(page.locator("#about")).containsText("Promise");

    page.keyboard().press("Escape");
    page.evaluate("document.activeElement.blur(); window.scrollTo(0, 0)");
    window.walkTo("#publish");
    page.keyboard().press("Enter");
    assertThat(page.locator("main h1")).containsText("in force");
  }

  @Test
  void theInkRoomMarksABatchAndCanTakeItBackForAMoment() {
    plant.published();
    page.clock().install();
    open("ink-room");
    Locator job = page.locator(".job").filter(new Locator.FilterOptions().setHasText("brick"));
    String batch = batchOf(job);

    job.first().locator("button[data-mark='batch.mixed']").click();
    page.locator(".notice button").click();
    assertThat(page.locator(".notice")).containsText("taken back");
    page.clock().runFor(UNDO_MS);
    assertThat(told(batch)).isEqualTo(404);

    job.first().locator("button[data-mark='batch.mixed']").click();
    page.clock().runFor(UNDO_MS);
    assertThat(page.locator(".notice").last()).containsText("booked");
    assertThat(told(batch)).isEqualTo(200);
    assertThat(job.first()).containsText("Activate from");
  }

  private static String batchOf(Locator job) {
    String data = job.first().locator("button[data-mark='batch.mixed']").getAttribute("data-data");
    return data.replaceAll(".*\"batch\":\"([^\"]+)\".*", "$1");
  }

  private int told(String batch) {
    return plant.api().get("/api/v1/plants/" + plant.id() + "/ink/batches/" + batch).statusCode();
  }

  @Test
  void aMarkWithoutConnectionIsKeptAndSentLater() {
    plant.published();
    page.clock().install();
    open("ink-room");
    Locator job = page.locator(".job").filter(new Locator.FilterOptions().setHasText("brick"));
    String batch = batchOf(job);

    window.context().setOffline(true);
    job.first().locator("button[data-mark='batch.mixed']").click();
    page.clock().runFor(UNDO_MS);
    assertThat(page.locator("#queue")).containsText("1");
    assertThat(page.locator("#lost")).isVisible();

    window.context().setOffline(false);
    assertThat(page.locator("#queue")).isHidden();
    assertThat(told(batch)).isEqualTo(200);
  }

  @Test
  void theScreenRoomReportsTheAir() {
    plant.published();
    page.clock().install();
    open("screen-room");

    page.locator("select[name=room]").selectOption("C1");
    page.locator("input[name=temperatureC]").fill("31");
    page.locator("input[name=humidityPercent]").fill("72");
    page.locator("form[data-mark='climate.reading'] button").click();
    page.clock().runFor(UNDO_MS);

    assertThat(page.locator(".notice").last()).containsText("booked");
    assertThat(page.locator("#stale")).isVisible();
  }

  @Test
  void theScreenRoomReportsABrokenScreen() {
    plant.published();
    page.clock().install();
    open("screen-room");
    Locator form = page.locator("form[data-mark='screen.broken']");
    String screen = form.locator("option").nth(1).getAttribute("value");
    form.locator("select[name=screen]").selectOption(screen);
    form.locator("button").click();
    page.clock().runFor(UNDO_MS);

    assertThat(page.locator(".notice").last()).containsText("booked");
    assertThat(page.locator("#stale")).isVisible();
    JsonPath told = plant.api().get("/api/v1/plants/" + plant.id() + "/events").jsonPath();
    String broken = "events.find { it.type == 'org.potlife.screen.broken' }.";
    assertThat(told.getString(broken + "data.screen")).isEqualTo(screen);
    assertThat(told.getString(broken + "state")).isEqualTo("applied");
  }

  @Test
  void thePlannerHoldsARunAndTakesItBack() {
    plant.published();
    open("plan");
    assertThat(page.locator("#drawing[data-drawn=yes]")).isVisible();
    page.locator("#find").fill("HC-2041");
    page.locator("#find").press("Enter");
    page.locator("#keep-here").click();
    assertThat(page.locator("#effect")).containsText("cost:");
    page.locator("#instruct button.main").click();
    assertThat(page.locator("#instructions summary")).containsText(": 1");
    assertThat(plant.api().get(instructions()).jsonPath().getList("runs")).hasSize(1);

    page.locator(".notice button").last().click();
    assertThat(page.locator("#instructions summary")).containsText(": 0");
    assertThat(plant.api().get(instructions()).jsonPath().getList("runs")).isEmpty();
  }

  private String instructions() {
    return "/api/v1/plants/" + plant.id() + "/instructions";
  }

  @Test
  void aTableIsLookedThroughBeforeItsOrdersAreTakenIn() {
    open("order-table");
    String head =
        "reference,dueAt,style,colour,cottonPercent,dye,quantity,availableFrom,lengthMm,"
            + "widthMm,massG,design,position,process,imageWidthMm,imageHeightMm,colours\n";
    String row =
        "T-1,2026-12-03 14:00,tee,navy,100,reactive,%s,2026-12-01 06:00,720,560,180,a,"
            + "front,water-based,300,300,chalk:20:43-80\n";

    page.locator("textarea").fill(head + row.formatted("many"));
    page.locator("#table-form button").click();
    assertThat(page.locator("#preview")).containsText("must be a number, was many");

    page.locator("textarea").fill(head + row.formatted("120"));
    page.locator("#table-form button").click();
    page.locator("#preview button").click();
    assertThat(page.locator("#preview")).containsText("1 orders are taken in");
    assertThat(plant.api().get(plant.api().order("T-1")).jsonPath().getString("dueAt"))
        .isEqualTo("2026-12-03T14:00:00+01:00");
  }

  @Test
  void aWrongFigureOfTheShopIsShownAtItsField() {
    open("shop");
    Locator dryers = page.locator("#shop-groups > details").nth(2);
    dryers.locator("summary").first().click();
    dryers.locator(".listitem summary").first().click();
    Locator heated = dryers.locator("[data-pointer='/dryers/0/heatedLengthMm']");

    heated.fill("12");
    page.locator(".savebar button.main").click();
    assertThat(heated).hasAttribute("aria-invalid", "true");

    heated.fill("2900");
    page.locator(".savebar button.main").click();
    assertThat(page.locator("#shop-state")).hasText("Saved.");
    assertThat(plant.api().get(plant.api().shop()).jsonPath().getInt("dryers[0].heatedLengthMm"))
        .isEqualTo(2900);
  }

  @Test
  void theDeviceShowsInchesAndAfternoonsWhenItIsAsked() {
    plant.published();
    open("presses/P1");
    page.locator("select[name=units]").selectOption("us");
    page.locator("select[name=clock]").selectOption("12");
    page.locator(".manner button").click();

    open("presses/P1");
    assertThat(page.locator("main")).containsText("ft/min");
    assertThat(page.locator("main")).containsText("AM");
  }

  @Test
  void aScreenCanBePrinted() {
    plant.published();
    open("ink-room");

    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

    assertThat(page.locator(".jobs-list .job .name").first()).isVisible();
    assertThat(page.locator(".jobs-list .touches").first()).isHidden();
    assertThat(page.locator("nav.jobs")).isHidden();
    assertThat(page.locator(".cautions").first()).isVisible();
    assertThat(page.pdf().length).isPositive();
  }
}
