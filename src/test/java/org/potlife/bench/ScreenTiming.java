package org.potlife.bench;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.potlife.testing.ShopBrowser;

/**
 * How long the plan's screen takes to appear, and how fluid it stays while it is panned. Takes the
 * address of a running service with the demo plant; the first figures are of its own plan, the
 * second of a drawing with 500 runs that is laid over it. A second argument says by which factor
 * the processor is slowed down, as on a small tablet.
 */
public final class ScreenTiming {

  private static final int RUNS = 500;
  private static final int PRESSES = 12;
  private static final int MINUTES_PER_RUN = 70;

  /** Pans in small steps, one a frame, and gives the times between frames. */
  private static final String PAN =
      """
      () => new Promise((done) => {
        const board = window.potlifeBoard;
        board.showSpan(board.plan.from, board.plan.from + 10 * 3600000);
        const deltas = [];
        const work = [];
        let last = null;
        const step = (at) => {
          if (last !== null) deltas.push(at - last);
          last = at;
          if (deltas.length >= 240) return done({ deltas, work });
          board.panBy(deltas.length % 120 < 60 ? -0.01 : 0.01);
          cancelAnimationFrame(board.frame);
          board.frame = null;
          const before = performance.now();
          board.paint();
          work.push(performance.now() - before);
          requestAnimationFrame(step);
        };
        requestAnimationFrame(step);
      })
      """;

  private final ShopBrowser browser;
  private final String address;
  private final double slower;

  private ScreenTiming(ShopBrowser browser, String address, double slower) {
    this.browser = browser;
    this.address = address;
    this.slower = slower;
  }

  public static void main(String... words) {
    String[] args = String.join(" ", words).trim().split("\\s+");
    String address = args[0].isEmpty() ? "http://localhost:8080" : args[0];
    double slower = args.length > 1 ? Double.parseDouble(args[1]) : 1;
    try (ShopBrowser browser = ShopBrowser.open()) {
      ScreenTiming timing = new ScreenTiming(browser, address, slower);
      timing.firstPaint();
      timing.panning();
    }
  }

  private void firstPaint() {
    List<Double> painted = new ArrayList<>();
    List<Double> drawn = new ArrayList<>();
    for (int round = 0; round < 7; round++) {
      BrowserContext window = window();
      Page page = window.newPage();
      open(page);
      painted.add(
          number(
              page.evaluate(
                  "performance.getEntriesByName('first-contentful-paint')[0].startTime")));
      drawn.add(number(page.evaluate("performance.getEntriesByName('plan-drawn')[0].startTime")));
      window.close();
    }
    System.out.printf(
        "first paint, median of 7, new window each: %.0f ms, plan drawn: %.0f ms%n",
        at(painted, 0.5), at(drawn, 0.5));
  }

  private void panning() {
    BrowserContext window = window();
    Page page = window.newPage();
    page.route(
        "**/drawing",
        route ->
            route.fulfill(
                new Route.FulfillOptions().setContentType("application/json").setBody(drawing())));
    open(page);
    Map<?, ?> measured = (Map<?, ?>) page.evaluate(PAN);
    List<Double> deltas = numbers((List<?>) measured.get("deltas"));
    List<Double> work = numbers((List<?>) measured.get("work"));
    System.out.printf(
        "panning %d runs, %d frames: between frames median %.1f ms, 95 %% %.1f ms, longest %.1f ms;"
            + " drawing one frame median %.1f ms, 95 %% %.1f ms%n",
        RUNS,
        deltas.size(),
        at(deltas, 0.5),
        at(deltas, 0.95),
        at(deltas, 1),
        at(work, 0.5),
        at(work, 0.95));
    window.close();
  }

  private BrowserContext window() {
    return browser.window(new Browser.NewContextOptions().setViewportSize(2560, 1440));
  }

  private void open(Page page) {
    JsonObject rate = new JsonObject();
    rate.addProperty("rate", slower);
    page.context().newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
    page.navigate(address + "/plants/demo/plan");
    page.waitForSelector("#drawing[data-drawn=yes]");
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  private static List<Double> numbers(List<?> values) {
    return values.stream().map(ScreenTiming::number).toList();
  }

  private static double at(List<Double> values, double share) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.get((int) Math.round((sorted.size() - 1) * share));
  }

  private static String drawing() {
    OffsetDateTime start = OffsetDateTime.parse("2026-12-01T06:00:00+01:00");
    StringBuilder runs = new StringBuilder();
    StringBuilder batches = new StringBuilder();
    for (int i = 0; i < RUNS; i++) {
      OffsetDateTime from = start.plusMinutes((long) (i / PRESSES) * MINUTES_PER_RUN);
      runs.append(i == 0 ? "" : ",").append(run(i, from));
      if (i % 4 == 0) {
        batches.append(i == 0 ? "" : ",").append(batch(i, from));
      }
    }
    StringBuilder presses = new StringBuilder();
    StringBuilder belt = new StringBuilder();
    for (int p = 0; p < PRESSES; p++) {
      presses
          .append(p == 0 ? "" : ",")
          .append("{\"press\":\"P%d\",\"inService\":true,\"staffed\":[]}".formatted(p + 1));
    }
    for (int i = 0; i < RUNS; i++) {
      OffsetDateTime from = start.plusMinutes(i * 6L);
      belt.append(i == 0 ? "" : ",")
          .append(
              """
              {"from":"%s","to":"%s","speedMPerMin":2,"areaPercent":%d,"heatPercent":%d}"""
                  .formatted(from, from.plusMinutes(6), 40 + i % 60, 20 + i % 40));
    }
    OffsetDateTime end = start.plus(Duration.ofMinutes(MINUTES_PER_RUN * (RUNS / PRESSES + 2L)));
    return """
        {"plannedAt":"%s","from":"%s","to":"%s","days":["2026-12-01","2026-12-02"],
         "swatches":{"brick":"#a3412f","teal":"#1f7a7a","bone":"#efe6d2","plum":"#5b2a4f"},
         "groups":[{"dryer":"D1","presses":[%s],"belt":[%s]}],"runs":[%s],"batches":[%s],"loads":[]}
        """
        .formatted(start, start, end, presses, belt, runs, batches);
  }

  private static String run(int i, OffsetDateTime from) {
    return """
        {"id":"r%1$d","name":"O-%1$d crest, front","order":"O-%2$d","customer":"Choir",
         "garments":"tee, navy","press":"P%3$d","lot":1,"lots":1,"quantity":200,
         "setUpStart":"%4$s","printStart":"%5$s","printEnd":"%6$s","offBelt":"%7$s",
         "rates":[{"from":"%5$s","to":"%6$s"}],"ratePerHour":300,"limitedBy":"press",
         "inks":["brick","teal","bone","plum"],"batches":["b%8$d"],"screens":["s%1$d"],
         "dueAt":"%7$s","slackMinutes":0,"lateMinutes":%9$d,"frozen":false,"waits":[]}"""
        .formatted(
            i,
            i / 2,
            i % PRESSES + 1,
            from,
            from.plusMinutes(20),
            from.plusMinutes(60),
            from.plusMinutes(63),
            i / 4 * 4,
            i % 9 == 0 ? 30 : 0);
  }

  private static String batch(int i, OffsetDateTime from) {
    return """
        {"id":"b%d","ink":"%s","totalG":2000,"activated":true,"stock":false,"from":"%s",
         "readyAt":"%s","useBy":"%s","lastUse":"%s","runs":["r%d"]}"""
        .formatted(
            i,
            List.of("brick", "teal", "bone", "plum").get(i / 4 % 4),
            from.minusMinutes(20),
            from,
            from.plusHours(8),
            from.plusHours(4),
            i);
  }
}
