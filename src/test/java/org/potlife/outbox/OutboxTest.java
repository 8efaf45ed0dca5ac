package org.potlife.outbox;

import static org.assertj.core.api.Assertions.assertThat;

import io.cloudevents.CloudEvent;
import io.cloudevents.core.provider.EventFormatProvider;
import io.cloudevents.jackson.JsonFormat;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.potlife.Documents;
import org.potlife.outbox.Listener.Heard;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.PlannedPlant;
import org.potlife.plan.ScriptedPlanner;
import org.potlife.plan.SettableClock;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** What others are told, as they hear it on the stream. */
@QuarkusTest
class OutboxTest {

  @TestHTTPResource("/")
  URI root;

  @Inject Rows rows;

  private final List<Listener> listeners = new ArrayList<>();

  @AfterEach
  void hangUp() throws Exception {
    for (Listener each : listeners) {
      each.close();
    }
    SettableClock.release();
  }

  private String stream(String plant, String query) {
    return root + "api/v1/plants/" + plant + "/events/stream" + query;
  }

  /** Everything from the beginning. */
  private Listener all(String plant) throws Exception {
    return listen(plant, "", "0");
  }

  private Listener listen(String plant, String query, String lastEventId) throws Exception {
    Listener listener = Listener.to(stream(plant, query), lastEventId);
    listeners.add(listener);
    return listener;
  }

  private static JsonPath last(List<Heard> heard) {
    return JsonPath.from(heard.get(heard.size() - 1).data());
  }

  @Test
  void anOrderIsToldWithItsChangeAndARefusedOneIsNot() throws Exception {
    Api api = Api.withShop();
    Listener listener = all(api.plant());

    api.put(api.order("HC-2041"), Documents.ORDER).then().statusCode(201);
    api.put(api.order("HC-2041"), Documents.ORDER).then().statusCode(200);
    api.put(api.order("HC-2042"), Documents.ORDER).then().statusCode(422);
    api.post(
            api.orders(),
            "[" + Documents.order("A-1") + "," + Documents.order("A-2").replace("240", "-1") + "]",
            "Idempotency-Key",
            "k1")
        .then()
        .statusCode(422);
    api.delete(api.order("HC-2041")).then().statusCode(204);

    List<Heard> heard = listener.await(h -> h.size() == 2);
    assertThat(listener.types()).containsExactly("order.placed", "order.cancelled");
    assertThat(heard).extracting(Heard::id).containsExactly("1", "2");
    assertThat(last(heard).getString("data.reference")).isEqualTo("HC-2041");
    assertThat(last(heard).getString("data.state")).isEqualTo("cancelled");
    assertThat(last(heard).getString("source")).isEqualTo("/plants/" + api.plant() + "/orders");
  }

  @Test
  void numbersHaveNoGapAndEveryListenerHearsThemInOrderWhoeverWritesAtTheSameTime()
      throws Exception {
    Api api = Api.withShop();
    Listener live = all(api.plant());
    int writers = 8;
    int each = 12;

    ExecutorService shop = Executors.newFixedThreadPool(writers);
    List<CompletableFuture<Void>> written = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      String name = "W" + w + "-";
      written.add(
          CompletableFuture.runAsync(
              () -> {
                for (int i = 0; i < each; i++) {
                  api.put(api.order(name + i), Documents.order(name + i)).then().statusCode(201);
                }
              },
              shop));
    }
    written.forEach(CompletableFuture::join);
    shop.shutdown();

    List<String> wanted =
        LongStream.rangeClosed(1, writers * each).mapToObj(String::valueOf).toList();
    assertThat(live.await(h -> h.size() >= wanted.size())).extracting(Heard::id).isEqualTo(wanted);
    Listener late = all(api.plant());
    assertThat(late.await(h -> h.size() >= wanted.size()))
        .extracting(Heard::data)
        .isEqualTo(live.heard().stream().map(Heard::data).toList());
  }

  @Test
  void aPublicationTellsThePlanAndWhatItPromisesAndTheNextOnlyWhatDiffers() throws Exception {
    SettableClock.set(PlanFixture.at(PlanFixture.DAY.minusDays(1), "16:30"));
    PlannedPlant plant = PlannedPlant.ready();
    Listener listener = listen(plant.id(), "?types=plan.*,promise.changed", null);

    String first = plant.published();
    int promised = plant.get(first).getList("runs.order").stream().distinct().toList().size() + 1;
    List<Heard> heard = listener.await(h -> h.size() == 2 + promised);

    assertThat(listener.types()).startsWith("plan.drafted", "plan.published", "promise.changed");
    Heard late =
        heard.stream().filter(h -> h.data().contains("\"subject\":\"LR-77\"")).findFirst().get();
    JsonPath promise = JsonPath.from(late.data());
    assertThat(promise.getString("data.plan")).isEqualTo(first);
    assertThat(promise.getString("data.plannedFinish")).isEqualTo("2026-12-01T12:40:00+01:00");
    assertThat(promise.getInt("data.lateMinutes")).isEqualTo(40);
    assertThat(promise.getMap("data.before")).isNull();

    String second = plant.published();
    heard = listener.await(h -> h.size() == 4 + promised);
    assertThat(last(heard).getString("type")).isEqualTo("org.potlife.plan.published");
    assertThat(last(heard).getString("data.plan")).isEqualTo(second);
    assertThat(last(heard).getString("data.supersedes")).isEqualTo(first);

    // what was told before of one order was something else
    rows.change(
        "update promise_told set late_minutes = 5, planned_finish = planned_finish"
            + " - interval '35 minutes' where reference = 'LR-77' and plant = ?",
        plant.id());
    plant.published();
    heard = listener.await(h -> h.size() == 7 + promised);
    assertThat(last(heard).getString("data.order")).isEqualTo("LR-77");
    assertThat(last(heard).getInt("data.before.lateMinutes")).isEqualTo(5);
    assertThat(last(heard).getString("data.before.plannedFinish"))
        .isEqualTo("2026-12-01T12:05:00+01:00");
  }

  @Test
  void aPlanThatFailedIsToldWithItsCause() throws Exception {
    PlannedPlant plant = PlannedPlant.ready();
    Listener listener = listen(plant.id(), "?types=plan.failed", null);

    plant.request("{\"seed\":" + ScriptedPlanner.UNLUCKY + "}").then().statusCode(202);

    List<Heard> heard = listener.await(h -> h.size() == 1);
    assertThat(last(heard).getString("data.failure")).contains("nothing fits anywhere");
  }

  @Test
  void whatWasTakenInGoesOutUnderTheNameThatItsSourceGaveIt() throws Exception {
    Api api = Api.withShop();
    Listener listener = all(api.plant());
    String reading =
        """
        {"specversion":"1.0","id":"r-1","source":"/sensors/c1",
         "type":"org.potlife.climate.reading",
         "data":{"room":"C1","temperatureC":30.50,"humidityPercent":35}}
        """;
    String events = "/api/v1/plants/" + api.plant() + "/events";

    api.post(events, reading).then().statusCode(200);
    api.post(events, reading).then().statusCode(200);
    api.post(
            events,
            reading
                .replace("r-1", "r-2")
                .replaceFirst("\"data\":.*", "\"data\":{\"screen\":\"nobody-1\",\"dry\":true}}")
                .replace("climate.reading", "emulsion.reading"))
        .then()
        .statusCode(200);
    api.post(events, reading.replace("r-1", "r-3")).then().statusCode(200);

    List<Heard> heard = listener.await(h -> h.size() >= 2);
    assertThat(heard)
        .extracting(h -> JsonPath.from(h.data()).getString("id"))
        .containsExactly("r-1", "r-3");
    assertThat(last(heard).getString("source")).isEqualTo("/sensors/c1");
    assertThat(last(heard).getFloat("data.temperatureC")).isEqualTo(30.5f);
  }

  @Test
  void anOrderThatAnEventTellsOfIsToldAsAnyOther() throws Exception {
    Api api = Api.withShop();
    Listener listener = all(api.plant());
    String placed =
        "{\"specversion\":\"1.0\",\"id\":\"e-1\",\"source\":\"/web-shop\","
            + "\"type\":\"org.potlife.order.placed\",\"data\":"
            + Documents.ORDER
            + "}";

    api.post("/api/v1/plants/" + api.plant() + "/events", placed).then().statusCode(200);
    api.delete(api.order("HC-2041")).then().statusCode(204);

    List<Heard> heard = listener.await(h -> h.size() >= 2);
    assertThat(listener.types()).containsExactly("order.placed", "order.cancelled");
    assertThat(heard)
        .extracting(h -> JsonPath.from(h.data()).getString("source"))
        .containsOnly("/plants/" + api.plant() + "/orders");
  }

  @Test
  void anotherReaderOfTheStandardReadsEveryEvent() throws Exception {
    // CloudEvents 1.0.2 as read by the standard's own Java SDK
    SettableClock.set(PlanFixture.at(PlanFixture.DAY.minusDays(1), "16:30"));
    PlannedPlant plant = PlannedPlant.ready();
    plant.published();
    List<Heard> heard =
        all(plant.id()).await(h -> h.stream().anyMatch(e -> e.type().equals("promise.changed")));

    for (Heard each : heard) {
      CloudEvent event =
          EventFormatProvider.getInstance()
              .resolveFormat(JsonFormat.CONTENT_TYPE)
              .deserialize(each.data().getBytes(StandardCharsets.UTF_8));
      assertThat(event.getType()).startsWith("org.potlife.");
      assertThat(event.getTime()).isNotNull();
      assertThat(event.getExtension("sequence"))
          .isEqualTo("%019d".formatted(Long.parseLong(each.id())));
      assertThat(event.getExtension("plant")).isEqualTo(plant.id());
      assertThat(event.getData()).isNotNull();
    }
    assertThat(heard)
        .extracting(
            h -> JsonPath.from(h.data()).getString("source") + JsonPath.from(h.data()).get("id"))
        .doesNotHaveDuplicates();
  }

  @Test
  void aListenerThatComesBackHearsWhatItMissed() throws Exception {
    Api api = Api.withShop();
    for (String reference : List.of("A", "B", "C", "D")) {
      api.put(api.order(reference), Documents.order(reference)).then().statusCode(201);
    }

    Listener byHeader = listen(api.plant(), "?lastEventId=0", "2");
    Listener byQuery = listen(api.plant(), "?lastEventId=3", null);
    Listener fresh = listen(api.plant(), "", null);
    api.put(api.order("E"), Documents.order("E")).then().statusCode(201);

    assertThat(byHeader.await(h -> h.size() == 3)).extracting(Heard::id).contains("3", "4", "5");
    assertThat(byQuery.await(h -> h.size() == 2)).extracting(Heard::id).contains("4", "5");
    assertThat(fresh.await(h -> h.size() == 1)).extracting(Heard::id).containsExactly("5");
  }

  @Test
  void aListenerIsToldWhatItMissedForGood() throws Exception {
    Api api = Api.withShop();
    for (String reference : List.of("A", "B", "C", "D")) {
      api.put(api.order(reference), Documents.order(reference)).then().statusCode(201);
    }
    rows.change("delete from outbox_event where seq < 3 and plant = ?", api.plant());

    List<Heard> late = listen(api.plant(), "", "1").await(h -> h.size() == 3);
    List<Heard> inTime = listen(api.plant(), "", "2").await(h -> h.size() == 2);
    Listener ahead = listen(api.plant(), "", "9");
    List<Heard> unknown = ahead.await(h -> h.size() == 1);

    assertThat(late.get(0).name()).isEqualTo("gap");
    assertThat(late.get(0).data())
        .isEqualTo("{\"missedFrom\":2,\"missedTo\":2,\"reason\":\"expired\"}");
    assertThat(late).extracting(Heard::id).endsWith("3", "4");
    assertThat(inTime).extracting(Heard::name).containsOnly("message");
    assertThat(unknown.get(0).data())
        .isEqualTo("{\"missedFrom\":5,\"missedTo\":9,\"reason\":\"unknown\"}");
    while (!ahead.lastId().equals("4")) {
      PlannedPlant.pause();
    }
  }

  @Test
  void whoHearsOnlySomeTypesStillGoesOnFromTheNewestNumber() throws Exception {
    Api api = Api.withShop();
    Listener plans = listen(api.plant(), "?types=org.potlife.plan.published", null);

    api.put(api.order("A"), Documents.order("A")).then().statusCode(201);
    while (!plans.lastId().equals("1")) {
      PlannedPlant.pause();
    }

    assertThat(plans.heard()).isEmpty();
  }

  @Test
  void aStreamThatCannotBeIsRefused() throws Exception {
    Api api = Api.withShop();

    assertThat(Listener.open(stream("nowhere", ""), null).statusCode()).isEqualTo(404);
    assertThat(Listener.open(stream(api.plant(), ""), "yesterday").statusCode()).isEqualTo(400);
    assertThat(Listener.open(stream(api.plant(), "?types=PLAN"), null).statusCode()).isEqualTo(400);
  }
}
