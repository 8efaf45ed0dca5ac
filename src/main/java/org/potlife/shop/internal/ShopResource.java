package org.potlife.shop.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.OptionalLong;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.json.Bodies;
import org.potlife.shop.Shop;
import org.potlife.shop.ShopCheck;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** The plant's set-up as one document. */
@Path("/api/v1/plants/{plant}/shop")
@Tag(name = "shop", description = "The plant's set-up as one document")
@Produces(MediaType.APPLICATION_JSON)
public class ShopResource {

  private final Shops shops;
  private final Bodies bodies;

  @Inject
  ShopResource(Shops shops, Bodies bodies) {
    this.shops = shops;
    this.bodies = bodies;
  }

  @GET
  @Operation(summary = "The set-up, with its ETag")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = Shop.class)))
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public Response get(@PathParam("plant") String plant, @Context HttpHeaders headers) {
    StoredShop stored = shops.getShop(plant);
    Response.ResponseBuilder answer =
        Preconditions.of(headers).alreadyRead(stored.version())
            ? Response.notModified()
            : Response.ok(stored.shop());
    return tagged(answer, stored);
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(summary = "Sets a plant up, or changes its set-up; a change needs If-Match")
  @APIResponse(responseCode = "201", description = "The plant is new")
  @APIResponse(
      responseCode = "200",
      description = "The set-up is stored",
      content = @Content(schema = @Schema(implementation = Shop.class)))
  @APIResponse(responseCode = "412", description = "Another change came first")
  @APIResponse(responseCode = "422", description = "errors lists every value that cannot be taken")
  @APIResponse(responseCode = "428", description = "The plant exists and If-Match is missing")
  @RolesAllowed(Roles.PLANNER)
  public Response put(
      @PathParam("plant") String plant,
      @Context HttpHeaders headers,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Shop.class)))
          byte[] body) {
    Preconditions preconditions = Preconditions.of(headers);
    Optional<StoredShop> present = shops.lockShop(plant);
    if (present.isEmpty()) {
      preconditions.allowChange(OptionalLong.empty());
      Shop shop = bodies.read(body, Shop.class, ShopCheck::check);
      Optional<StoredShop> created = shops.createShop(plant, shop);
      if (created.isPresent()) {
        return tagged(Response.status(Response.Status.CREATED).entity(shop), created.get());
      }
      present = shops.lockShop(plant);
    }
    StoredShop before = present.orElseThrow();
    preconditions.demandMatch(before.version());
    preconditions.allowChange(OptionalLong.of(before.version()));
    Shop shop = bodies.read(body, Shop.class, ShopCheck::check);
    StoredShop after = shops.changeShop(before, shop);
    return tagged(Response.ok(after.shop()), after);
  }

  private static Response tagged(Response.ResponseBuilder answer, StoredShop stored) {
    return answer.header(HttpHeaders.ETAG, Preconditions.tag(stored.version())).build();
  }
}
