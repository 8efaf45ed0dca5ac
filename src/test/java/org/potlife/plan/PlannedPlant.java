package org.potlife.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.time.Duration;
import java.util.List;
import org.potlife.order.Order;
import org.potlife.platform.Api;
import org.potlife.platform.json.JsonSettings;
import org.potlife.shop.Shop;

/** A plant of its own with the shop and orders of {@link PlanFixture}, seen through the API. */
public final class PlannedPlant {

  private static final ObjectMapper MAPPER = JsonSettings.newMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(40);

  private final Api api = Api.withoutShop();

  private PlannedPlant() {}

  /** A plant with all orders. */
  public static PlannedPlant ready() {
    return ready(PlanFixture.shop().name());
  }

  /** A plant with all orders and this name. */
  public static PlannedPlant ready(String name) {
    PlannedPlant plant = new PlannedPlant();
    Shop s = PlanFixture.shop();
    Shop named =
        new Shop(
            name,
            s.timeZone(),
            s.currency(),
            s.presses(),
            s.dryers(),
            s.screenRoom(),
            s.inkRoom(),
            s.inkSystems(),
            s.inks(),
            s.cloth(),
            s.settings());
    plant.api.put(plant.api.shop(), json(named)).then().statusCode(201);
    PlanFixture.orders().forEach(plant::put);
    return plant;
  }

  public String id() {
    return api.plant();
  }

  public Api api() {
    return api;
  }

  /** Puts an order. */
  public void put(Order order) {
    int status = api.put(api.order(order.reference()), json(order)).statusCode();
    assertThat(status).isIn(200, 201);
  }

  public String plans() {
    return "/api/v1/plants/" + id() + "/plans";
  }

  /** Asks for a plan of the fixture's day. */
  public Response request(int solveSeconds) {
    return request("{\"day\":\"" + PlanFixture.DAY + "\",\"solveSeconds\":" + solveSeconds + "}");
  }

  public Response request(String body) {
    return api.post(plans(), body);
  }

  /** The id of a draft. */
  public String draft() {
    String id = request(1).then().statusCode(202).extract().path("id");
    assertThat(await(id).getString("state")).isEqualTo("draft");
    return id;
  }

  /** The id of a plan in force. */
  public String published() {
    String id = draft();
    publish(id).then().statusCode(200);
    return id;
  }

  public Response publish(String id) {
    return api.post(plans() + "/" + id + "/publication", "");
  }

  public JsonPath get(String id) {
    return api.get(plans() + "/" + id).then().statusCode(200).extract().jsonPath();
  }

  /** The plan once it is no longer being solved. */
  public JsonPath await(String id) {
    return await(id, List.of("draft", "published", "superseded", "failed"));
  }

  /** The plan once it is in one of these states. */
  public JsonPath await(String id, List<String> states) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    JsonPath plan = get(id);
    while (!states.contains(plan.getString("state")) && System.nanoTime() < end) {
      pause();
      plan = get(id);
    }
    return plan;
  }

  /** A moment's rest between two looks. */
  public static void pause() {
    try {
      Thread.sleep(100);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String json(Object value) {
    try {
      return MAPPER.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
