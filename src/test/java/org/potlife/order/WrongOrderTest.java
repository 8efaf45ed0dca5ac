package org.potlife.order;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.potlife.Documents;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

/** Every kind of wrong input, with the status and the pointers that its sender gets. */
@QuarkusTest
class WrongOrderTest {

  @Inject Rows rows;

  static Stream<Arguments> wrongValues() {
    return Stream.of(
        wrong("unknown ink", "\"brick\"", "\"blood\"", "/prints/0/colours/0/ink"),
        wrong("zero quantity", "\"quantity\":240", "\"quantity\":0", "/garments/quantity"),
        wrong(
            "300 % coverage",
            "\"coveragePercent\":22",
            "\"coveragePercent\":300",
            "/prints/0/colours/0/coveragePercent"),
        wrong("fewer blanks", "\"blanks\":252", "\"blanks\":200", "/garments/blanks"),
        wrong("unknown field", "\"priority\":2", "\"prio\":2", "/prio"),
        wrong("odd field", "\"priority\":2", "\"a/b~c\":2", "/a~1b~0c"),
        wrong("NUL", "Harbour Choir", "Harbour\\u0000Choir", "/customer"),
        wrong("half a surrogate pair", "Harbour Choir", "Harbour\\ud800Choir", "/customer"),
        wrong("huge number", "\"massG\":190", "\"massG\":1e999", "/garments/massG"),
        wrong(
            "huge decimal",
            "\"coveragePercent\":22",
            "\"coveragePercent\":1e999",
            "/prints/0/colours/0/coveragePercent"),
        wrong("above int", "\"massG\":190", "\"massG\":99999999999", "/garments/massG"),
        wrong("text for number", "\"massG\":190", "\"massG\":\"190\"", "/garments/massG"),
        wrong("decimal for whole", "\"massG\":190", "\"massG\":190.5", "/garments/massG"),
        wrong("number for text", "\"heavy tee\"", "7", "/garments/style"),
        wrong("object for text", "\"heavy tee\"", "{}", "/garments/style"),
        wrong(
            "text for object", "\"colours\":[{", "\"colours\":[\"brick\",{", "/prints/0/colours/0"),
        wrong("null in a list", "\"colours\":[{", "\"colours\":[null,{", "/prints/0/colours/0"),
        wrong("no offset", "14:00:00+01:00", "14:00:00", "/dueAt"),
        wrong("no date", "2026-12-03T14:00:00+01:00", "Thursday", "/dueAt"),
        wrong("year 9999", "2026-12-03T14", "9999-12-03T14", "/dueAt"),
        wrong("unknown process", "\"discharge\"", "\"foil\"", "/prints/0/process"),
        wrong("discharge without a discharge ink", "\"brick\"", "\"sky\"", "/prints/0/process"),
        wrong(
            "water-based with a discharge ink",
            "\"process\":\"discharge\",\"trialPrint\":\"passed\"",
            "\"process\":\"water-based\"",
            "/prints/0/colours/0/ink"),
        wrong(
            "trial print of a water-based print",
            "\"process\":\"discharge\"",
            "\"process\":\"water-based\"",
            "/prints/0/trialPrint",
            "/prints/0/colours/0/ink"),
        wrong("no due date", "\"dueAt\":\"2026-12-03T14:00:00+01:00\",", "", "/dueAt"),
        wrong("other reference", "HC-2041", "HC-2042", "/reference"),
        wrong("no reference", "\"reference\":\"HC-2041\",", "", "/reference"));
  }

  private static Arguments wrong(String name, String passage, String instead, String... pointers) {
    return Arguments.of(name, Documents.bent(Documents.ORDER, passage, instead), pointers);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongValues")
  void aWrongValueIsNamedAndNothingIsStored(String name, String body, String... pointers) {
    Api api = Api.withShop();
    Response refused = api.put(api.order("HC-2041"), body);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    assertThat(Api.pointers(refused)).containsExactlyInAnyOrder(pointers);
    nothingIsStored(api);
  }

  static Stream<Arguments> notJson() {
    return Stream.of(
        Arguments.of("not JSON", "reference=HC-2041"),
        Arguments.of("cut off", "{\"reference\":\"HC-2041\""),
        Arguments.of("empty", ""),
        Arguments.of("blank", "  "),
        Arguments.of("two documents", "{} {}"),
        Arguments.of("not a number", Documents.bent(Documents.ORDER, ":190", ":NaN")),
        Arguments.of(
            "key twice",
            Documents.bent(Documents.ORDER, "{\"design\"", "{\"design\":\"a\",\"design\"")),
        Arguments.of("half a pair as a name", "{\"p\\ud800\":1}"),
        Arguments.of("deep", "[".repeat(2000)),
        Arguments.of("deep objects", "{\"a\":".repeat(2000)),
        Arguments.of(
            "long number", Documents.bent(Documents.ORDER, ":190", ":" + "9".repeat(5000))),
        Arguments.of(
            "raw control character", Documents.bent(Documents.ORDER, "Harbour", "Har\u0001bour")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("notJson")
  void whatIsNotJsonIsRefusedAsSuch(String name, String body) {
    Api api = Api.withShop();
    Response refused = given().contentType(ContentType.JSON).body(body).put(api.order("HC-2041"));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(refused.jsonPath().getString("type")).isEqualTo("urn:potlife:problem:not-json");
    nothingIsStored(api);
  }

  @Test
  void aBodyOfTheWrongKindIsNamedAsAWhole() {
    Api api = Api.withShop();
    for (String body : List.of("null", "[]", "7", "\"order\"", "true")) {
      Response refused = api.put(api.order("HC-2041"), body);
      assertThat(refused.statusCode()).as(body).isEqualTo(422);
      assertThat(Api.pointers(refused)).as(body).containsExactly("");
    }
    for (String body : List.of("null", "{}", "[]", "7")) {
      Response refused = api.post(api.orders(), body, "Idempotency-Key", "k");
      assertThat(refused.statusCode()).as(body).isEqualTo(422);
    }
    Response refused = api.post(api.orders(), "[null, 7]", "Idempotency-Key", "k");
    assertThat(Api.pointers(refused)).containsExactlyInAnyOrder("/0", "/1");
    nothingIsStored(api);
  }

  @Test
  void everyOffendingFieldIsListedAtOnce() {
    Api api = Api.withShop();
    String body =
        Documents.ORDER
            .replace("\"quantity\":240", "\"quantity\":-1")
            .replace("\"massG\":190", "\"massG\":\"heavy\"")
            .replace("\"brick\"", "\"blood\"")
            .replace("\"priority\":2", "\"priority\":10,\"colour\":1")
            .replace("\"dye\":\"reactive\",", "");
    Response refused = api.put(api.order("HC-2041"), body);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Api.pointers(refused))
        .containsExactlyInAnyOrder(
            "/garments/quantity",
            "/garments/massG",
            "/prints/0/colours/0/ink",
            "/priority",
            "/colour",
            "/garments/dye");
    nothingIsStored(api);
  }

  @Test
  void aBodyOfTwentyMegabytesIsTooLarge() {
    Api api = Api.withShop();
    String body = "[\"" + "x".repeat(20_000_000) + "\"]";
    Response refused = api.post(api.orders(), body, "Idempotency-Key", "k");
    assertThat(refused.statusCode()).isEqualTo(413);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    nothingIsStored(api);
  }

  @Test
  void aBodyThatGrowsTooLargeUnannouncedIsRefusedAsWell() throws Exception {
    Api api = Api.withShop();
    byte[] chunk = "x".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
    var request =
        HttpRequest.newBuilder(
                URI.create(RestAssured.baseURI + ":" + RestAssured.port + api.orders()))
            .header("Content-Type", "application/json")
            .header("Idempotency-Key", "k")
            .POST(BodyPublishers.ofByteArrays(Collections.nCopies(160, chunk)))
            .build();
    var refused = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    assertThat(refused.statusCode()).isEqualTo(413);
    assertThat(refused.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    nothingIsStored(api);
  }

  @Test
  void bytesThatAreNotUtf8AreNotJson() {
    Api api = Api.withShop();
    byte[] latin =
        Documents.ORDER.replace("Choir", "Ch\u00f6r").getBytes(StandardCharsets.ISO_8859_1);
    Response refused =
        given().contentType("application/json").body(latin).put(api.order("HC-2041"));
    assertThat(refused.statusCode()).isEqualTo(400);
    nothingIsStored(api);
  }

  @Test
  void methodAndMediaTypesThatAreNotOfferedAreRefusedAsProblems() {
    Api api = Api.withShop();
    Response media = given().contentType("text/plain").body("x").put(api.order("A"));
    Response none = given().noContentType().body(new byte[0]).put(api.order("A"));
    Response method = given().contentType(ContentType.JSON).body("{}").patch(api.order("A"));
    Response accept = given().accept("image/png").get(api.shop());
    Response path = api.get("/api/v1/nothing/here");
    Response root = api.get("/nothing");
    assertThat(List.of(media.statusCode(), method.statusCode(), accept.statusCode()))
        .isEqualTo(List.of(415, 405, 406));
    assertThat(none.statusCode()).isIn(400, 415);
    assertThat(List.of(path.statusCode(), root.statusCode())).isEqualTo(List.of(404, 404));
    for (Response response : List.of(media, none, method, accept, path, root)) {
      assertThat(response.contentType())
          .as(response.statusLine() + response.asString())
          .startsWith("application/problem+json");
    }
  }

  private void nothingIsStored(Api api) {
    assertThat(rows.orders(api.plant())).isZero();
    assertThat(rows.events(api.plant())).isZero();
    assertThat(rows.dataStamp(api.plant())).isEqualTo(1);
  }
}
