package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.platform.Api;
import org.potlife.testing.BrowserTest;

/** The form of the plant's set-up. */
@QuarkusTest
class ShopFormTest extends BrowserTest {

  private Api plant;

  @BeforeEach
  void openTheForm() {
    plant = Api.withShop();
    look(ColorScheme.LIGHT);
    page.navigate("/plants/" + plant.plant() + "/shop");
    assertThat(page.locator("#shop-form")).isVisible();
    page.locator("#shop-groups > details").last().locator("summary").first().click();
  }

  private Locator field(String pointer) {
    return page.locator("[data-pointer='" + pointer + "']");
  }

  @Test
  void changesAreDroppedByReadingAgain() {
    String before = field("/settings/horizonDays").inputValue();
    field("/settings/horizonDays").fill("33");
    field("/settings/horizonDays").blur();
    assertThat(page.locator("#shop-state")).hasText("Not saved yet");

    page.locator("#shop-again").click();

    assertThat(page.locator("#shop-state")).hasText("");
    assertThat(field("/settings/horizonDays")).hasValue(before);
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void howPlansFollowIsSetInTheForm() {
    field("/settings/runShiftedPerHour").fill("7");
    field("/settings/following/solveSeconds").fill("15");
    field("/settings/following/publish").selectOption("when-no-promise-gets-worse");
    page.locator(".savebar button.main").click();

    assertThat(page.locator("#shop-state")).hasText("Saved.");
    assertThat(plant.get(plant.shop()).jsonPath().getString("settings.following.publish"))
        .isEqualTo("when-no-promise-gets-worse");
    assertThat(plant.get(plant.shop()).jsonPath().getDouble("settings.runShiftedPerHour"))
        .isEqualTo(7);
    window.read("shop");
    assertThat(window.complaints()).isEmpty();
  }
}
