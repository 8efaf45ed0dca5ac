package org.potlife.platform;

import static io.restassured.RestAssured.given;

import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.potlife.Documents;

/** The API as a client sees it, on a plant of its own per instance. */
public final class Api {

  private final String plant = "t" + UUID.randomUUID().toString().substring(0, 8);

  /** A new plant with the small shop. */
  public static Api withShop() {
    Api api = new Api();
    api.put(api.shop(), Documents.SHOP).then().statusCode(201);
    return api;
  }

  /** A plant that does not exist yet. */
  public static Api withoutShop() {
    return new Api();
  }

  public String plant() {
    return plant;
  }

  public String shop() {
    return "/api/v1/plants/" + plant + "/shop";
  }

  public String orders() {
    return "/api/v1/plants/" + plant + "/orders";
  }

  public String order(String reference) {
    return orders() + "/" + reference;
  }

  public Response put(String path, String body, String... headers) {
    return given().headers(map(headers)).contentType(ContentType.JSON).body(body).put(path);
  }

  public Response post(String path, String body, String... headers) {
    return given().headers(map(headers)).contentType(ContentType.JSON).body(body).post(path);
  }

  public Response get(String path, String... headers) {
    return given().urlEncodingEnabled(false).headers(map(headers)).get(path);
  }

  public Response delete(String path, String... headers) {
    return given().headers(map(headers)).delete(path);
  }

  /** The pointers of a problem document. */
  public static List<String> pointers(Response response) {
    return response.jsonPath().getList("errors.pointer");
  }

  private static Map<String, String> map(String... headers) {
    Map<String, String> map = new LinkedHashMap<>();
    for (int i = 0; i < headers.length; i += 2) {
      map.put(headers[i], headers[i + 1]);
    }
    return map;
  }
}
