package org.potlife.demo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlannedPlant;

@QuarkusTest
@TestProfile(DemoStartTest.WithDemo.class)
class DemoStartTest {

  /** Starts as a newcomer would. */
  public static final class WithDemo implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("potlife.demo", "true");
    }
  }

  @Test
  void theFirstStartOnAnEmptyDatabaseEndsWithADemoPlanInForce() {
    String current = "/api/v1/plants/demo/plans/current";
    for (int i = 0; i < 300 && given().get(current).statusCode() != 200; i++) {
      PlannedPlant.pause();
    }

    assertThat(given().get(current).jsonPath().getString("id")).isEqualTo("demo-1");
    assertThat(given().get("/api/v1/plants/demo/orders?state=open").jsonPath().getList("orders"))
        .hasSizeGreaterThan(20);
    assertThat(given().get("/").asString()).contains("/plants/demo/plans/demo-1/pages/plan");
    assertThat(given().get("/q/metrics").asString()).contains("potlife_solve_seconds_count");
  }

  @Test
  void theFirstPlanIsForTheNextDayOnWhichAPressIsStaffed() {
    LocalDate saturday = LocalDate.of(2026, 11, 28);

    assertThat(DemoStart.nextWorkingDay(DemoPlant.shop(), saturday))
        .isEqualTo(LocalDate.of(2026, 11, 30));
    assertThat(DemoStart.nextWorkingDay(DemoPlant.shop(), saturday.minusDays(1)))
        .isEqualTo(saturday.minusDays(1));
  }
}
