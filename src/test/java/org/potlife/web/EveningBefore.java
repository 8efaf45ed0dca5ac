package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.testing.BrowserTest;

/**
 * Tests of screens that begin on the evening before the fixture's day, with a plant of their own.
 */
abstract class EveningBefore extends BrowserTest {

  PlannedPlant plant;

  @BeforeEach
  void theEveningBefore() {
    SettableClock.set(at(DAY.minusDays(1), "16:42"));
    plant = PlannedPlant.ready();
    look(ColorScheme.LIGHT);
  }

  @AfterEach
  void releaseTheClock() {
    SettableClock.release();
  }

  /** Opens a screen of the plant, by its path behind the plant's. */
  void open(String screen) {
    page.navigate("/plants/" + plant.id() + "/" + screen);
    assertThat(page.locator("main h1").first()).isVisible();
  }
}
