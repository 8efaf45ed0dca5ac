package org.potlife.account.internal;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A service that nobody has set up yet, as a newcomer starts it. */
@QuarkusTest
class OpenDoorTest {

  private static final String PLANS = "/api/v1/plants/none/plans";

  @Inject House house;

  @AfterEach
  void empty() {
    house.empty();
  }

  @Test
  void whoSitsAtThisComputerMayDoEverythingAndIsToldSo() {
    assertThat(given().get(PLANS).statusCode()).isEqualTo(404);
    assertThat(given().get("/").asString())
        .contains("anyone on this computer may change everything");
    assertThat(given().get("/q/metrics").statusCode()).isEqualTo(200);
  }

  @Test
  void aNameThatWasReboundToThisComputerStaysOut() {
    Response answer = given().header("Host", "rebound.example").get(PLANS);

    assertThat(answer.statusCode()).isEqualTo(401);
    assertThat(answer.contentType()).startsWith("application/problem+json");
  }

  @Test
  void whatAProxyPassesOnStaysOut() {
    assertThat(given().header("X-Forwarded-For", "192.0.2.7").get(PLANS).statusCode())
        .isEqualTo(401);
  }

  @Test
  void aPageOfAnotherSiteCannotWrite() {
    assertThat(given().header("Origin", "https://elsewhere.example").post(PLANS).statusCode())
        .isEqualTo(403);
    assertThat(given().header("Sec-Fetch-Site", "cross-site").post(PLANS).statusCode())
        .isEqualTo(403);
  }

  @Test
  void aTokenThatIsNotValidIsNotLetInAlthoughTheDoorIsOpen() {
    assertThat(given().header("Authorization", "Bearer x").get(PLANS).statusCode()).isEqualTo(401);
  }

  @Test
  void theFirstAccountShutsTheDoor() {
    house.account("mara", Set.of("planner", "administrator"));

    assertThat(given().get(PLANS).statusCode()).isEqualTo(401);
    assertThat(given().redirects().follow(false).get("/").header("Location")).endsWith("/sign-in");
  }
}
