package org.potlife.order.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.order.Order;
import org.potlife.order.OrderCheck;
import org.potlife.order.Orders;
import org.potlife.order.PromiseLookup;
import org.potlife.order.StoredOrder;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/**
 * One order. The reference stands at the methods: with two class paths of which one begins with the
 * other, a method that is not offered would be answered with 404.
 */
@Path("/api/v1/plants/{plant}/orders")
@Tag(name = "orders", description = "Orders as the ERP pushes them, and what is promised for them")
@Produces(MediaType.APPLICATION_JSON)
public class OrderResource {

  private final Shops shops;
  private final Orders orders;
  private final PromiseLookup promises;
  private final Bodies bodies;

  @Inject
  OrderResource(Shops shops, Orders orders, PromiseLookup promises, Bodies bodies) {
    this.shops = shops;
    this.orders = orders;
    this.promises = promises;
    this.bodies = bodies;
  }

  @GET
  @Path("{reference}")
  @Operation(summary = "The order with its state and its promise")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public Response get(@PathParam("plant") String plant, @PathParam("reference") String reference) {
    shops.getShop(plant);
    return view(Response.Status.OK, plant, orders.getOrder(plant, reference));
  }

  @PUT
  @Path("{reference}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(
      summary = "Places or replaces an order; the same body again changes nothing",
      description = "If-Match and If-None-Match: * are honoured and not needed.")
  @APIResponse(responseCode = "201", description = "The order is new")
  @APIResponse(
      responseCode = "200",
      description = "The order is stored",
      content = @Content(schema = @Schema(implementation = OrderView.class)))
  @APIResponse(responseCode = "422", description = "errors lists every value that cannot be taken")
  @RolesAllowed({Roles.PLANNER, Roles.ERP})
  public Response put(
      @PathParam("plant") String plant,
      @PathParam("reference") String reference,
      @Context HttpHeaders headers,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Order.class)))
          byte[] body) {
    Shop shop = lock(plant).shop();
    Order order = bodies.read(body, Order.class, sent -> OrderCheck.check(sent, reference, shop));
    boolean fresh = orders.findOrder(plant, reference).isEmpty();
    Orders.Placement placement = orders.put(plant, order, Preconditions.of(headers)::allowChange);
    return view(fresh ? Response.Status.CREATED : Response.Status.OK, plant, placement.stored());
  }

  @DELETE
  @Path("{reference}")
  @Transactional
  @Operation(summary = "Cancels an order; refused once printing has started")
  @APIResponse(responseCode = "204", description = "The order is cancelled")
  @APIResponse(responseCode = "409", description = "Printing has started")
  @RolesAllowed({Roles.PLANNER, Roles.ERP})
  public Response cancel(
      @PathParam("plant") String plant,
      @PathParam("reference") String reference,
      @Context HttpHeaders headers) {
    lock(plant);
    orders.cancel(plant, reference, Preconditions.of(headers)::allowChange);
    return Response.noContent().build();
  }

  private StoredShop lock(String plant) {
    return shops
        .lockShop(plant)
        .orElseThrow(
            () ->
                ProblemException.notFound(
                    "There is no such plant. Set it up first with PUT"
                        + " /api/v1/plants/{plant}/shop."));
  }

  private Response view(Response.Status status, String plant, StoredOrder stored) {
    OrderView view =
        OrderView.of(stored, promises.findPromise(plant, stored.order().reference()).orElse(null));
    return Response.status(status)
        .header(HttpHeaders.ETAG, Preconditions.tag(stored.version()))
        .entity(view)
        .build();
  }
}
