package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.microsoft.playwright.Locator;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.potlife.account.internal.Staff;
import org.potlife.order.Order;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.RealSearch;
import org.potlife.plan.SettableClock;
import org.potlife.testing.ShopBrowser;

/** What each user comes for, from the sign-in page to the end, with the real search. */
@QuarkusTest
@TestProfile(JourneysTest.Shop.class)
@Timeout(value = 20, unit = TimeUnit.MINUTES)
class JourneysTest {

  private static final String PASSWORD = "wet screens dry slowly";
  private static final Pattern FIRST_PASSWORD = Pattern.compile("([a-z2-9]{4}-){3}[a-z2-9]{4}");
  private static final String LATE = "QR-9";

  private static ShopBrowser browser;

  @Inject Staff staff;
  private PlannedPlant plant;
  private Visit planner;
  private OffsetDateTime now;

  /** Nobody comes in without signing in, and plans are searched for. */
  public static class Shop extends RealSearch {

    @Override
    public Map<String, String> getConfigOverrides() {
      Map<String, String> settings = new HashMap<>(super.getConfigOverrides());
      settings.put("potlife.sign-in", "required");
      return settings;
    }
  }

  @BeforeAll
  static void openTheBrowser() {
    setDefaultAssertionTimeout(120_000);
    browser = ShopBrowser.open();
  }

  @AfterAll
  static void closeTheBrowser() {
    browser.close();
  }

  @BeforeEach
  void thePlannerMakesTheFirstAccountThroughTheLink() {
    itIs(at(DAY.minusDays(1), "16:42"));
    planner = new Visit(browser);
    planner.page.navigate(staff.setUp());
    planner.fill("#name", "mara");
    planner.fill("#fullName", "Mara Miller");
    planner.fill("#password", PASSWORD);
    planner.fill("#again", PASSWORD);
    planner.touch("main button");
    assertThat(planner.at("h1")).hasText("Accounts");
    Staff.at(planner.session());
    plant = PlannedPlant.ready();
    // due before it can be printed
    plant.put(again(LATE, PlanFixture.orders().get(0).dueAt(at("06:30"))));
  }

  private static Order again(String reference, Order order) {
    return new Order(
        reference,
        order.customer(),
        order.priority(),
        order.dueAt(),
        order.printsInListedOrder(),
        order.garments(),
        order.prints());
  }

  @AfterEach
  void everybodyLeaves() {
    planner.close();
    staff.leave();
    SettableClock.release();
  }

  private void itIs(OffsetDateTime time) {
    now = time;
    SettableClock.set(time);
  }

  /** Touches a mark; it is booked a minute later, so that it does not lie ahead of the clock. */
  private void mark(Visit visit, String selector) {
    visit.touchMark(selector);
    itIs(now.plusMinutes(1));
    visit.passes();
  }

  private String way(String screen) {
    return "/plants/" + plant.id() + "/" + screen;
  }

  /** Somebody whom the planner gives an account, and who has chosen a password. */
  private Visit newcomer(String role) {
    planner.open("/accounts");
    planner.fill("#name", role);
    planner.fill("#fullName", "Somebody");
    planner.page.locator("input[name=roles][value=" + role + "]").check();
    planner.touch("main form button");
    String first = planner.at("main .secret").textContent().trim();
    assertThat(first).matches(FIRST_PASSWORD);

    Visit visit = new Visit(browser);
    signIn(visit, role, first, "/");
    assertThat(visit.at("h1")).hasText("Your password");
    visit.fill("#current", first);
    visit.fill("#password", PASSWORD);
    visit.fill("#again", PASSWORD);
    visit.touch("main form button");
    assertThat(visit.at(".door")).containsText("Somebody");
    return visit;
  }

  private static void signIn(Visit visit, String name, String password, String path) {
    visit.page.navigate(path);
    assertThat(visit.at("h1")).hasText("Sign in");
    visit.fill("#name", name);
    visit.fill("#password", password);
    visit.touch("main button");
  }

  /** Signs out in the evening and in again at this time, at the screen of the job. */
  private void comesBack(Visit visit, String role, String time, String screen) {
    visit.touch(".door form button");
    assertThat(visit.at("h1")).hasText("Sign in");
    itIs(at(time));
    visit.page.clock().install();
    signIn(visit, role, PASSWORD, way(screen));
    visit.isLive();
  }

  private void drawn() {
    assertThat(planner.at("#drawing[data-drawn=yes]")).isVisible();
  }

  private List<String> line() {
    return plant
        .get("current")
        .getList("runs.findAll { it.press == 'P1' }.sort { it.setUpStart }.id", String.class);
  }

  @Test
  void thePlannerPlansTheDay() {
    planner.touch(".door form button");
    signIn(planner, "mara", PASSWORD, way("plan"));
    assertThat(planner.at("main h1")).hasText("No plan yet");
    Staff.at(planner.session());

    // makes a plan, and is content before the search is through
    planner.fill("#solve input[name=seconds]", "300");
    planner.touch("#solve button");
    planner.touch("#stop");
    drawn();
    assertThat(planner.at("main h1")).containsText("draft");

    // reads why an order is late, and what would help
    Locator late = planner.at("tr").filter(new Locator.FilterOptions().setHasText(LATE)).first();
    assertThat(late.locator(".late")).isVisible();
    assertThat(late.locator(".why").first()).not().isEmpty();
    assertThat(late.locator(".why").last()).not().isEmpty();

    // puts the last run of a press before its first one, sees what that does, and applies it
    planner.touch("#publish");
    assertThat(planner.at("main h1")).containsText("in force");
    drawn();
    List<String> line = line();
    String first = line.get(0);
    String last = line.get(line.size() - 1);
    planner.page.evaluate("id => potlifeBoard.choose(id)", last);
    planner.at("#instruct select[name=before]").selectOption(first);
    assertThat(planner.at("#instruct select[name=press]")).hasValue("P1");
    planner.touch("#try");
    assertThat(planner.at("#effect")).containsText("runs that start elsewhere");
    planner.touch("#instruct button.main");
    assertThat(planner.at("#instructions summary")).containsText(": 1");

    // takes it back, and decides it again
    planner.at(".notice button").last().click();
    assertThat(planner.at("#instructions summary")).containsText(": 0");
    planner.page.evaluate("id => potlifeBoard.choose(id)", last);
    planner.at("#instruct select[name=before]").selectOption(first);
    planner.touch("#instruct button.main");
    assertThat(planner.at("#instructions summary")).containsText(": 1");

    // the next plan follows, and is put into force
    planner.fill("#solve input[name=seconds]", "1");
    planner.touch("#solve button");
    planner.touch("#publish");
    assertThat(planner.at("main h1")).containsText("in force");
    assertThat(line()).containsSubsequence(last, first);
    assertThat(planner.complaints()).isEmpty();
  }

  @Test
  void thePlannerPlansTheDayWithTheKeyboardAlone() {
    planner.walkTo(".door form button");
    planner.press("Enter");
    assertThat(planner.at("h1")).hasText("Sign in");
    planner.page.navigate(way("plan"));
    planner.walkTo("#name");
    planner.type("mara");
    planner.press("Tab");
    planner.type(PASSWORD);
    planner.press("Enter");
    assertThat(planner.at("main h1")).hasText("No plan yet");
    Staff.at(planner.session());

    search("300");
    assertThat(planner.at("#stop")).isEnabled();
    planner.walkTo("#stop");
    planner.press("Enter");
    drawn();
    planner.walkTo("#publish");
    planner.press("Enter");
    assertThat(planner.at("main h1")).containsText("in force");
    drawn();

    // the last run of the first press is to come before the first one
    planner.walkTo("#runs");
    planner.press("ArrowRight");
    String chosen = planner.at("#about h2").textContent();
    planner.press("ArrowRight");
    assertThat(planner.at("#about h2")).not().hasText(chosen);
    planner.press("Enter");
    assertThat(planner.at("#instruct select[name=press]")).isFocused();
    planner.press("Tab");
    planner.press("ArrowDown");
    assertThat(planner.at("#instruct select[name=before]")).not().hasValue("");
    planner.walkTo("#try");
    planner.press("Enter");
    assertThat(planner.at("#effect")).containsText("cost:");
    planner.walkTo("#instruct button.main");
    planner.press("Enter");
    assertThat(planner.at("#instructions summary")).containsText(": 1");
    planner.walkTo(".notice button");
    planner.press("Enter");
    assertThat(planner.at("#instructions summary")).containsText(": 0");

    planner.page.evaluate("document.activeElement.blur(); window.scrollTo(0, 0)");
    search("1");
    assertThat(planner.at("main h1")).containsText("draft");
    drawn();
    planner.walkTo("#publish");
    planner.press("Enter");
    assertThat(planner.at("main h1")).containsText("in force");
    assertThat(plant.get("current").getInt("version")).isEqualTo(2);
  }

  private void search(String seconds) {
    planner.walkTo("#solve input[name=seconds]");
    planner.press("ControlOrMeta+a");
    planner.type(seconds);
    planner.press("Enter");
  }

  @Test
  void theInkRoomBringsABatchToThePress() {
    plant.published();
    try (Visit room = newcomer("ink-room")) {
      comesBack(room, "ink-room", "06:05", "ink-room");

      // weighs what is first on the list
      assertThat(room.at("details[open] .weigh td.big").first()).isVisible();
      mark(room, "button[data-mark='batch.mixed']");

      // stirs in the agent of a batch, takes that back for it was another one, and then does it
      Locator activate = room.at("button.main[data-mark='batch.activated']").first();
      assertThat(activate).isVisible();
      String batch = activate.getAttribute("data-data");
      activate.click();
      room.touch(".notice button");
      assertThat(room.at(".notice").last()).containsText("taken back");
      room.page.clock().runFor(Visit.UNDO_MS);
      assertThat(room.at("button.main[data-mark='batch.activated']").first())
          .hasAttribute("data-data", batch);
      mark(room, "button.main[data-mark='batch.activated']");
      assertThat(room.at(".waitword").first()).containsText("do not use yet");

      // prints its label
      room.touch("a[href*='pages/labels']");
      String id = batch.replaceAll(".*:\"([^\"]+)\".*", "$1");
      assertThat(
              room.at(".label").filter(new Locator.FilterOptions().setHasText(id)).locator(".qr"))
          .isVisible();
      assertThat(room.page.pdf().length).isPositive();
      assertThat(room.complaints()).isEmpty();
    }
  }

  @Test
  void theScreenRoomReportsItsMorning() {
    plant.published();
    try (Visit room = newcomer("screen-room")) {
      comesBack(room, "screen-room", "06:05", "screen-room");
      String stage = room.at(".job").first().getAttribute("id");
      mark(room, ".job .touches button.main");
      assertThat(room.at(".job[id='" + stage + "'] button[data-mark='screen.moved']")).hasCount(0);

      room.at("select[name=room]").selectOption("C1");
      room.fill("input[name=temperatureC]", "29.5");
      room.fill("input[name=humidityPercent]", "34");
      mark(room, "form[data-mark='climate.reading'] button");

      Locator broken = room.at("form[data-mark='screen.broken'] select");
      String screen = broken.locator("option").nth(1).getAttribute("value");
      broken.selectOption(screen);
      mark(room, "form[data-mark='screen.broken'] button");
      assertThat(room.at("#stale")).isVisible();
      assertThat(room.complaints()).isEmpty();
    }
  }

  @Test
  void theCrewPrintsARun() {
    plant.published();
    try (Visit crew = newcomer("press")) {
      String start = plant.get("current").getString("runs.find { it.press == 'P1' }.setUpStart");
      assertThat(start).startsWith(DAY.toString());
      comesBack(crew, "press", "06:31", "presses");
      crew.touch("a.tile");
      crew.isLive();
      String card = crew.at(".job").first().getAttribute("id");

      mark(crew, "button[data-mark='run.started']");
      mark(crew, "button[data-mark='run.first-piece']");

      crew.touch("#c" + card + " summary");
      crew.fill("#c" + card + " input[name=good]", "40");
      mark(crew, "#c" + card + " button");
      assertThat(crew.at("#" + card)).containsText("40 good, 0 spoiled");

      crew.touch("#f" + card + " summary");
      crew.fill("#f" + card + " input[name=good]", "240");
      crew.fill("#f" + card + " input[name=spoiled]", "2");
      mark(crew, "#f" + card + " button");
      assertThat(crew.at("#" + card)).hasCount(0);
      crew.touch("#done summary");
      assertThat(crew.at("#done")).containsText("240 good, 2 spoiled");
      assertThat(crew.complaints()).isEmpty();
    }
  }

  @Test
  void aViewerReadsAllAndChangesNothing() {
    plant.published();
    try (Visit viewer = newcomer("viewer")) {
      comesBack(viewer, "viewer", "06:05", "plan");
      List<String> screens =
          List.of("plan", "ink-room", "screen-room", "presses", "orders", "shop", "days-end");
      for (String screen : screens) {
        viewer.touch("nav.jobs a[href$='/" + screen + "']");
        assertThat(viewer.page).hasURL(Pattern.compile("/" + screen + "$"));
        assertThat(viewer.at("main h1").first()).isVisible();
        assertThat(viewer.at("main [data-mark], main #solve, main #publish")).hasCount(0);
      }
      Object refused =
          viewer.page.evaluate(
              """
              async (plans) => (await fetch(plans, {method: 'POST', body: '{}',
                headers: {'Content-Type': 'application/json'}})).status
              """,
              plant.plans());
      assertThat(refused).isEqualTo(403);
      assertThat(viewer.complaints()).isEmpty();
    }
  }
}
