package org.potlife.order.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.order.Order;
import org.potlife.order.OrderCheck;
import org.potlife.order.OrderTable;
import org.potlife.order.OrderTable.Wrong;
import org.potlife.platform.access.Roles;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Reads a table of orders before it is sent: nothing is stored. */
@Path("/api/v1/plants/{plant}/order-table")
@Tag(name = "orders")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Roles.PLANNER, Roles.ERP})
public class OrderTableResource {

  private final Shops shops;
  private final Bodies bodies;
  private final ObjectMapper mapper;

  @Inject
  OrderTableResource(Shops shops, Bodies bodies, ObjectMapper mapper) {
    this.shops = shops;
    this.bodies = bodies;
    this.mapper = mapper;
  }

  /**
   * What the table says.
   *
   * @param orders the orders as they would be sent
   * @param wrong what is wrong, by row; empty when all can be taken
   */
  public record Preview(JsonNode orders, List<Wrong> wrong) {}

  @POST
  @Consumes("text/csv")
  @Operation(
      summary = "Reads a table of orders and says what is wrong, row by row; stores nothing",
      description =
          "One row per print. Send orders to /orders when wrong is empty. A colour is written"
              + " ink:coverage:mesh-thread, colours are separated by |.")
  public Preview preview(@PathParam("plant") String plant, @RequestBody byte[] body) {
    Shop shop = shops.getShop(plant).shop();
    String csv = new String(body == null ? new byte[0] : body, StandardCharsets.UTF_8);
    OrderTable table = OrderTable.read(csv, shop.timeZone());
    List<Wrong> wrong = new ArrayList<>(table.wrong());
    JsonNode orders = table.orders();
    try {
      bodies.readList(
          mapper.writeValueAsBytes(orders), Order.class, list -> OrderCheck.checkAll(list, shop));
    } catch (ProblemException e) {
      e.problem().errors().stream()
          .map(table::locate)
          .filter(found -> table.wrong().stream().noneMatch(found::isAt))
          .forEach(wrong::add);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
    wrong.sort(Comparator.comparingInt(Wrong::row).thenComparing(Wrong::column));
    return new Preview(orders, wrong.stream().distinct().toList());
  }
}
