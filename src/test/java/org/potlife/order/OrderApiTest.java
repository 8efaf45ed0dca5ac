package org.potlife.order;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.potlife.Documents;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

@QuarkusTest
class OrderApiTest {

  @Inject Rows rows;

  @Test
  void anOrderIsPlacedOnceAndReadBackWithItsDefaults() {
    Api api = Api.withShop();
    Response placed = api.put(api.order("HC-2041"), Documents.ORDER);
    assertThat(placed.statusCode()).isEqualTo(201);
    assertThat(placed.header("ETag")).isEqualTo("\"1\"");

    var read = api.get(api.order("HC-2041")).then().statusCode(200).extract().jsonPath();
    assertThat(read.getString("dueAt")).isEqualTo("2026-12-03T14:00:00+01:00");
    assertThat(read.getString("garments.kind")).isEqualTo("shirt");
    assertThat(read.getString("state")).isEqualTo("open");
    assertThat(read.getString("prints[0].process")).isEqualTo("discharge");
  }

  @Test
  void theSameBodyAgainIsNoChangeAndNoEvent() {
    Api api = Api.withShop();
    api.put(api.order("HC-2041"), Documents.ORDER).then().statusCode(201);
    long stamp = rows.dataStamp(api.plant());

    Response again = api.put(api.order("HC-2041"), Documents.ORDER);

    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.header("ETag")).isEqualTo("\"1\"");
    assertThat(rows.events(api.plant())).isEqualTo(1);
    assertThat(rows.dataStamp(api.plant())).isEqualTo(stamp);
  }

  @Test
  void aChangeMovesVersionEventAndDataStamp() {
    Api api = Api.withShop();
    api.put(api.order("HC-2041"), Documents.ORDER);
    long stamp = rows.dataStamp(api.plant());

    Response changed =
        api.put(
            api.order("HC-2041"),
            Documents.bent(Documents.ORDER, "\"quantity\":240", "\"quantity\":250"));

    assertThat(changed.statusCode()).isEqualTo(200);
    assertThat(changed.header("ETag")).isEqualTo("\"2\"");
    assertThat(rows.events(api.plant())).isEqualTo(2);
    assertThat(rows.dataStamp(api.plant())).isEqualTo(stamp + 1);
  }

  @Test
  void preconditionsAreHonouredWhenGiven() {
    Api api = Api.withShop();
    String path = api.order("HC-2041");
    String other = Documents.bent(Documents.ORDER, "\"priority\":2", "\"priority\":1");
    assertThat(api.put(path, Documents.ORDER, "If-Match", "\"1\"").statusCode()).isEqualTo(412);
    assertThat(api.put(path, Documents.ORDER, "If-None-Match", "*").statusCode()).isEqualTo(201);
    assertThat(api.put(path, other, "If-None-Match", "*").statusCode()).isEqualTo(412);
    assertThat(api.put(path, other, "If-Match", "\"7\"").statusCode()).isEqualTo(412);
    assertThat(api.put(path, other, "If-Match", "W/\"1\"").statusCode()).isEqualTo(412);
    assertThat(api.put(path, other, "If-Match", "\"9\", \"1\"").statusCode()).isEqualTo(200);
    assertThat(api.delete(path, "If-Match", "\"1\"").statusCode()).isEqualTo(412);
    assertThat(api.delete(path, "If-Match", "*").statusCode()).isEqualTo(204);
  }

  @Test
  void aCancelledOrderStaysReadableAndCanBePlacedAgain() {
    Api api = Api.withShop();
    String path = api.order("HC-2041");
    api.put(path, Documents.ORDER);
    assertThat(api.delete(path).statusCode()).isEqualTo(204);
    assertThat(api.delete(path).statusCode()).isEqualTo(204);
    assertThat(rows.events(api.plant())).isEqualTo(2);
    assertThat(api.get(path).jsonPath().getString("state")).isEqualTo("cancelled");

    Response again = api.put(path, Documents.ORDER);
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.header("ETag")).isEqualTo("\"3\"");
    assertThat(again.jsonPath().getString("state")).isEqualTo("open");
  }

  @Test
  void anOrderWhosePrintingHasStartedIsNotCancelled() {
    Api api = Api.withShop();
    String path = api.order("HC-2041");
    api.put(path, Documents.ORDER);
    rows.change("update customer_order set state = 'started' where plant = ?", api.plant());
    Response refused = api.delete(path);
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    assertThat(api.get(path).jsonPath().getString("state")).isEqualTo("started");
  }

  @Test
  void whatIsNotThereIsNotFound() {
    Api api = Api.withShop();
    Api nowhere = Api.withoutShop();
    for (Response response :
        List.of(
            api.get(api.order("none")),
            api.delete(api.order("none")),
            api.get(api.order("a%00b")),
            api.get("/api/v1/plants/a%00b/shop"),
            nowhere.get(nowhere.order("none")),
            nowhere.get(nowhere.orders()),
            nowhere.delete(nowhere.order("none")),
            nowhere.post(nowhere.orders(), "[]", "Idempotency-Key", "k"),
            nowhere.put(nowhere.order("HC-2041"), Documents.ORDER))) {
      assertThat(response.statusCode()).isEqualTo(404);
      assertThat(response.contentType()).startsWith("application/problem+json");
      assertThat(response.jsonPath().getString("type")).isEqualTo("urn:potlife:problem:not-found");
    }
  }

  @Test
  void ordersAreListedByDueDatePageByPage() {
    Api api = Api.withShop();
    IntStream.rangeClosed(1, 5)
        .forEach(
            i ->
                api.put(
                        api.order("O-" + i),
                        Documents.order("O-" + i)
                            .replace("2026-12-03T14", "2026-12-0" + (9 - i / 2) + "T14"))
                    .then()
                    .statusCode(201));
    api.delete(api.order("O-5"));
    var first = api.get(api.orders() + "?state=open&limit=2").jsonPath();
    assertThat(first.getList("orders.reference")).isEqualTo(List.of("O-4", "O-2"));
    var second =
        api.get(api.orders() + "?state=open&limit=2&cursor=" + first.getString("next")).jsonPath();
    assertThat(second.getList("orders.reference")).isEqualTo(List.of("O-3", "O-1"));
    var third =
        api.get(api.orders() + "?state=open&limit=2&cursor=" + second.getString("next")).jsonPath();
    assertThat(third.getList("orders")).isEmpty();
    assertThat(third.getString("next")).isNull();
    assertThat(
            api.get(api.orders() + "?dueBefore=2026-12-08T14:00:00%2B01:00")
                .jsonPath()
                .getList("orders.reference"))
        .isEqualTo(List.of("O-4", "O-5"));
  }

  @Test
  void aQueryThatIsNotUnderstoodIsRefused() {
    Api api = Api.withShop();
    for (String query :
        List.of(
            "state=new",
            "limit=0",
            "limit=x",
            "limit=501",
            "dueBefore=2026-12-01",
            "cursor=x%00")) {
      assertThat(api.get(api.orders() + "?" + query).statusCode()).as(query).isEqualTo(400);
    }
  }

  @Test
  void manyOrdersAreStoredOnceHoweverOftenTheyAreSent() {
    Api api = Api.withShop();
    String body = "[" + Documents.order("A-1") + "," + Documents.order("A-2") + "]";
    Response first = api.post(api.orders(), body, "Idempotency-Key", "k1");
    Response again = api.post(api.orders(), body, "Idempotency-Key", "k1");

    assertThat(first.statusCode()).isEqualTo(200);
    assertThat(first.jsonPath().getList("orders.outcome")).isEqualTo(List.of("placed", "placed"));
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.asString()).isEqualTo(first.asString());
    assertThat(again.contentType()).startsWith("application/json");
    assertThat(rows.events(api.plant())).isEqualTo(2);
  }

  @Test
  void aKeyIsForOneBodyOnlyAndMustBeGiven() {
    Api api = Api.withShop();
    String body = "[" + Documents.ORDER + "]";
    assertThat(api.post(api.orders(), body).statusCode()).isEqualTo(400);
    assertThat(api.post(api.orders(), body, "Idempotency-Key", "k1").statusCode()).isEqualTo(200);
    assertThat(
            api.post(api.orders(), "[" + Documents.order("B") + "]", "Idempotency-Key", "k1")
                .statusCode())
        .isEqualTo(422);
    assertThat(rows.orders(api.plant())).isEqualTo(1);
  }

  @Test
  void ofManyOrdersAllOrNoneAreStored() {
    Api api = Api.withShop();
    String body =
        "["
            + Documents.order("A-1")
            + ","
            + Documents.order("A-2").replace("\"quantity\":240", "\"quantity\":0")
            + ","
            + Documents.order("A-1").replace("\"brick\"", "\"blood\"")
            + "]";
    Response refused = api.post(api.orders(), body, "Idempotency-Key", "k1");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(refused))
        .containsExactlyInAnyOrder(
            "/1/garments/quantity", "/2/reference", "/2/prints/0/colours/0/ink");
    assertThat(rows.orders(api.plant())).isZero();
    assertThat(rows.events(api.plant())).isZero();
    assertThat(rows.keys(api.plant())).isZero();
  }

  @Test
  void whatThePlanWouldListAsUnplacedIsTaken() {
    Api api = Api.withShop();
    String colour = "{\"ink\":\"brick\",\"coveragePercent\":22,\"meshPerCm\":43,\"threadUm\":80}";
    String many = String.join(",", java.util.Collections.nCopies(20, colour));
    assertThat(
            api.put(api.order("HC-2041"), Documents.bent(Documents.ORDER, colour, many))
                .statusCode())
        .isEqualTo(201);
    assertThat(
            api.put(
                    api.order("PAST"),
                    Documents.order("PAST").replace("2026-12-03T14", "2020-12-03T14"))
                .statusCode())
        .isEqualTo(201);
    assertThat(
            api.put(
                    api.order("POLY"),
                    Documents.order("POLY").replace("\"cottonPercent\":100", "\"cottonPercent\":0"))
                .statusCode())
        .isEqualTo(201);
  }

  @Test
  void manyWritersOfOneOrderLeaveOneOrderAndNoGap() throws Exception {
    Api api = Api.withShop();
    var pool = java.util.concurrent.Executors.newFixedThreadPool(8);
    try {
      var answers =
          IntStream.range(0, 24)
              .mapToObj(
                  i ->
                      pool.submit(
                          () ->
                              api.put(
                                      api.order("HC-2041"),
                                      Documents.ORDER.replace(
                                          "\"quantity\":240", "\"quantity\":" + (100 + i)))
                                  .statusCode()))
              .toList();
      for (var answer : answers) {
        assertThat(answer.get()).isIn(200, 201);
      }
    } finally {
      pool.shutdown();
    }
    assertThat(api.get(api.order("HC-2041")).header("ETag")).isEqualTo("\"24\"");
    assertThat(rows.events(api.plant())).isEqualTo(24);
  }
}
