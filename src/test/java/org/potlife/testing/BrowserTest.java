package org.potlife.testing;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;

/**
 * What tests that look at the service through a browser have in common: one browser, one window.
 */
@Timeout(value = 20, unit = TimeUnit.MINUTES)
public abstract class BrowserTest {

  private static ShopBrowser browser;

  protected ShopWindow window;
  protected Page page;

  @BeforeAll
  static void openTheBrowser() {
    setDefaultAssertionTimeout(ShopWindow.PATIENCE_MS);
    browser = ShopBrowser.open();
  }

  @AfterAll
  static void closeTheBrowser() {
    browser.close();
  }

  @AfterEach
  void closeTheWindow() {
    if (window != null) {
      window.close();
      window = null;
    }
  }

  /** Opens a new window in the place of the one before. */
  protected void look(ColorScheme scheme) {
    closeTheWindow();
    window = new ShopWindow(browser, scheme);
    page = window.page();
  }
}
