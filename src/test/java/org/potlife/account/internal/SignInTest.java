package org.potlife.account.internal;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.potlife.plan.SettableClock;

/**
 * A service that lets nobody in without signing in.
 *
 * <p>Long, because signing in, staying in and being shut out are tried on one house with the same
 * people.
 */
@QuarkusTest
@TestProfile(SignInRequired.class)
class SignInTest {

  private static final OffsetDateTime SEVEN = OffsetDateTime.parse("2026-12-01T07:00:00+01:00");
  private static final String PASSWORD = House.PASSWORD;

  @Inject House house;
  @Inject SetUpLink link;

  @BeforeEach
  void atSeven() {
    SettableClock.set(SEVEN);
  }

  @AfterEach
  void empty() {
    SettableClock.release();
    house.empty();
  }

  /** A request as a page of the service sends it. */
  static RequestSpecification browser() {
    return given()
        .redirects()
        .follow(false)
        .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
        .header("Sec-Fetch-Site", "same-origin");
  }

  private static RequestSpecification browser(String session) {
    return browser().cookie(SessionCookie.NAME, session);
  }

  private static Response enter(String name, String password) {
    return browser()
        .formParam("name", name)
        .formParam("password", password)
        .formParam("to", "/trail")
        .post("/sign-in");
  }

  private static String session(String name) {
    Response answer = enter(name, PASSWORD);
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.cookie(SessionCookie.NAME);
  }

  private static int start(String session) {
    return browser(session).get("/").statusCode();
  }

  private static String found(String pattern, Response answer) {
    Matcher matcher = Pattern.compile(pattern).matcher(answer.asString());
    assertThat(matcher.find()).as(answer.asString()).isTrue();
    return matcher.group();
  }

  @Test
  void theFirstAccountIsMadeOnceUnderTheLinkOfTheLog() {
    assertThat(given().get("/api/v1/plants/none/plans").statusCode()).isEqualTo(401);
    String secret = link.make();
    assertThat(browser().get("/set-up/" + secret + "x").statusCode()).isEqualTo(404);
    RequestSpecification form =
        browser().formParam("name", "Mara").formParam("fullName", "Mara <b>");
    Response wrong =
        form.formParam("password", "short").formParam("again", "x").post("/set-up/" + secret);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.asString())
        .contains("id=\"password-fault\"", "aria-describedby=\"password-hint password-fault\"")
        .contains("value=\"Mara &lt;b&gt;\"");

    Response made =
        browser()
            .formParam("name", "Mara")
            .formParam("fullName", "Mara Miller")
            .formParam("password", PASSWORD)
            .formParam("again", PASSWORD)
            .post("/set-up/" + secret);

    assertThat(made.statusCode()).isEqualTo(303);
    Response accounts = browser(made.cookie(SessionCookie.NAME)).get("/accounts");
    assertThat(accounts.statusCode()).isEqualTo(200);
    assertThat(accounts.asString()).contains("Mara Miller", "administrator, planner");
    assertThat(browser().get("/set-up/" + secret).statusCode()).isEqualTo(404);
    assertThat(house.number("select count(*) from set_up_link")).isZero();
    assertThat(house.number("select count(*) from account where password_hash like '$argon2id$%'"))
        .isEqualTo(1);
  }

  @Test
  void whoSignsInGetsANewSessionThatNoScriptReadsAndSignOutEndsIt() {
    house.account("ivo", Set.of("press"));
    String before = session("ivo");

    Response again =
        browser(before)
            .formParam("name", " IVO ")
            .formParam("password", PASSWORD)
            .formParam("to", "//elsewhere.example")
            .post("/sign-in");

    String after = again.cookie(SessionCookie.NAME);
    assertThat(again.header("Location")).endsWith(RestAssured.port + "/");
    assertThat(again.headers().getValues("Set-Cookie"))
        .filteredOn(cookie -> cookie.startsWith(SessionCookie.NAME))
        .singleElement(org.assertj.core.api.InstanceOfAssertFactories.STRING)
        .contains("HttpOnly", "SameSite=Lax", "Path=/")
        .doesNotContain("Secure", "Max-Age");
    assertThat(after).isNotEqualTo(before);
    assertThat(start(before)).isEqualTo(303);
    assertThat(start(after)).isEqualTo(200);
    assertThat(
            house.number("select count(*) from account_session where kept like '%" + after + "%'"))
        .isZero();
    Response out = browser(after).post("/sign-out");
    assertThat(out.header("Set-Cookie")).contains("Max-Age=0");
    assertThat(start(after)).isEqualTo(303);
  }

  @Test
  void aStrangerLearnsNothingFromARefusal() {
    house.account("ivo", Set.of("press"));

    Response wrong = enter("ivo", "wrong wrong wrong");
    Response unknown = enter("nobody", PASSWORD);

    assertThat(wrong.statusCode()).isEqualTo(422).isEqualTo(unknown.statusCode());
    assertThat(wrong.asString().replace("ivo", "nobody")).isEqualTo(unknown.asString());
    assertThat(wrong.cookies()).isEmpty();
  }

  @Test
  void afterFiveFailuresEvenTheRightPasswordWaits() {
    house.account("ivo", Set.of("press"));
    for (int i = 0; i < 5; i++) {
      assertThat(enter("ivo", "wrong wrong wrong").statusCode()).isEqualTo(422);
      assertThat(enter("nobody", "wrong wrong wrong").statusCode()).isEqualTo(422);
    }

    Response locked = enter("ivo", PASSWORD);

    assertThat(locked.statusCode()).isEqualTo(429);
    assertThat(locked.header("Retry-After")).isEqualTo("31");
    assertThat(enter("nobody", PASSWORD).statusCode()).isEqualTo(429);
    SettableClock.set(SEVEN.plusSeconds(31));
    assertThat(enter("ivo", PASSWORD).statusCode()).isEqualTo(303);
    assertThat(enter("ivo", "wrong wrong wrong").statusCode()).isEqualTo(422);
  }

  @Test
  void aSessionEndsWhenNobodyUsesItAndAfterADay() {
    house.account("ivo", Set.of("press"));
    String idle = session("ivo");
    String used = session("ivo");

    SettableClock.set(SEVEN.plusHours(7));
    assertThat(start(used)).isEqualTo(200);
    SettableClock.set(SEVEN.plusHours(9));
    assertThat(start(idle)).isEqualTo(303);
    for (int hours = 9; hours < 24; hours += 5) {
      SettableClock.set(SEVEN.plusHours(hours));
      assertThat(start(used)).isEqualTo(200);
    }
    SettableClock.set(SEVEN.plusHours(24));
    assertThat(start(used)).isEqualTo(303);
  }

  @Test
  void anAccountThatSomebodyElseMadeChoosesItsPasswordBeforeAllElse() {
    house.account("mara", Set.of("planner", "administrator"));
    String mara = session("mara");
    Response made =
        browser(mara)
            .formParam("name", "ivo")
            .formParam("fullName", "Ivo")
            .formParam("roles", "press")
            .post("/accounts");
    String first = found("([a-z2-9]{4}-){3}[a-z2-9]{4}", made);

    Response entered = enter("ivo", first);
    String ivo = entered.cookie(SessionCookie.NAME);
    assertThat(entered.header("Location")).endsWith("/password");
    assertThat(browser(ivo).get("/").header("Location")).endsWith("/password");
    assertThat(browser(ivo).get("/api/v1/plants/none/plans").statusCode()).isEqualTo(403);
    Response changed =
        browser(ivo)
            .formParam("current", first)
            .formParam("password", "belts turn at seven")
            .formParam("again", "belts turn at seven")
            .post("/password");

    assertThat(changed.statusCode()).isEqualTo(303);
    assertThat(start(ivo)).isEqualTo(303);
    assertThat(start(changed.cookie(SessionCookie.NAME))).isEqualTo(200);
    assertThat(enter("ivo", first).statusCode()).isEqualTo(422);
    assertThat(enter("ivo", "belts turn at seven").statusCode()).isEqualTo(303);
  }

  @Test
  void aClosedAccountIsOutAtOnceAndTheLastAdministratorStays() {
    long mara = house.account("mara", Set.of("administrator"));
    long ivo = house.account("ivo", Set.of("press"));
    String admin = session("mara");
    String press = session("ivo");

    Response closed =
        browser(admin)
            .formParam("fullName", "Ivo")
            .formParam("roles", "press")
            .post("/accounts/" + ivo);
    Response last =
        browser(admin)
            .formParam("fullName", "Mara")
            .formParam("roles", "planner")
            .formParam("active", "yes")
            .post("/accounts/" + mara);

    assertThat(closed.statusCode()).isEqualTo(303);
    assertThat(start(press)).isEqualTo(303);
    assertThat(enter("ivo", PASSWORD).statusCode()).isEqualTo(422);
    assertThat(last.statusCode()).isEqualTo(409);
    assertThat(browser(admin).get("/accounts").statusCode()).isEqualTo(200);
  }

  @Test
  void aTokenIsShownOnceOpensOnePlantAndCanBeRevoked() throws Exception {
    String plant = house.plant();
    String other = house.plant();
    house.account("mara", Set.of("administrator"));
    String mara = session("mara");
    Response made =
        browser(mara)
            .formParam("plant", plant)
            .formParam("name", "web shop")
            .formParam("roles", "erp")
            .post("/tokens");
    String token = found("potlife_[A-Za-z0-9_-]{43}", made);
    assertThat(made.header("Cache-Control")).isEqualTo("no-store");

    assertThat(asked(token, plant).statusCode()).isEqualTo(200);
    assertThat(asked(token, other).statusCode()).isEqualTo(403);
    assertThat(asked(token, other).asString()).contains("for the plant " + plant + " alone");
    Response list = browser(mara).get("/tokens");
    assertThat(list.asString()).doesNotContain(token).contains("web shop", "2026-12-01 06:00 UTC");
    assertThat(house.number("select count(*) from access_token where kept = '" + token + "'"))
        .isZero();
    long id = house.number("select id from access_token where name = 'web shop'");
    assertThat(browser(mara).post("/tokens/" + id + "/revocation").statusCode()).isEqualTo(303);
    Response revoked = asked(token, plant);
    assertThat(revoked.statusCode()).isEqualTo(401);
    assertThat(revoked.contentType()).startsWith("application/problem+json");
    assertThat(revoked.header("WWW-Authenticate")).startsWith("Bearer");
    assertThat(revoked.jsonPath().getString("type")).isEqualTo("urn:potlife:problem:unauthorized");
  }

  @Test
  void aScreenNamesOnlyThePlantThatATokenIsFor() throws Exception {
    String plant = house.plant();
    String other = house.plant();
    String scale = house.token(plant, Set.of("ink-room"));
    house.account("ivo", Set.of("ink-room"));
    String everywhere = session("ivo");

    String bound = screen(given().header("Authorization", "Bearer " + scale), plant);

    assertThat(bound).contains(plant).doesNotContain(other);
    assertThat(screen(browser(everywhere), plant)).contains(plant, other);
  }

  private static String screen(RequestSpecification caller, String plant) {
    Response screen = caller.get("/plants/" + plant + "/ink-room");
    assertThat(screen.statusCode()).isEqualTo(200);
    return screen.asString();
  }

  private static Response asked(String token, String plant) {
    return given()
        .header("Authorization", "Bearer " + token)
        .get("/api/v1/plants/" + plant + "/orders");
  }

  @Test
  void aRoomTellsOfItsOwnWorkAloneAndARefusedTellingRecordsNothing() throws Exception {
    String plant = house.plant();
    String scale = house.token(plant, Set.of("ink-room"));
    String reading = "{\"room\":\"store\",\"temperatureC\":21,\"humidityPercent\":35}";
    String stocked = "{\"container\":\"c-1\",\"ink\":\"white\",\"massG\":900}";
    String both =
        "["
            + event("a", "ink.stocked", stocked)
            + ","
            + event("b", "climate.reading", reading)
            + "]";

    Response refused = told(scale, plant, both);
    Response done = told(scale, plant, event("a", "ink.stocked", stocked));

    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.jsonPath().getList("errors.pointer")).isEqualTo(List.of("/1/type"));
    assertThat(refused.asString())
        .contains("climate.reading is told by one of planner, screen-room");
    assertThat(done.statusCode()).isEqualTo(200);
    assertThat(house.number("select count(*) from shop_event where plant = '" + plant + "'"))
        .isEqualTo(1);
  }

  private static Response told(String token, String plant, String body) {
    return given()
        .header("Authorization", "Bearer " + token)
        .contentType("application/json")
        .body(body)
        .post("/api/v1/plants/" + plant + "/events");
  }

  private static String event(String id, String type, String data) {
    return "{\"specversion\":\"1.0\",\"id\":\""
        + id
        + "\",\"source\":\"/scale\",\"type\":\"org.potlife."
        + type
        + "\",\"data\":"
        + data
        + "}";
  }

  @Test
  void everyWriteLeavesItsTrailWithWhoMadeIt() throws Exception {
    String plant = house.plant();
    house.account("mara", Set.of("planner"));
    house.account("ivo", Set.of("press"));
    String mara = session("mara");
    String ivo = session("ivo");
    String order = "/api/v1/plants/" + plant + "/orders/A-1";

    browser(ivo).delete(order).then().statusCode(403);
    browser(mara).delete(order).then().statusCode(404);
    given().delete(order).then().statusCode(401);
    given().header("Authorization", "Bearer potlife_x").delete(order).then().statusCode(401);

    Response trail = browser(mara).get("/api/v1/trail?plant=" + plant);
    assertThat(trail.statusCode()).isEqualTo(200);
    assertThat(trail.jsonPath().getList("entries.who")).isEqualTo(List.of("mara", "ivo"));
    assertThat(trail.jsonPath().getString("entries[0].path"))
        .isEqualTo("/api/v1/plants/{plant}/orders/{reference}");
    assertThat(trail.jsonPath().getString("entries[0].about")).isEqualTo("reference A-1");
    assertThat(trail.jsonPath().getList("entries.outcome"))
        .isEqualTo(List.of("refused", "not allowed"));
    assertThat(browser(mara).get("/api/v1/trail?who=ivo&limit=1").jsonPath().getLong("next"))
        .isPositive();
    assertThat(browser(ivo).get("/trail").statusCode()).isEqualTo(403);
    assertThat(browser(mara).get("/trail").asString())
        .contains("POST /sign-in", "reference A-1", "not allowed, 403");
  }

  @Test
  void aPageOfAnotherSiteCannotWriteWithSomebodysCookie() {
    house.account("mara", Set.of("administrator"));
    String mara = session("mara");

    Response forged =
        given()
            .cookie(SessionCookie.NAME, mara)
            .header("Origin", "https://elsewhere.example")
            .formParam("name", "spy")
            .formParam("fullName", "Spy")
            .formParam("roles", "administrator")
            .post("/accounts");

    assertThat(forged.statusCode()).isEqualTo(403);
    assertThat(forged.contentType()).startsWith("application/problem+json");
    assertThat(house.number("select count(*) from account")).isEqualTo(1);
  }

  @Test
  void figuresOfOperationAreNotForStrangersHealthAndTheInterfaceAre() throws Exception {
    String plant = house.plant();
    house.account("vera", Set.of("viewer"));

    assertThat(given().get("/q/health/live").statusCode()).isEqualTo(200);
    assertThat(given().get("/q/openapi").statusCode()).isEqualTo(200);
    Response metrics = given().get("/q/metrics");
    assertThat(metrics.statusCode()).isEqualTo(401);
    assertThat(metrics.contentType()).startsWith("application/problem+json");
    assertThat(browser(session("vera")).get("/q/metrics").statusCode()).isEqualTo(200);
    assertThat(metrics(house.token(plant, Set.of("metrics")))).isEqualTo(200);
    assertThat(metrics(house.token(plant, Set.of("viewer")))).isEqualTo(403);
  }

  private static int metrics(String token) {
    return given().header("Authorization", "Bearer " + token).get("/q/metrics").statusCode();
  }

  @Test
  void everyAnswerCarriesTheHeadersThatABrowserHeeds() {
    Response page = given().get("/sign-in");

    assertThat(page.header("Content-Security-Policy"))
        .contains("default-src 'self'", "frame-ancestors 'none'")
        .doesNotContain("unsafe");
    assertThat(page.header("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(page.header("Referrer-Policy")).isEqualTo("same-origin");
    assertThat(page.asString()).doesNotContain("<script", "style=");
  }
}
