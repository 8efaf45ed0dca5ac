package org.potlife.testing;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.impl.driver.Driver;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A browser for tests that see the screens. It prepares itself: an installed Chromium or Chrome,
 * else the library's own download, else the distribution's package; else it fails and says what to
 * install. It never lets a test pass unseen.
 */
public final class ShopBrowser implements AutoCloseable {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
  private static final List<String> PLACES =
      List.of(
          "/usr/bin/chromium",
          "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
          "/Applications/Chromium.app/Contents/MacOS/Chromium");
  private static final String REMEDY =
      "No browser for the tests of the screens: install Chromium or Chrome (Debian: apt-get install"
          + " chromium) or name its executable in POTLIFE_BROWSER.";
  private static final long PATIENCE_MINUTES = 15;

  private final Playwright playwright;
  private final Browser browser;

  private ShopBrowser(Playwright playwright, Browser browser) {
    this.playwright = playwright;
    this.browser = browser;
  }

  /** Starts the browser. */
  public static ShopBrowser open() {
    Optional<Path> installed = installed();
    if (installed.isEmpty() && !downloaded()) {
      installed = packaged();
      if (installed.isEmpty()) {
        throw new IllegalStateException(REMEDY);
      }
    }
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    BrowserType.LaunchOptions options =
        new BrowserType.LaunchOptions()
            .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-background-networking"));
    installed.ifPresent(options::setExecutablePath);
    return new ShopBrowser(playwright, playwright.chromium().launch(options));
  }

  /** A window of its own, as of another device. */
  public BrowserContext window(Browser.NewContextOptions options) {
    return browser.newContext(options);
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }

  private static Optional<Path> installed() {
    List<Path> candidates = new ArrayList<>();
    Optional.ofNullable(System.getenv("POTLIFE_BROWSER")).map(Path::of).ifPresent(candidates::add);
    Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
        .filter(folder -> !folder.isBlank())
        .forEach(folder -> NAMES.forEach(name -> candidates.add(Path.of(folder, name))));
    PLACES.forEach(place -> candidates.add(Path.of(place)));
    return candidates.stream().filter(Files::isExecutable).findFirst();
  }

  private static boolean downloaded() {
    try {
      ProcessBuilder builder = Driver.ensureDriverInstalled(Map.of(), false).createProcessBuilder();
      builder.command().addAll(List.of("install", "chromium"));
      return run(builder);
    } catch (RuntimeException e) {
      return false;
    }
  }

  private static Optional<Path> packaged() {
    if (!"root".equals(System.getProperty("user.name"))
        || !Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
      return Optional.empty();
    }
    run(new ProcessBuilder("apt-get", "-q", "update"));
    run(new ProcessBuilder("apt-get", "-qy", "install", "--no-install-recommends", "chromium"));
    return installed();
  }

  private static boolean run(ProcessBuilder builder) {
    try {
      Process process = builder.inheritIO().start();
      if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        return false;
      }
      return process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
