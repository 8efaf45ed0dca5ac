package org.potlife.order.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.order.Order;
import org.potlife.order.OrderCheck;
import org.potlife.order.Orders;
import org.potlife.platform.access.Roles;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.FieldError;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Many orders at once, all or none, safe to repeat. */
@Path("/api/v1/plants/{plant}/orders")
@Tag(name = "orders")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Roles.PLANNER, Roles.ERP})
public class OrderBatchResource {

  private static final String KEY = "Idempotency-Key";

  private final Shops shops;
  private final Orders orders;
  private final Bodies bodies;
  private final OrderDocuments documents;
  private final Clock clock;

  @Inject
  OrderBatchResource(
      Shops shops, Orders orders, Bodies bodies, OrderDocuments documents, Clock clock) {
    this.shops = shops;
    this.orders = orders;
    this.bodies = bodies;
    this.documents = documents;
    this.clock = clock;
  }

  /** What became of each order, in the order of the request. */
  record Receipt(List<Line> orders) {

    record Line(String reference, long version, String outcome) {}
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(
      summary = "Places or replaces many orders: all or none",
      description = "The same Idempotency-Key with the same body again gives the same answer.")
  @APIResponse(
      responseCode = "200",
      description = "All orders are stored",
      content = @Content(schema = @Schema(implementation = Receipt.class)))
  @APIResponse(responseCode = "422", description = "No order is stored; errors lists why")
  public Response post(
      @PathParam("plant") String plant,
      @HeaderParam(KEY) String key,
      @RequestBody(
              required = true,
              content =
                  @Content(schema = @Schema(type = SchemaType.ARRAY, implementation = Order.class)))
          byte[] body) {
    if (key == null || !key.matches("[!-~]{1,200}")) {
      throw ProblemException.badRequest(
          KEY + " must be given: 1 to 200 visible ASCII characters, new for each new request.");
    }
    Shop shop =
        shops
            .lockShop(plant)
            .orElseThrow(() -> ProblemException.notFound("There is no such plant."))
            .shop();
    IdempotencyEntity.Key id = new IdempotencyEntity.Key(plant, key);
    String hash = OrderDocuments.hash(body == null ? new byte[0] : body);
    Optional<IdempotencyEntity> before = IdempotencyEntity.findByIdOptional(id);
    if (before.isPresent()) {
      return replay(before.get(), hash);
    }
    List<Order> sent = bodies.readList(body, Order.class, list -> OrderCheck.checkAll(list, shop));
    Receipt receipt = new Receipt(sent.stream().map(order -> put(plant, order)).toList());
    return carriedOut(id, hash, documents.write(receipt));
  }

  private Receipt.Line put(String plant, Order order) {
    Orders.Placement placement = orders.put(plant, order, version -> {});
    return new Receipt.Line(
        order.reference(),
        placement.stored().version(),
        placement.outcome().name().toLowerCase(Locale.ROOT));
  }

  private Response carriedOut(IdempotencyEntity.Key id, String hash, String response) {
    IdempotencyEntity entity = new IdempotencyEntity();
    entity.id = id;
    entity.bodyHash = hash;
    entity.status = Response.Status.OK.getStatusCode();
    entity.response = response;
    entity.createdAt = clock.instant();
    entity.persist();
    return Response.status(entity.status).entity(response).build();
  }

  private static Response replay(IdempotencyEntity before, String hash) {
    if (!before.bodyHash.equals(hash)) {
      throw ProblemException.invalid(
          List.of(
              new FieldError(
                  "",
                  "is not the body that this "
                      + KEY
                      + " was used with before; take a new key for a new request")));
    }
    return Response.status(before.status).entity(before.response).build();
  }
}
