package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.config.ConfigProvider;
import org.potlife.account.internal.Staff;
import org.potlife.testing.ShopBrowser;

/** Somebody at a device of their own, with the browser open at this service. */
final class Visit implements AutoCloseable {

  /** What a mark waits before it is sent, and a little more, ms. */
  static final long UNDO_MS = 5500;

  private static final int PATIENCE_MS = 120_000;
  private static final int MOST_TABS = 90;

  private final BrowserContext window;
  private final List<String> complaints = new ArrayList<>();
  final Page page;

  Visit(ShopBrowser browser) {
    window =
        browser.window(
            new Browser.NewContextOptions().setBaseURL(base()).setViewportSize(1280, 800));
    page = window.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    page.onPageError(complaints::add);
  }

  private static String base() {
    return "http://localhost:"
        + ConfigProvider.getConfig().getValue("quarkus.http.test-port", String.class);
  }

  /** Errors of the page's scripts. */
  List<String> complaints() {
    return complaints;
  }

  /** Comes in with a session that was begun elsewhere. */
  Visit as(String session) {
    window.addCookies(List.of(new Cookie(Staff.COOKIE, session).setUrl(base())));
    return this;
  }

  String session() {
    return window.cookies().stream()
        .filter(cookie -> cookie.name.equals(Staff.COOKIE))
        .map(cookie -> cookie.value)
        .findFirst()
        .orElseThrow();
  }

  void open(String path) {
    page.navigate(path);
    assertThat(page.locator("h1").first()).isVisible();
  }

  Locator at(String selector) {
    return page.locator(selector);
  }

  /** The screen's scripts run and the service has answered them. */
  void isLive() {
    assertThat(at("#pulse[data-state=live]")).isVisible();
  }

  void fill(String selector, String text) {
    at(selector).fill(text);
  }

  void touch(String selector) {
    at(selector).first().click();
  }

  /** Touches a mark; it can be taken back. */
  void touchMark(String selector) {
    touch(selector);
    assertThat(at(".notice").last().locator("button")).isVisible();
  }

  /** The time goes by in which a mark can be taken back; it is booked. */
  void passes() {
    page.clock().runFor(UNDO_MS);
    assertThat(at(".notice").last()).containsText("booked");
  }

  /** Goes on with the Tab key until this is reached. */
  void walkTo(String selector) {
    for (int step = 0; step < MOST_TABS; step++) {
      if (Boolean.TRUE.equals(
          page.evaluate("s => document.activeElement?.matches(s) ?? false", selector))) {
        return;
      }
      press("Tab");
    }
    throw new AssertionError("the keyboard does not reach " + selector);
  }

  void press(String key) {
    page.keyboard().press(key);
  }

  void type(String text) {
    page.keyboard().type(text);
  }

  @Override
  public void close() {
    window.close();
  }
}
