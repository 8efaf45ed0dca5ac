package org.potlife.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.at;

import com.microsoft.playwright.Locator;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.potlife.plan.SettableClock;

/** What the crew touches and types at the press. */
@QuarkusTest
class PressScreenTest extends EveningBefore {

  @Test
  void theCrewStartsARunAndApprovesItsFirstPiece() {
    plant.published();
    SettableClock.set(at("06:31"));
    page.clock().install();
    open("presses/P1");

    page.locator("button[data-mark='run.started']").first().click();
    // the tablet's clock runs, the service's stands still in a test: what is marked must not lie
    // ahead
    SettableClock.set(at("06:36"));
    page.clock().runFor(Visit.UNDO_MS);
    assertThat(page.locator(".notice").last()).containsText("booked");
    page.locator("button[data-mark='run.first-piece']").first().click();
    SettableClock.set(at("06:41"));
    page.clock().runFor(Visit.UNDO_MS);
    assertThat(page.locator("button[data-mark='run.first-piece']")).hasCount(0);
  }

  @Test
  void whatTheCrewIsTypingStaysWhenSomebodyElseTellsSomething() {
    plant.published();
    SettableClock.set(at("06:31"));
    open("presses/P1");
    String card = page.locator(".job").first().getAttribute("id");
    String other = page.locator(".job").nth(1).getAttribute("id");
    page.locator("#c" + card + " summary").click();
    page.locator("#c" + card + " input[name=good]").fill("40");
    page.locator("#" + card + " p.name").evaluate("p => p.dataset.drawn = 'before'");

    page.evaluate("document.body.dispatchEvent(new CustomEvent('potlife:changed'))");

    assertThat(page.locator("#" + card + " p.name[data-drawn]")).hasCount(0);
    assertThat(page.locator("#c" + card + " input[name=good]")).isFocused();
    assertThat(page.locator("#c" + card + " input[name=good]")).hasValue("40");
    assertThat(page.locator("#c" + other + " input[name=good]")).hasValue("");
    assertThat(window.complaints()).isEmpty();
  }

  @Test
  void aTouchIsNotLostWhenTheListIsDrawnAnewUnderTheFinger() {
    plant.published();
    SettableClock.set(at("06:31"));
    open("presses/P1");
    Locator started = page.locator("button[data-mark='run.started']").first();
    started.hover();
    page.mouse().down();

    page.waitForResponse(
        answer -> answer.url().contains("/presses/P1/list"),
        () -> page.evaluate("document.body.dispatchEvent(new CustomEvent('potlife:changed'))"));
    page.mouse().up();

    assertThat(page.locator(".notice").last()).containsText("started");
    assertThat(window.complaints()).isEmpty();
  }
}
