package org.potlife.account.internal;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A service whose people a provider vouches for. */
@QuarkusTest
@TestProfile(OrganisationTest.WithProvider.class)
class OrganisationTest {

  private static final String PLANS = "/api/v1/plants/none/plans";

  @Inject House house;

  /** OpenID by configuration, beside the accounts of our own. */
  public static class WithProvider implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("potlife.sign-in", "required");
    }

    @Override
    public List<TestResourceEntry> testResources() {
      return List.of(new TestResourceEntry(SmallProvider.class));
    }
  }

  @AfterEach
  void empty() {
    house.empty();
  }

  private static Response with(String token, String path) {
    return given().header("Authorization", "Bearer " + token).delete(path);
  }

  @Test
  void theProvidersTokenBringsItsRoles() {
    String order = "/api/v1/plants/none/orders/A-1";

    assertThat(with(SmallProvider.token("nora", "[\"planner\"]"), order).statusCode())
        .isEqualTo(404);
    assertThat(
            with(SmallProvider.token("otto", "[\"viewer\",\"of another house\"]"), order)
                .statusCode())
        .isEqualTo(403);
    assertThat(with(SmallProvider.token("otto", "[]"), order).statusCode()).isEqualTo(403);
    Response forged = with(SmallProvider.token("nora", "[\"planner\"]") + "x", order);
    assertThat(forged.statusCode()).isEqualTo(401);
    assertThat(forged.contentType()).startsWith("application/problem+json");
    assertThat(house.number("select count(*) from trail_entry where who = 'nora'")).isEqualTo(1);
    assertThat(house.number("select count(*) from trail_entry where kind <> 'organisation'"))
        .isZero();
  }

  @Test
  void accountsAndTokensOfOurOwnWorkBesideIt() throws Exception {
    String plant = house.plant();
    String token = house.token(plant, Set.of("erp"));

    assertThat(
            given()
                .header("Authorization", "Bearer " + token)
                .get("/api/v1/plants/" + plant + "/orders")
                .statusCode())
        .isEqualTo(200);
    assertThat(given().get(PLANS).statusCode()).isEqualTo(401);
    Response page = given().redirects().follow(false).get("/");
    assertThat(page.header("Location")).endsWith("/sign-in");
    assertThat(given().get("/sign-in").asString()).contains("Sign in with your organisation");
  }

  @Test
  void theProviderLeadsNoraIn() {
    Response sent = given().redirects().follow(false).get(SignInPages.ORGANISATION);
    assertThat(sent.statusCode()).isEqualTo(302);
    assertThat(sent.header("Location")).contains("/authorize?response_type=code");
    String state =
        URLDecoder.decode(
            sent.header("Location").replaceAll(".*[?&]state=([^&]*).*", "$1"),
            StandardCharsets.UTF_8);
    Map<String, String> cookies = new HashMap<>(sent.cookies());

    Response back =
        given()
            .redirects()
            .follow(false)
            .cookies(cookies)
            .queryParam("code", "one")
            .queryParam("state", state)
            .get(SignInPages.ORGANISATION);
    cookies.putAll(back.cookies());
    cookies.values().removeIf(String::isEmpty);

    assertThat(back.statusCode()).isEqualTo(302);
    Response start = given().redirects().follow(false).cookies(cookies).get("/");
    assertThat(start.statusCode()).isEqualTo(200);
    assertThat(start.asString()).contains("Signed in as <b>nora</b>").doesNotContain("/password");
    assertThat(given().cookies(cookies).delete("/api/v1/plants/none/orders/A-1").statusCode())
        .isEqualTo(403);
    Response out =
        given()
            .redirects()
            .follow(false)
            .cookies(cookies)
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .post("/sign-out");
    assertThat(out.headers().getValues("Set-Cookie"))
        .anySatisfy(cookie -> assertThat(cookie).startsWith("q_session").contains("Max-Age=0"));
  }
}
