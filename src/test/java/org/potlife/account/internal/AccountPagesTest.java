package org.potlife.account.internal;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.potlife.testing.BrowserTest;

/** Everything that is done about accounts, by somebody without a mouse. */
@QuarkusTest
@TestProfile(SignInRequired.class)
class AccountPagesTest extends BrowserTest {

  private static final String IVOS = "belts turn at seven";

  @Inject House house;
  @Inject SetUpLink link;

  @AfterEach
  void empty() {
    house.empty();
  }

  /** Waits for the page of this heading and has it read. */
  private void arrive(String heading) {
    assertThat(page.locator("h1")).hasText(heading);
    window.read(heading);
  }

  private void type(String field, String text) {
    window.walkTo("[name='" + field + "']");
    page.keyboard().press("Control+A");
    page.keyboard().type(text);
  }

  private void tick(String field, String value) {
    window.walkTo("[name='" + field + "'][value='" + value + "']");
    page.keyboard().press("Space");
  }

  private void enter(String selector) {
    window.walkTo(selector);
    page.keyboard().press("Enter");
  }

  private void signIn(String name, String password) {
    type("name", name);
    type("password", password);
    page.keyboard().press("Enter");
  }

  @ParameterizedTest
  @EnumSource(names = {"LIGHT", "DARK"})
  void everyPageCanBeReadByEverybodyAndUsedWithoutAMouse(ColorScheme scheme) throws Exception {
    String plant = house.plant();
    look(scheme);

    page.navigate("/sign-in");
    arrive("Sign in");
    enter("a[href='/set-up']");
    arrive("The first account");
    page.navigate("/set-up/" + link.make());
    assertThat(page.locator("#fullName")).isVisible();
    type("name", "mara");
    type("fullName", "Mara Miller");
    type("password", "short");
    type("again", "shorter");
    page.keyboard().press("Enter");
    assertThat(page.locator("#password-fault")).isVisible();
    arrive("The first account");
    type("password", House.PASSWORD);
    type("again", House.PASSWORD);
    page.keyboard().press("Enter");

    arrive("Accounts");
    String first = makeAccount();
    accountIsChanged();
    tokenIsMadeAndRevoked(plant);

    enter("a[href='/trail']");
    arrive("Who did what");
    enter("a[href='/password']");
    arrive("Your password");
    enter(".door button");
    arrive("Sign in");

    signIn("ivo", "wrong wrong wrong");
    assertThat(page.locator("#refused")).isVisible();
    arrive("Sign in");
    signIn("ivo", first);
    arrive("Your password");
    type("current", first);
    type("password", IVOS);
    type("again", IVOS);
    page.keyboard().press("Enter");
    assertThat(page).hasURL(Pattern.compile(".*:\\d+/$"));
    page.navigate("/accounts");
    arrive("This is not yours to do");

    assertThat(window.complaints())
        // the browser notes every answer from 400 on
        .filteredOn(said -> !said.startsWith("Failed to load resource"))
        .isEmpty();
  }

  private String makeAccount() {
    type("name", "ivo");
    type("fullName", "Ivo");
    enter("main form button");
    assertThat(page.locator("#roles-fault")).isVisible();
    arrive("Accounts");
    tick("roles", "press");
    enter("main form button");
    arrive("First password of ivo");
    String first = page.locator(".secret").textContent().strip();
    enter("main a[href='/accounts']");
    arrive("Accounts");
    return first;
  }

  private void accountIsChanged() {
    window.walkTo("main tbody a");
    page.keyboard().press("Enter");
    assertThat(page.locator("h1")).containsText("Account ");
    window.read("an account");
    enter("a[href='/accounts']");
    arrive("Accounts");
  }

  private void tokenIsMadeAndRevoked(String plant) {
    enter("a[href='/tokens']");
    arrive("Tokens of programs");
    type("name", "web shop");
    window.walkTo("select[name=plant]");
    page.keyboard().type(plant);
    tick("roles", "erp");
    enter("main form.form button");
    arrive("Token of web shop");
    enter("main a[href='/tokens']");
    arrive("Tokens of programs");
    enter("td form button");
    assertThat(page.locator("main tbody")).containsText("revoked");
    arrive("Tokens of programs");
  }
}
