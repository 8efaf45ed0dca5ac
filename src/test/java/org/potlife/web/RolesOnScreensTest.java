package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.potlife.account.internal.SignInRequired;
import org.potlife.account.internal.Staff;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.testing.ShopBrowser;

/** Each screen offers what the role of who looks may do, and nothing else. */
@QuarkusTest
@TestProfile(SignInRequired.class)
@Timeout(value = 20, unit = TimeUnit.MINUTES)
class RolesOnScreensTest {

  private static final Set<String> PLANS = Set.of("#solve", "#publish", "#instruct");
  private static final Set<String> INK =
      Set.of("batch.mixed", "batch.activated", "batch.emptied", "batch.discarded");
  private static final Set<String> MOVING = Set.of("screen.moved", "screen.broken");
  private static final Set<String> SCREENS =
      Set.of("screen.moved", "screen.broken", "emulsion.reading", "climate.reading");
  private static final Set<String> PRESS =
      Set.of("run.started", "run.counted", "run.finished", "run.spoiled", "press.down");

  private static final Map<String, Map<String, Set<String>>> OFFERED =
      Map.of(
          "planner", Map.of("plan", PLANS, "ink-room", INK, "screen-room", SCREENS, "press", PRESS),
          "ink-room", Map.of("ink-room", INK),
          "screen-room", Map.of("screen-room", SCREENS),
          "press", Map.of("screen-room", MOVING, "press", PRESS),
          "viewer", Map.of(),
          "administrator", Map.of());

  private static final Map<String, String> PATHS =
      Map.of(
          "plan", "plan",
          "ink-room", "ink-room",
          "screen-room", "screen-room?whole=true",
          "presses", "presses",
          "press", "presses/P1");

  /** Forms and buttons in the page's content that change something, by what they are known by. */
  private static final String CHANGING =
      """
      () => [...document.querySelectorAll('main [data-mark], main #solve, main #publish, main #stop,'
          + ' main #instruct, main #instructions button')]
        .map((one) => one.dataset.mark ?? '#' + one.id)
      """;

  /** Everything else that can be touched: it reads, and everybody has it. */
  private static final String READING =
      """
      () => [...document.querySelectorAll('main button, main form')]
        .filter((one) => !one.closest('[data-mark], #solve, #publish, #stop, #instruct, #instructions'))
        .map((one) => one.id || one.getAttribute('action') || one.textContent.trim())
      """;

  private static ShopBrowser browser;

  @Inject Staff staff;
  private PlannedPlant plant;
  private String planner;
  private String draft;

  @BeforeAll
  static void openTheBrowser() {
    setDefaultAssertionTimeout(60_000);
    browser = ShopBrowser.open();
  }

  @AfterAll
  static void closeTheBrowser() {
    browser.close();
  }

  @BeforeEach
  void aDraftIsThereAndTheInkRoomHasBegun() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    planner = staff.session("planner");
    Staff.at(planner);
    plant = PlannedPlant.ready();
    plant.published();
    for (boolean agent : new boolean[] {true, false}) {
      tell("batch.mixed", "{\"batch\":\"" + batch(agent) + "\"}").then().statusCode(200);
    }
    draft = plant.draft();
  }

  @AfterEach
  void releaseTheClock() {
    staff.leave();
    SettableClock.release();
  }

  private String batch(boolean agent) {
    String found = "batches.findAll { it.agentG " + (agent ? "> 0" : "== 0") + " }.id";
    return plant.get("current").getList(found, String.class).get(0);
  }

  private Response tell(String type, String data) {
    return plant
        .api()
        .post(
            "/api/v1/plants/" + plant.id() + "/events",
            """
            {"specversion":"1.0","id":"%s","source":"/test","type":"org.potlife.%s",
             "time":"2026-11-30T16:42:00+01:00","data":%s}"""
                .formatted(UUID.randomUUID(), type, data));
  }

  private String way(String screen) {
    return "/plants/" + plant.id() + "/" + PATHS.get(screen);
  }

  @SuppressWarnings("unchecked")
  private Set<String> seen(Visit visit, String screen, String which) {
    visit.open(way(screen));
    if (screen.equals("plan")) {
      assertThat(visit.at("#drawing[data-drawn=yes]")).isVisible();
    }
    return new TreeSet<>((List<String>) visit.page.evaluate(which));
  }

  @ParameterizedTest
  @ValueSource(strings = {"planner", "ink-room", "screen-room", "press", "viewer", "administrator"})
  void eachRoleIsOfferedWhatItMayDoAndReadsAll(String role) {
    Map<String, Set<String>> reading = new HashMap<>();
    try (Visit visit = new Visit(browser).as(staff.session("administrator"))) {
      PATHS.keySet().forEach(screen -> reading.put(screen, seen(visit, screen, READING)));
    }
    staff.leave();
    String session = staff.session(role);
    try (Visit visit = new Visit(browser).as(session)) {
      for (String screen : PATHS.keySet()) {
        assertThat(seen(visit, screen, CHANGING))
            .as(role + " on " + screen)
            .isEqualTo(new TreeSet<>(OFFERED.get(role).getOrDefault(screen, Set.of())));
        assertThat(seen(visit, screen, READING))
            .as(role + " reads " + screen)
            .isEqualTo(reading.get(screen));
      }
      assertThat(visit.complaints()).isEmpty();
    }
    Staff.at(session);
    whatIsNotOfferedIsRefused(role);
  }

  private void whatIsNotOfferedIsRefused(String role) {
    boolean plans = OFFERED.get(role).containsKey("plan");
    assertThat(plant.publish(draft).statusCode() == 403).isNotEqualTo(plans);
    Map<String, String> said = said();
    for (Set<String> marks : OFFERED.get("planner").values()) {
      for (String mark : marks) {
        if (!mark.startsWith("#")) {
          boolean offered =
              OFFERED.get(role).values().stream().anyMatch(some -> some.contains(mark));
          assertThat(tell(mark, said.get(mark)).statusCode() == 403)
              .as(role + " tells " + mark)
              .isNotEqualTo(offered);
        }
      }
    }
  }

  /** What can be told, by type. */
  private Map<String, String> said() {
    String batch = "{\"batch\":\"" + batch(true) + "\"";
    String screen = "{\"screen\":\"" + plant.get("current").getString("screens[0].id") + "\"";
    String run = "{\"run\":\"" + plant.get("current").getString("runs[0].id") + "\"";
    return Map.ofEntries(
        Map.entry("batch.mixed", batch + "}"),
        Map.entry("batch.activated", batch + "}"),
        Map.entry("batch.emptied", batch + "}"),
        Map.entry("batch.discarded", batch + ",\"reason\":\"soiled\"}"),
        Map.entry("screen.moved", screen + ",\"state\":\"dry\"}"),
        Map.entry("screen.broken", screen + "}"),
        Map.entry("emulsion.reading", screen + ",\"dry\":true}"),
        Map.entry(
            "climate.reading", "{\"room\":\"C1\",\"temperatureC\":30,\"humidityPercent\":30}"),
        Map.entry("run.started", run + "}"),
        Map.entry("run.counted", run + ",\"good\":1,\"spoiled\":0}"),
        Map.entry("run.finished", run + ",\"good\":1,\"spoiled\":0}"),
        Map.entry("run.spoiled", run + ",\"pieces\":1}"),
        Map.entry("press.down", "{\"press\":\"P1\"}"));
  }

  @Test
  void whoMayNotPlanWatchesTheSearchAndCannotStopIt() {
    String solving = plant.request(300).then().statusCode(202).extract().path("id");
    Staff.at(staff.session("press"));

    String seen = plant.api().get(way("plan") + "?plan=" + solving).asString();

    assertThat(seen).contains("id=\"search\"").doesNotContain("id=\"stop\"");
    Staff.at(planner);
    plant.api().post(plant.plans() + "/" + solving + "/stop", "").then().statusCode(202);
    plant.await(solving);
  }

  @Test
  void whoMayNotPlanReadsTheInstructionsAndCannotRemoveThem() {
    plant
        .api()
        .put("/api/v1/plants/" + plant.id() + "/instructions", "{\"held\":[\"HC-2041\"]}")
        .then()
        .statusCode(200);
    try (Visit visit = new Visit(browser).as(staff.session("viewer"))) {
      visit.open(way("plan"));
      assertThat(visit.at("#instructions summary")).containsText(": 1");
      visit.touch("#instructions summary");
      assertThat(visit.at("#instructions li")).containsText("HC-2041 is held back");
      assertThat(visit.at("#instructions li button")).hasCount(0);
    }
  }
}
