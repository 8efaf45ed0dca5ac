package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.account.internal.SignInTest.browser;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.Cookie;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.SettableClock;

/** Somebody who knows only a name tries to keep its owner out. */
@QuarkusTest
@TestProfile(SignInRequired.class)
class ShutOutTest {

  private static final OffsetDateTime SEVEN = OffsetDateTime.parse("2026-12-01T07:00:00+01:00");
  private static final String WRONG = "wrong wrong wrong";

  @Inject House house;
  @Inject Failures failures;
  private long mara;
  private OffsetDateTime now;

  @BeforeEach
  void aSoleAdministrator() {
    clock(SEVEN);
    mara = house.account("mara", Set.of("administrator"));
  }

  @AfterEach
  void empty() {
    SettableClock.release();
    house.empty();
  }

  private void clock(OffsetDateTime time) {
    now = time;
    SettableClock.set(time);
  }

  private static Response enter(RequestSpecification browser, String password) {
    return browser.formParam("name", "mara").formParam("password", password).post("/sign-in");
  }

  /** The cookie of the browser in which she has signed in. */
  private static Cookie known() {
    Response entered = enter(browser(), House.PASSWORD);
    assertThat(entered.statusCode()).isEqualTo(303);
    Cookie cookie = entered.detailedCookies().get(KnownBrowser.name("mara"));
    assertThat(cookie.isHttpOnly()).isTrue();
    assertThat(cookie.getSameSite()).isEqualTo("Strict");
    assertThat(cookie.getMaxAge()).isEqualTo(KnownBrowser.KNOWN_FOR.toSeconds());
    return cookie;
  }

  /** Fails as often as the rules let it within a time, and says how often that was. */
  private int attack(String address, Duration time) {
    OffsetDateTime end = now.plus(time);
    int failed = 0;
    while (true) {
      Duration wait = failures.book(Counted.ofStranger("mara", address));
      if (wait.isZero()) {
        failed++;
      } else if (now.plus(wait).isAfter(end)) {
        return failed;
      } else {
        clock(now.plus(wait));
      }
    }
  }

  /** Fails from so many networks, five times from each. */
  private void attackFromEverywhere(int networks) {
    for (int network = 0; network < networks; network++) {
      for (int i = 0; i < 5; i++) {
        failures.book(Counted.ofStranger("mara", "10.1." + network + ".9"));
      }
    }
  }

  @Test
  void oneAttackerElsewhereKeepsNobodyButHimselfOut() {
    int failed = attack("10.9.9.9", Duration.ofDays(1));

    assertThat(failed).isEqualTo(LockOut.MOST_IN_A_ROW);
    assertThat(failures.book(Counted.ofStranger("mara", "10.9.9.9")))
        .isGreaterThan(Duration.ofHours(20));
    assertThat(enter(browser(), House.PASSWORD).statusCode()).isEqualTo(429);
    clock(now.plusSeconds(31));
    assertThat(enter(browser(), House.PASSWORD).statusCode()).isEqualTo(303);
  }

  @Test
  void manyAttackersSlowDownStrangersButNotABrowserThatSignedInBefore() {
    Cookie cookie = known();
    attackFromEverywhere(60);

    Response stranger = enter(browser(), House.PASSWORD);

    assertThat(stranger.statusCode()).isEqualTo(429);
    assertThat(Integer.parseInt(stranger.header("Retry-After"))).isBetween(1, 15 * 60 + 1);
    assertThat(enter(browser().cookie(cookie), House.PASSWORD).statusCode()).isEqualTo(303);
    assertThat(enter(browser(), House.PASSWORD).statusCode()).isEqualTo(429);
  }

  @Test
  void anAttackerBehindTheSameAddressDoesNotStopAKnownBrowserEither() {
    Cookie cookie = known();
    for (int i = 0; i < 40; i++) {
      enter(browser(), WRONG);
    }

    assertThat(enter(browser(), House.PASSWORD).statusCode()).isEqualTo(429);
    assertThat(enter(browser().cookie(cookie), House.PASSWORD).statusCode()).isEqualTo(303);
  }

  @Test
  void aKnownBrowserMayNotGuessForEverEither() {
    Cookie cookie = known();
    for (int i = 0; i < 5; i++) {
      assertThat(enter(browser().cookie(cookie), WRONG).statusCode()).isEqualTo(422);
    }

    assertThat(enter(browser().cookie(cookie), House.PASSWORD).statusCode()).isEqualTo(429);
    assertThat(enter(browser(), House.PASSWORD).statusCode()).isEqualTo(303);
  }

  @Test
  void aCookieThatIsForgedOldOrOfAnotherAccountIsAStrangers() {
    Cookie cookie = known();
    house.account("ivo", Set.of("press"));
    attackFromEverywhere(60);
    String name = cookie.getName();
    String value = cookie.getValue();
    String later = (SEVEN.toEpochSecond() + 60) + value.substring(value.indexOf('.'));

    for (String forged : new String[] {"", ".", "x.y", "1.", later, value + "0"}) {
      assertThat(enter(browser().cookie(name, forged), House.PASSWORD).statusCode())
          .as(forged)
          .isEqualTo(429);
    }
    assertThat(
            enter(browser().cookie(KnownBrowser.name("ivo"), value), House.PASSWORD).statusCode())
        .isEqualTo(429);
    assertThat(enter(browser().cookie(name, value), House.PASSWORD).statusCode()).isEqualTo(303);
    clock(SEVEN.plus(KnownBrowser.KNOWN_FOR));
    attackFromEverywhere(60);
    assertThat(enter(browser().cookie(name, value), House.PASSWORD).statusCode()).isEqualTo(429);
  }

  @Test
  void aNewPasswordForgetsFailuresAndBrowsers() {
    Cookie cookie = known();
    attack("10.9.9.9", Duration.ofDays(1));
    attackFromEverywhere(60);
    String session = enter(browser().cookie(cookie), House.PASSWORD).cookie(SessionCookie.NAME);

    browser()
        .cookie(SessionCookie.NAME, session)
        .post("/accounts/" + mara + "/password")
        .then()
        .statusCode(200);

    assertThat(house.number("select count(*) from sign_in_failure where length(kept) > 64"))
        .isZero();
    assertThat(failures.book(Counted.ofStranger("mara", "10.9.9.9")))
        .as("only what the address did is left of it")
        .isLessThanOrEqualTo(Duration.ofMinutes(15));
    attackFromEverywhere(60);
    assertThat(enter(browser().cookie(cookie), WRONG).statusCode()).isEqualTo(429);
  }
}
