package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.potlife.order.Order;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.SettableClock;

/** How a day went, as the office sees it in the evening. */
@QuarkusTest
class DaysEndTest extends EveningBefore {

  /** Width of a sheet of A4 between margins of 12 mm, at 96 pixels to the inch. */
  private static final int A4_PX = 703;

  private JsonPath plan;
  private int told;

  private void tell(String type, OffsetDateTime time, String data) {
    String event =
        ("{\"specversion\":\"1.0\",\"id\":\"e%d\",\"source\":\"/yard\",\"type\":\"org.potlife.%s\","
                + "\"time\":\"%s\",\"data\":%s}")
            .formatted(told++, type, time, data.replace('\'', '"'));
    assertThat(
            plant
                .api()
                .post("/api/v1/plants/" + plant.id() + "/events", event)
                .then()
                .statusCode(200)
                .extract()
                .<String>path("events[0].outcome"))
        .as(type)
        .isEqualTo("applied");
  }

  private OffsetDateTime planned(Map<String, Object> run, String field) {
    return OffsetDateTime.parse((String) run.get(field));
  }

  /**
   * One run is done, 40 minutes late and with two spoiled pieces; a second one is being printed.
   */
  private List<Map<String, Object>> aDayUnderWay() {
    plan = plant.get(plant.published());
    List<Map<String, Object>> runs = plan.getList("runs");
    Map<String, Object> first = runs.get(0);
    Map<String, Object> second =
        runs.stream()
            .filter(run -> run.get("press").equals(first.get("press")) && run != first)
            .findFirst()
            .orElse(runs.get(1));
    OffsetDateTime end = planned(first, "printEnd").plusMinutes(40);
    OffsetDateTime next = end.plusMinutes(5);
    SettableClock.set(next.plusMinutes(75));
    tell(
        "run.started",
        planned(first, "setUpStart").plusMinutes(10),
        "{'run':'%s'}".formatted(id(first)));
    tell(
        "run.first-piece",
        planned(first, "printStart").plusMinutes(15),
        "{'run':'%s'}".formatted(id(first)));
    int pieces = (int) first.get("quantity");
    tell(
        "run.finished", end, "{'run':'%s','good':%d,'spoiled':2}".formatted(id(first), pieces - 2));
    tell("run.started", next, "{'run':'%s'}".formatted(id(second)));
    tell("run.first-piece", next.plusMinutes(30), "{'run':'%s'}".formatted(id(second)));
    tell(
        "run.counted",
        next.plusMinutes(45),
        "{'run':'%s','good':25,'spoiled':1}".formatted(id(second)));
    return runs;
  }

  private static String id(Map<String, Object> run) {
    return (String) run.get("id");
  }

  /** Half a batch is thrown away. */
  private void inkIsLost() {
    Map<String, Object> batch = plan.<Map<String, Object>>getList("batches").get(0);
    OffsetDateTime from = planned(batch, "activateFrom");
    tell("batch.mixed", from, "{'batch':'%s','massG':1000}".formatted(id(batch)));
    if ((int) batch.getOrDefault("agentG", 0) > 0) {
      tell(
          "batch.activated",
          from.plusMinutes(5),
          "{'batch':'%s','agentG':60}".formatted(id(batch)));
    }
    tell(
        "batch.discarded",
        from.plusMinutes(45),
        "{'batch':'%s','massG':420,'reason':'skinned over'}".formatted(id(batch)));
  }

  @Test
  void planAndActualStandOverEachOtherWithTheSameTimesInTheTable() {
    List<Map<String, Object>> runs = aDayUnderWay();
    open("days-end?day=" + DAY);

    assertThat(page.locator("#as-of")).containsText("still under way");
    assertThat(page.locator("#day-drawing[data-drawn=yes]")).isVisible();
    Locator rows = page.locator("#day-runs tbody tr");
    int ofTheDay = rows.count();
    assertThat(ofTheDay).isBetween(2, runs.size());
    assertThat(page.locator("#day-drawing .plot rect.planned")).hasCount(ofTheDay);
    assertThat(page.locator("#day-drawing .plot rect.solid")).hasCount(2);
    assertThat(page.locator("#day-drawing .plot rect.striped")).hasCount(2);
    assertThat(page.locator("#day-drawing .plot line.onwards")).hasCount(1);
    Locator first = page.locator("#day-runs tr[data-state=ended]");
    assertThat(first).hasCount(1);
    assertThat(first).containsText("+10 min");
    assertThat(first).containsText("+40 min");
    assertThat(page.locator("#day-runs tr[data-state=running]")).containsText("25");
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void theFiguresAreThoseOfTheInterface() {
    aDayUnderWay();
    inkIsLost();
    JsonPath day =
        plant.api().get("/api/v1/plants/" + plant.id() + "/days/" + DAY + "/close-out").jsonPath();
    open("days-end?day=" + DAY);

    Locator quality =
        page.locator("section[aria-labelledby=h-figures] tr")
            .filter(new Locator.FilterOptions().setHasText("good pieces, divided by printed"));
    assertThat(quality)
        .containsText(
            String.format(Locale.ROOT, "%.1f %%", day.getDouble("total.qualityRatio") * 100));
    assertThat(page.locator("section[aria-labelledby=h-promises]"))
        .containsText(
            "%d of %d orders"
                .formatted(day.getInt("promises.onTimeInFull"), day.getInt("promises.due")));
    assertThat(page.locator("#day-missed tbody tr"))
        .hasCount(day.getList("promises.missed").size());
    assertThat(page.locator("#day-loss tfoot")).containsText(day.getString("inkLoss.lostG"));
    assertThat(page.locator("#loss-drawing .plot rect.solid")).hasCount(1);
    List<Map<String, Object>> over = day.getList("carryOver");
    assertThat(over).isNotEmpty();
    Locator carried = page.locator("#day-carried tbody tr");
    assertThat(carried).hasCount(over.size());
    assertThat(carried.first()).containsText(over.get(0).get("order").toString());
    assertThat(carried.first()).containsText(over.get(0).get("pieces").toString());
    assertThat(carried.first().locator("time").first()).isVisible();
  }

  @ParameterizedTest
  @EnumSource(names = {"LIGHT", "DARK"})
  void itCanBeReadByEverybody(ColorScheme scheme) {
    aDayUnderWay();
    inkIsLost();
    look(scheme);
    open("days-end?day=" + DAY);
    assertThat(page.locator("#loss-drawing[data-drawn=yes]")).isVisible();
    window.read("today");
    open("days-end?day=" + DAY.plusDays(1));
    window.read("tomorrow");
    open("days-end?day=" + DAY.plusDays(60));
    window.read("an empty day");
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void aDayOfWhichNothingIsKnownSaysSo() {
    open("days-end?day=" + DAY.plusDays(60));

    assertThat(page.locator(".empty")).containsText("nothing is told of it");
    assertThat(page.locator("main table")).hasCount(0);
    page.locator(".roomhead a").first().click();
    assertThat(page.locator("main h1")).containsText(" 29 January 2027");
  }

  @Test
  void aPlannedDayIsShownBeforeItBegins() {
    plan = plant.get(plant.published());
    open("days-end?day=" + DAY);

    assertThat(page.locator("#as-of")).containsText("has not begun");
    assertThat(page.locator("#day-drawing .plot rect.planned").first()).isVisible();
    assertThat(page.locator("#day-drawing .plot rect.solid")).hasCount(0);
    assertThat(page.locator("#day-carried")).hasCount(0);
  }

  @Test
  void aDayThatIsNoneIsRefusedInWords() {
    open("days-end?day=someday");

    assertThat(page.locator("main")).containsText("day must be a date like");
    assertThat(page.locator("nav.jobs")).isVisible();
  }

  @Test
  void ofVeryManyOrdersTheFirstAreShownAndAllOnRequest() {
    Order due = PlanFixture.orders().get(2);
    for (int i = 0; i < 30; i++) {
      plant.put(
          new Order(
              "MANY-" + i,
              due.customer(),
              due.priority(),
              at("12:00"),
              null,
              due.garments(),
              due.prints()));
    }
    SettableClock.set(at("18:00"));
    open("days-end?day=" + DAY);

    assertThat(page.locator("#day-missed tbody tr")).hasCount(25);
    assertThat(page.locator("section[aria-labelledby=h-promises]"))
        .containsText("25 of 31 orders are shown");
    page.locator("a[href*='all=true']").click();
    assertThat(page.locator("#day-missed tbody tr")).hasCount(31);
  }

  @Test
  void itCanBePrinted() {
    aDayUnderWay();
    inkIsLost();
    open("days-end?day=" + DAY);
    assertThat(page.locator("#loss-drawing[data-drawn=yes]")).isVisible();

    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

    assertThat(page.locator("#day-drawing svg").last()).isVisible();
    assertThat(page.locator("#day-carried")).isVisible();
    page.setViewportSize(A4_PX, 1000);
    assertThat(
            (List<?>)
                page.evaluate(
                    "[...document.querySelectorAll('.scroll')].filter(one => one.scrollWidth >"
                        + " one.clientWidth).map(one => one.innerText)"))
        .as("tables that are cut at the paper's edge")
        .isEmpty();
    assertThat(page.locator("nav.jobs")).isHidden();
    assertThat(page.locator(".roomhead button")).isHidden();
    assertThat(page.pdf().length).isPositive();
  }
}
