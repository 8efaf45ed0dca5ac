package org.potlife.reliability;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.potlife.Documents;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Rows;

/**
 * Every path that writes gets bodies of nonsense, 300 of them, or as many as {@code
 * -Dpotlife.nonsense=10000} says.
 */
@QuarkusTest
class NonsenseTest {

  private static final int BODIES = Integer.getInteger("potlife.nonsense", 300);

  @TestHTTPResource("/")
  URI root;

  @Inject Rows rows;

  private record Door(String name, String method, String path, String good, String header) {}

  private static String event(String type, String data) {
    return "{\"specversion\":\"1.0\",\"id\":\"n-1\",\"source\":\"/somebody\",\"type\":\"org.potlife."
        + type
        + "\",\"time\":\"2026-11-30T16:20:00+01:00\",\"data\":"
        + data
        + "}";
  }

  private static List<Door> doors(String plant, String draft, long parked) {
    String at = "api/v1/plants/" + plant;
    List<Door> doors = new ArrayList<>();
    doors.add(new Door("shop, new", "PUT", "api/v1/plants/fresh/shop", Documents.SHOP, null));
    doors.add(new Door("shop", "PUT", at + "/shop", Documents.SHOP, "If-Match: *"));
    doors.add(new Door("order", "PUT", at + "/orders/HC-2041", Documents.ORDER, null));
    doors.add(
        new Door(
            "orders", "POST", at + "/orders", "[" + Documents.ORDER + "]", "Idempotency-Key: n"));
    doors.add(
        new Door(
            "plan", "POST", at + "/plans", "{\"day\":\"2026-12-01\",\"solveSeconds\":1}", null));
    doors.add(new Door("publication", "POST", at + "/plans/" + draft + "/publication", "{}", null));
    doors.add(new Door("stop", "POST", at + "/plans/" + draft + "/stop", "{}", null));
    doors.add(new Door("restoration", "POST", at + "/plans/" + draft + "/restoration", "{}", null));
    doors.add(
        new Door(
            "what if",
            "POST",
            at + "/what-if",
            "{\"press\":\"P1\",\"downFrom\":\"2026-12-01T08:00:00+01:00\",\"downTo\":\"2026-12-01T09:00:00+01:00\",\"solveSeconds\":0}",
            null));
    doors.add(
        new Door(
            "settlement",
            "POST",
            at + "/events/" + parked + "/settlement",
            "{\"how\":\"apply-again\",\"by\":\"somebody\",\"note\":\"again\"}",
            null));
    doors.add(
        new Door(
            "webhook",
            "PUT",
            at + "/webhooks/n",
            "{\"url\":\"http://127.0.0.1:1/\",\"types\":[\"plan.failed\"],\"secret\":\""
                + "s".repeat(40)
                + "\"}",
            null));
    Map<String, String> told = new TreeMap<>();
    told.put("climate.reading", "{\"room\":\"store\",\"temperatureC\":21,\"humidityPercent\":35}");
    told.put("emulsion.reading", "{\"screen\":\"s\",\"dry\":true,\"person\":\"p\"}");
    told.put("screen.broken", "{\"screen\":\"s\"}");
    told.put("screen.moved", "{\"screen\":\"s\",\"state\":\"ready\",\"frame\":\"f\"}");
    told.put("screen.tension", "{\"frame\":\"f\",\"newtonPerCm\":22}");
    told.put("batch.mixed", "{\"batch\":\"bone-1\",\"massG\":500}");
    told.put("batch.activated", "{\"batch\":\"bone-1\",\"agentG\":30}");
    told.put("batch.ready", "{\"batch\":\"bone-1\"}");
    told.put(
        "run.ink-used",
        "{\"run\":\"r\",\"batch\":\"bone-1\",\"massG\":90,\"screensG\":8,\"pieces\":24}");
    told.put("batch.emptied", "{\"batch\":\"bone-1\"}");
    told.put("batch.discarded", "{\"batch\":\"bone-1\",\"massG\":5,\"reason\":\"old\"}");
    told.put("ink.returned", "{\"batch\":\"bone-1\",\"massG\":5,\"container\":\"c\"}");
    told.put("ink.stocked", "{\"container\":\"c\",\"ink\":\"sky\",\"massG\":100}");
    told.put("ink.counted", "{\"container\":\"c\",\"massG\":90}");
    told.forEach(
        (type, data) -> doors.add(new Door(type, "POST", at + "/events", event(type, data), null)));
    doors.add(
        new Door(
            "events",
            "POST",
            at + "/events",
            "[" + event("screen.broken", "{\"screen\":\"s\"}") + "]",
            null));
    return doors;
  }

  @Test
  void nonsenseIsRefusedWithoutAFailureAndLeavesNothingBehind() throws Exception {
    SettableClock.set(PlanFixture.at(PlanFixture.DAY.minusDays(1), "16:30"));
    try {
      PlannedPlant plant = PlannedPlant.ready();
      plant.published();
      plant
          .api()
          .post(
              "/api/v1/plants/" + plant.id() + "/events",
              event("screen.broken", "{\"screen\":\"nobody\"}").replace("n-1", "parked-1"))
          .then()
          .statusCode(200);
      List<Door> doors = doors(plant.id(), plant.draft(), rows.newestEvent(plant.id()));
      Nonsense nonsense = new Nonsense(20261201);
      Map<Integer, Integer> answers = new TreeMap<>();
      for (int i = 0; i < BODIES; i++) {
        Door door = doors.get(i % doors.size());
        byte[] body = nonsense.from(door.good());
        String before = rows.everything();
        HttpResponse<String> answer = send(door, body);
        String asked = door + " " + new String(body, StandardCharsets.ISO_8859_1);
        String shown = asked.substring(0, Math.min(1500, asked.length()));
        assertThat(answer.statusCode()).as(shown + answer.body()).isLessThan(500);
        if (answer.statusCode() >= 400) {
          assertThat(answer.headers().firstValue("Content-Type").orElse(""))
              .as(shown)
              .startsWith("application/problem+json");
          assertThat(rows.everything()).as(shown).isEqualTo(before);
        }
        answers.merge(answer.statusCode(), 1, Integer::sum);
      }
      System.out.println(BODIES + " bodies on " + doors.size() + " paths, answers: " + answers);
      assertThat(answers.get(422)).as("most are refused for their content").isPositive();
      given().get("/q/health/ready").then().statusCode(200);
    } finally {
      SettableClock.release();
    }
  }

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  private HttpResponse<String> send(Door door, byte[] body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(root.resolve(door.path()))
            .timeout(Duration.ofSeconds(60))
            .header("Content-Type", "application/json")
            .method(door.method(), BodyPublishers.ofByteArray(body));
    if (door.header() != null) {
      String[] parts = door.header().split(": ");
      // a key that was used is answered from memory
      request.header(parts[0], parts[1].equals("n") ? "n" + System.nanoTime() : parts[1]);
    }
    return client.send(request.build(), BodyHandlers.ofString());
  }
}
