package org.potlife.shop;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.potlife.Documents;
import org.potlife.platform.Api;
import org.potlife.platform.Rows;

@QuarkusTest
class ShopApiTest {

  @Inject Rows rows;

  @Test
  void aPlantIsSetUpOnceAndReadBackWithItsDefaults() {
    Api api = Api.withoutShop();
    Response made = api.put(api.shop(), Documents.SHOP);
    assertThat(made.statusCode()).isEqualTo(201);
    assertThat(made.header("ETag")).isEqualTo("\"1\"");
    Response read = api.get(api.shop());
    assertThat(read.header("ETag")).isEqualTo("\"1\"");
    assertThat(read.jsonPath().getString("currency")).isEqualTo("EUR");
    assertThat(read.jsonPath().getString("presses[0].shifts[0].from")).startsWith("06:00");
    assertThat(read.jsonPath().getString("timeZone")).isEqualTo("Europe/Berlin");
    assertThat(api.get(api.shop(), "If-None-Match", "\"1\"").statusCode()).isEqualTo(304);
  }

  @Test
  void aChangeNeedsTheVersionThatItChanges() {
    Api api = Api.withShop();
    String changed = Documents.bent(Documents.SHOP, "Small shop", "Smaller shop");
    assertThat(api.put(api.shop(), changed).statusCode()).isEqualTo(428);
    assertThat(api.put(api.shop(), changed, "If-Match", "\"2\"").statusCode()).isEqualTo(412);
    assertThat(api.put(api.shop(), changed, "If-None-Match", "*").statusCode()).isEqualTo(412);
    assertThat(rows.dataStamp(api.plant())).isEqualTo(1);

    Response stored = api.put(api.shop(), changed, "If-Match", "\"1\"");
    assertThat(stored.statusCode()).isEqualTo(200);
    assertThat(stored.header("ETag")).isEqualTo("\"2\"");
    assertThat(rows.dataStamp(api.plant())).isEqualTo(2);
    assertThat(api.get(api.shop()).jsonPath().getString("name")).isEqualTo("Smaller shop");
  }

  @Test
  void theSameSetUpAgainChangesNothing() {
    Api api = Api.withShop();
    Response again = api.put(api.shop(), Documents.SHOP, "If-Match", "\"1\"");
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.header("ETag")).isEqualTo("\"1\"");
    assertThat(rows.dataStamp(api.plant())).isEqualTo(1);
  }

  @Test
  void whatIsReadCanBeWrittenBack() {
    Api api = Api.withShop();
    String read = api.get(api.shop()).asString();
    assertThat(api.put(api.shop(), read, "If-Match", "\"1\"").header("ETag")).isEqualTo("\"1\"");
  }

  @Test
  void aPlantThatIsNotThereHasNoVersionToMatch() {
    Api api = Api.withoutShop();
    assertThat(api.put(api.shop(), Documents.SHOP, "If-Match", "*").statusCode()).isEqualTo(412);
    assertThat(api.get(api.shop()).statusCode()).isEqualTo(404);
    assertThat(api.put("/api/v1/plants/-x/shop", Documents.SHOP).statusCode()).isEqualTo(400);
  }

  @Test
  void anInkThatOpenOrdersUseMayBeTakenAway() {
    Api api = Api.withShop();
    api.put(api.order("HC-2041"), Documents.ORDER).then().statusCode(201);
    String without =
        Documents.SHOP
            .replace("\"id\":\"brick\"", "\"id\":\"rust\"")
            .replace("\"ink\":\"brick\"", "\"ink\":\"rust\"");
    assertThat(api.put(api.shop(), without, "If-Match", "\"1\"").statusCode()).isEqualTo(200);
    assertThat(api.get(api.order("HC-2041")).statusCode()).isEqualTo(200);
  }

  static Stream<Arguments> wrongSetUps() {
    return Stream.of(
        wrong("recipe of 97 %", "\"percent\":88", "\"percent\":85", "/inks/0/recipe"),
        wrong("unknown time zone", "Europe/Berlin", "Europe/Atlantis", "/timeZone"),
        wrong(
            "unknown day",
            "\"days\":[\"MONDAY\"",
            "\"days\":[\"MON\"",
            "/presses/0/shifts/0/days/0"),
        wrong(
            "25 o'clock",
            "\"from\":\"09:00\"",
            "\"from\":\"25:00\"",
            "/presses/0/shifts/0/breaks/0/from"),
        wrong(
            "no presses", "\"presses\":[", "\"presses\":[],\"screens\":[", "/presses", "/screens"),
        wrong("unknown dryer", "\"dryer\":\"D1\"", "\"dryer\":\"D2\"", "/presses/0/dryer"));
  }

  private static Arguments wrong(String name, String passage, String instead, String... pointers) {
    return Arguments.of(name, Documents.bent(Documents.SHOP, passage, instead), pointers);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongSetUps")
  void aWrongSetUpIsNamedAndNoPlantIsMade(String name, String body, String... pointers) {
    Api api = Api.withoutShop();
    Response refused = api.put(api.shop(), body);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    assertThat(Api.pointers(refused)).contains(pointers);
    assertThat(rows.dataStamp(api.plant())).isZero();
  }
}
