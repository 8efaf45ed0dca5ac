package org.potlife.testing;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.ConfigProvider;

/** A window onto the service under test, which notes what browser and axe complain of. */
public final class ShopWindow implements AutoCloseable {

  /** A machine that builds other things too is slow, ms. */
  public static final int PATIENCE_MS = 60_000;

  private final BrowserContext context;
  private final Page page;
  private final List<String> complaints = new ArrayList<>();

  public ShopWindow(ShopBrowser browser, ColorScheme scheme) {
    String port = ConfigProvider.getConfig().getValue("quarkus.http.test-port", String.class);
    context =
        browser.window(
            new Browser.NewContextOptions()
                .setBaseURL("http://localhost:" + port)
                .setViewportSize(1280, 800)
                .setColorScheme(scheme));
    page = context.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            complaints.add(message.text() + " " + message.location());
          }
        });
    page.onPageError(complaints::add);
  }

  public Page page() {
    return page;
  }

  public BrowserContext context() {
    return context;
  }

  /** Notes what of the page that is open not everybody can read or reach. */
  public void read(String where) {
    new AxeBuilder(page)
        .analyze()
        .getViolations()
        .forEach(rule -> complaints.add(where + " " + rule.getId() + ": " + rule.getNodes()));
  }

  public List<String> complaints() {
    return complaints;
  }

  /** Goes on with the Tab key until what this selects has the focus. */
  public void walkTo(String selector) {
    for (int step = 0; step < 120; step++) {
      if (Boolean.TRUE.equals(
          page.evaluate("s => document.activeElement?.matches(s) ?? false", selector))) {
        return;
      }
      page.keyboard().press("Tab");
    }
    throw new AssertionError("the keyboard does not reach " + selector + " of " + page.url());
  }

  @Override
  public void close() {
    context.close();
  }
}
