package org.potlife.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.potlife.testing.ShopBrowser;

/**
 * Pictures of every page of a service with the demo plant and no account yet. Takes its address,
 * the link of the first account that stands in its log, and the folder for the pictures.
 */
public final class Pictures {

  private static final String PASSWORD = "wet screens dry slowly";
  private static final String PLANT = "/plants/demo/";

  /** A tablet in a room, a desk's large screen, a phone in a pocket. */
  private enum Size {
    TABLET(1280, 800),
    DESK(2560, 1440),
    PHONE(390, 844);

    private final int width;
    private final int height;

    Size(int width, int height) {
      this.width = width;
      this.height = height;
    }
  }

  private static final Set<String> ALSO_DARK = Set.of("plan", "ink-room", "press", "orders");

  private final ShopBrowser browser;
  private final String address;
  private final Path folder;
  private String order;
  private String press;
  private String plan;
  private String day;

  private Pictures(ShopBrowser browser, String address, Path folder) {
    this.browser = browser;
    this.address = address;
    this.folder = folder;
  }

  public static void main(String... words) throws IOException {
    String[] args = String.join(" ", words).trim().split("\\s+");
    Path folder = Files.createDirectories(Path.of(args[2]));
    try (ShopBrowser browser = ShopBrowser.open()) {
      Pictures pictures = new Pictures(browser, args[0], folder);
      String state = pictures.people(args[1]);
      for (Size size : Size.values()) {
        pictures.strangers(size);
        pictures.screens(state, size, ColorScheme.LIGHT);
        pictures.screens(state, size, ColorScheme.DARK);
      }
      pictures.paper(state);
    }
  }

  /** Makes the first account and some more; gives what keeps the planner signed in. */
  private String people(String link) {
    try (BrowserContext window = window(null, Size.TABLET, ColorScheme.LIGHT)) {
      Page page = window.newPage();
      page.navigate(address + Pattern.compile("https?://[^/]+").matcher(link).replaceFirst(""));
      fill(page, Map.of("name", "mara", "fullName", "Mara Miller"));
      fill(page, Map.of("password", PASSWORD, "again", PASSWORD));
      page.locator("main button").click();
      for (String role : List.of("ink-room", "screen-room", "press", "viewer")) {
        page.navigate(address + "/accounts");
        fill(page, Map.of("name", role + "-1", "fullName", "Somebody of the " + role));
        page.locator("input[name=roles][value=" + role + "]").check();
        page.locator("main form button").click();
      }
      page.navigate(address + PLANT + "plan");
      plan = page.locator("#plan-id").getAttribute("data-plan");
      day = page.locator("input[name=day]").first().inputValue();
      page.navigate(address + PLANT + "presses");
      press = page.locator("a.tile").first().getAttribute("href");
      page.navigate(address + PLANT + "orders");
      order = found(page.content(), "/plants/demo/orders/[A-Za-z0-9._~-]+");
      return window.storageState();
    }
  }

  private static void fill(Page page, Map<String, String> fields) {
    fields.forEach((id, text) -> page.locator("#" + id).fill(text));
  }

  private static String found(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException("nothing like " + pattern);
    }
    return matcher.group();
  }

  private BrowserContext window(String state, Size size, ColorScheme scheme) {
    Browser.NewContextOptions options =
        new Browser.NewContextOptions()
            .setViewportSize(size.width, size.height)
            .setColorScheme(scheme);
    return browser.window(state == null ? options : options.setStorageState(state));
  }

  private void strangers(Size size) throws IOException {
    try (BrowserContext window = window(null, size, ColorScheme.LIGHT)) {
      Page page = window.newPage();
      page.navigate(address + "/sign-in");
      take(page, "sign-in", size, ColorScheme.LIGHT);
    }
  }

  private void screens(String state, Size size, ColorScheme scheme) throws IOException {
    Map<String, String> ways = new TreeMap<>();
    for (String screen :
        List.of("ink-room", "screen-room", "presses", "orders", "order-table", "shop")) {
      ways.put(screen, PLANT + screen);
    }
    ways.put("days-end", PLANT + "days-end?day=" + day);
    ways.put("start", "/");
    ways.put("plan", PLANT + "plan");
    ways.put("press", press);
    ways.put("order", order);
    for (String office : List.of("accounts", "tokens", "trail")) {
      ways.put(office, "/" + office);
    }
    try (BrowserContext window = window(state, size, scheme)) {
      Page page = window.newPage();
      for (Map.Entry<String, String> way : ways.entrySet()) {
        if (scheme == ColorScheme.LIGHT || ALSO_DARK.contains(way.getKey())) {
          page.navigate(
              way.getValue().startsWith("http") ? way.getValue() : address + way.getValue());
          settle(page);
          take(page, way.getKey(), size, scheme);
        }
      }
      if (scheme == ColorScheme.LIGHT) {
        chosen(page, size);
      }
    }
  }

  /** A late run is chosen, and what an instruction would do is tried. */
  private void chosen(Page page, Size size) throws IOException {
    page.navigate(address + PLANT + "plan");
    settle(page);
    page.evaluate(
        """
        () => {
          const board = window.potlifeBoard;
          const run = board.byTime.find((one) => one.lateMinutes > 0) ?? board.byTime[0];
          board.go(run);
        }
        """);
    page.locator("#keep-here").click();
    page.locator("#effect li").nth(2).waitFor();
    page.locator("#drawing").scrollIntoViewIfNeeded();
    take(page, "plan-instruction", size, ColorScheme.LIGHT);
  }

  private static void settle(Page page) {
    Locator drawing = page.locator("#drawing");
    if (drawing.count() > 0) {
      page.waitForSelector("#drawing[data-drawn=yes]");
    }
    if (page.locator("#shop-groups").count() > 0) {
      page.waitForSelector("#shop-form:visible");
    }
    if (page.locator("#pulse").count() > 0) {
      page.waitForSelector("#pulse[data-state=live]");
    }
    page.waitForTimeout(400);
  }

  /** What is printed, as it lies on A4 or on the label. */
  private void paper(String state) throws IOException {
    String pages = address + PLANT + "plans/" + plan + "/pages/";
    try (BrowserContext window =
        browser.window(
            new Browser.NewContextOptions().setViewportSize(794, 1123).setStorageState(state))) {
      Page page = window.newPage();
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      for (String sheet :
          List.of("plan", "activations", "screens", "presses", "belts", "late", "labels")) {
        page.navigate(pages + sheet);
        page.waitForTimeout(200);
        write("print-" + sheet, page.screenshot());
      }
    }
  }

  private void take(Page page, String name, Size size, ColorScheme scheme) throws IOException {
    String dark = scheme == ColorScheme.DARK ? "-dark" : "";
    write(name + "-" + size.name().toLowerCase(java.util.Locale.ROOT) + dark, page.screenshot());
  }

  private void write(String name, byte[] png) throws IOException {
    Files.write(folder.resolve(name + ".png"), FewColours.of(png));
  }
}
