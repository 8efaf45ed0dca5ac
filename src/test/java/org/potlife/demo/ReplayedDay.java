package org.potlife.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.potlife.outbox.Listener;
import org.potlife.testing.PackagedService;

/**
 * Lives through an evening, a night and a day on the demo plant at speed, by the API alone, and
 * prints what happens: a humid night, a rush order, a press that fails. {@code
 * docs/replayed-day.md} shows a run.
 *
 * <p>Arguments: how many seconds pass in one, 120 when left out.
 */
public final class ReplayedDay {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("HH:mm");
  private static final String EVENING = "2026-11-30T19:00:00+01:00";
  private static final String DAY = "2026-12-01";
  private static final String PLANT = "/api/v1/plants/demo";
  private static final int MOST_SHOWN = 4;
  private static final int MOST_PLANS = 5;

  private final PackagedService service;
  private int told;

  private ReplayedDay(PackagedService service) {
    this.service = service;
  }

  /** Runs the day. */
  public static void main(String... args) throws Exception {
    String speed = args.length == 0 ? "120" : args[0];
    Path folder = Files.createTempDirectory("replayed-day");
    PackagedService service =
        new PackagedService(
            folder, Map.of("POTLIFE_DEMO", "true", "POTLIFE_CLOCK", EVENING + "@" + speed));
    service.start("service");
    try {
      service.await("/q/health/ready", answer -> answer.statusCode() == 200);
      new ReplayedDay(service).live();
    } finally {
      service.end();
    }
    System.exit(0);
  }

  private void live() throws Exception {
    service.await(PLANT + "/plans/current", answer -> answer.statusCode() == 200);
    try (Listener stream =
        Listener.to(service.address() + PLANT + "/events/stream?types=plan.*,promise.*", null)) {
      JsonNode plan = get("/plans/current");
      say("The first plan is in force: %s.", words(plan));
      humidNight(stream);
      morning();
      rushOrder(stream);
      pressFails(stream);
      evening(stream);
    }
  }

  private void humidNight(Listener stream) throws Exception {
    awaitTime("2026-11-30T21:30:00+01:00");
    List<String> readings = new ArrayList<>();
    for (String room : List.of("C1", "C2", "store")) {
      readings.add(
          event(
              "night-" + room,
              "climate.reading",
              "{\"room\":\"" + room + "\",\"temperatureC\":21,\"humidityPercent\":71}"));
    }
    say("A humid night: both cabinets and the store read 21 °C and 71 %%. %s", tell(readings));
    replan(stream);
    awaitTime("2026-12-01T04:30:00+01:00");
    readings.clear();
    for (String room : List.of("C1", "C2", "store")) {
      readings.add(
          event(
              "dry-" + room,
              "climate.reading",
              "{\"room\":\"" + room + "\",\"temperatureC\":30,\"humidityPercent\":32}"));
    }
    say("The dryer of the air runs again: 30 °C and 32 %%. %s", tell(readings));
    replan(stream);
  }

  private void morning() throws Exception {
    awaitTime("2026-12-01T05:45:00+01:00");
    JsonNode list = get("/plans/current/activations?day=" + DAY).get("batches");
    say("The ink room's list has %d batches; the first:", list.size());
    for (int i = 0; i < Math.min(MOST_SHOWN, list.size()); i++) {
      JsonNode batch = list.get(i);
      System.out.printf(
          "      %s: %d g and %d g of agent, mixed from %s, to be gone by %s%n",
          batch.get("id").asText(),
          batch.get("massG").asInt(),
          batch.path("agentG").asInt(),
          wall(batch.path("mixFrom").asText(null)),
          wall(batch.path("useBy").asText(null)));
    }
  }

  private void rushOrder(Listener stream) throws Exception {
    awaitTime("2026-12-01T08:10:00+01:00");
    JsonNode orders = get("/orders?state=open").get("orders");
    ObjectNode rush = (ObjectNode) pick(orders, o -> o.get("prints").size() == 1).deepCopy();
    rush.remove(List.of("state", "version", "promise"));
    rush.put("reference", "RUSH-1").put("customer", "Late Caller").put("priority", 1);
    rush.put("dueAt", "2026-12-01T18:00:00+01:00");
    ((ObjectNode) rush.get("garments"))
        .put("quantity", 120)
        .put("blanks", 130)
        .put("availableFrom", "2026-12-01T09:00:00+01:00");
    int status = send(request("/orders/RUSH-1").PUT(body(rush.toString()))).statusCode();
    say("A rush order for 120 pieces, due at 18:00, garments at 09:00: answered %d.", status);
    replan(stream);
    JsonNode promise = get("/orders/RUSH-1").path("promise");
    say(
        "RUSH-1 is promised for %s%s.",
        wall(promise.path("plannedFinish").asText(null)),
        promise.path("lateMinutes").asInt() == 0
            ? ", in time"
            : ", " + promise.path("lateMinutes").asInt() + " min late");
  }

  private void pressFails(Listener stream) throws Exception {
    awaitTime("2026-12-01T10:40:00+01:00");
    String down =
        event(
            "p2-down",
            "press.down",
            "{\"press\":\"P2\",\"reason\":\"air line burst\",\"expectedUp\":"
                + "\"2026-12-01T14:00:00+01:00\"}");
    HttpResponse<String> answer = send(request("/events").POST(body(down)));
    if (answer.statusCode() == 200) {
      say("P2 stops: an air line has burst, back at 14:00 they say. %s", outcomes(answer));
    } else {
      say(
          "P2 leaks air; it can end what has begun and is repaired from 13:30 to 16:00. The set-up"
              + " closes it: %d.",
          closed("P2"));
    }
    replan(stream);
  }

  /** Closes a press in the set-up, where its stops cannot be told by events. */
  private int closed(String press) throws Exception {
    HttpResponse<String> shop = send(request("/shop").GET());
    ObjectNode document = (ObjectNode) JSON.readTree(shop.body());
    for (JsonNode each : document.get("presses")) {
      if (each.get("id").asText().equals(press)) {
        ((ObjectNode) each)
            .putArray("closures")
            .addObject()
            .put("from", DAY + "T13:30:00+01:00")
            .put("to", DAY + "T16:00:00+01:00")
            .put("reason", "air line");
      }
    }
    return send(request("/shop")
            .header("If-Match", shop.headers().firstValue("ETag").orElseThrow())
            .PUT(body(document.toString())))
        .statusCode();
  }

  private void evening(Listener stream) throws Exception {
    awaitTime("2026-12-01T18:00:00+01:00");
    JsonNode late = get("/plans/current/late");
    say(
        "The day's last look: %d orders late, %d prints without a place; %d events were heard on"
            + " the stream.",
        late.path("late").size(), late.path("unplaced").size(), stream.heard().size());
  }

  /** Asks for a plan, shows what it changes and publishes it. */
  private void replan(Listener stream) throws Exception {
    for (int i = 0; i < MOST_PLANS; i++) {
      HttpResponse<String> asked =
          send(request("/plans").POST(body("{\"day\":\"" + DAY + "\",\"solveSeconds\":3}")));
      String path = PackagedService.made(asked);
      service.await(path, answer -> !answer.body().contains("\"state\":\"solving\""));
      String plan = path.substring(path.lastIndexOf('/') + 1);
      JsonNode changes = get("/plans/" + plan + "/changes");
      HttpResponse<String> published =
          send(request("/plans/" + plan + "/publication").POST(body("")));
      if (published.statusCode() == 200) {
        show(plan, changes, stream);
        return;
      }
      say("%s is not published: %s", plan, JSON.readTree(published.body()).path("detail").asText());
      JsonNode findings = JSON.readTree(published.body()).path("findings");
      for (int f = 0; f < Math.min(MOST_SHOWN, findings.size()); f++) {
        System.out.println("      " + findings.get(f));
      }
    }
  }

  private void show(String plan, JsonNode changes, Listener stream) throws Exception {
    String published = "\"subject\":\"" + plan + "\"";
    stream.await(
        heard ->
            heard.stream()
                .anyMatch(h -> h.data().contains(published) && h.type().equals("plan.published")));
    Thread.sleep(300);
    List<Listener.Heard> news = stream.heard().subList(told, stream.heard().size());
    told = stream.heard().size();
    say(
        "%s is in force: %s. %d of %d runs that stay move (%s %%), %d change the press.",
        plan,
        words(get("/plans/current")),
        changes.path("moved").size(),
        changes.path("runs").asInt(),
        changes.path("movedPercent").asText(),
        changes.path("pressChanges").asInt());
    for (int i = 0; i < Math.min(MOST_SHOWN, changes.path("moved").size()); i++) {
      JsonNode move = changes.get("moved").get(i);
      System.out.printf(
          "      %s: %s %s -> %s %s; %s%n",
          move.get("name").asText(),
          move.get("fromPress").asText(),
          wall(move.get("fromStart").asText()),
          move.get("toPress").asText(),
          wall(move.get("toStart").asText()),
          move.get("why").isEmpty() ? "by choice" : move.get("why").get(0).asText());
    }
    System.out.printf(
        "      the stream told %d promises that changed%n",
        news.stream().filter(h -> h.type().equals("promise.changed")).count());
  }

  private static String words(JsonNode plan) {
    JsonNode score = plan.path("score");
    return "%d runs, %d without a place, %d late minutes, cost %.0f"
        .formatted(
            plan.path("runs").size(),
            score.path("unplaced").asInt(),
            score.path("lateMinutes").asInt(),
            score.path("totalCost").asDouble());
  }

  private String event(String id, String type, String data) throws Exception {
    return "{\"specversion\":\"1.0\",\"id\":\""
        + id
        + "\",\"source\":\"/replayed-day\",\"type\":\"org.potlife."
        + type
        + "\",\"time\":\""
        + now()
        + "\",\"data\":"
        + data
        + "}";
  }

  private String tell(List<String> events) throws Exception {
    return outcomes(send(request("/events").POST(body("[" + String.join(",", events) + "]"))));
  }

  private static String outcomes(HttpResponse<String> answer) throws IOException {
    List<String> outcomes = new ArrayList<>();
    JSON.readTree(answer.body())
        .path("events")
        .forEach(e -> outcomes.add(e.get("outcome").asText() + e.path("cause").asText("")));
    return "Told: " + (outcomes.isEmpty() ? answer.body() : String.join(", ", outcomes)) + ".";
  }

  private static JsonNode pick(JsonNode list, Predicate<JsonNode> wanted) {
    for (JsonNode each : list) {
      if (wanted.test(each)) {
        return each;
      }
    }
    throw new IllegalStateException("none of " + list.size());
  }

  private OffsetDateTime now() throws IOException, InterruptedException {
    JsonNode checks =
        JSON.readTree(service.send(service.request("/q/health/live")).body()).get("checks");
    String now = pick(checks, c -> c.get("name").asText().equals("clock")).at("/data/now").asText();
    return OffsetDateTime.parse(now).atZoneSameInstant(ZONE).toOffsetDateTime().withNano(0);
  }

  private void awaitTime(String time) throws IOException, InterruptedException {
    OffsetDateTime wanted = OffsetDateTime.parse(time);
    while (now().isBefore(wanted)) {
      Thread.sleep(100);
    }
  }

  private void say(String what, Object... with) throws IOException, InterruptedException {
    System.out.println(WALL.format(now()) + " " + what.formatted(with));
  }

  private static String wall(String time) {
    return time == null ? "-" : WALL.format(OffsetDateTime.parse(time));
  }

  private HttpRequest.Builder request(String path) {
    return service.request(PLANT + path).header("Content-Type", "application/json");
  }

  private static HttpRequest.BodyPublisher body(String text) {
    return BodyPublishers.ofString(text);
  }

  private HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return service.send(request);
  }

  private JsonNode get(String path) throws IOException, InterruptedException {
    HttpResponse<String> answer = send(request(path));
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(path + " answered " + answer.body());
    }
    return JSON.readTree(answer.body());
  }
}
