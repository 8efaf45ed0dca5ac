package org.potlife.plan.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.sql.SQLException;
import java.util.OptionalLong;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.planning.Instructions;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** What the planner has decided himself. */
@Path("/api/v1/plants/{plant}/instructions")
@Tag(name = "plans")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.PLANNER)
public class InstructionResource {

  private final Shops shops;
  private final InstructionBook book;
  private final InstructionTrial trial;
  private final Bodies bodies;

  @Inject
  InstructionResource(Shops shops, InstructionBook book, InstructionTrial trial, Bodies bodies) {
    this.shops = shops;
    this.book = book;
    this.trial = trial;
    this.bodies = bodies;
  }

  @GET
  @RolesAllowed(Roles.VIEWER)
  @Transactional
  @Operation(summary = "What the planner has decided himself, with its ETag")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = Instructions.class)))
  public Response get(@PathParam("plant") String plant) {
    shops.getShop(plant);
    return tagged(book.get(plant));
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(
      summary = "Decides: the next plan follows; a change needs If-Match",
      description =
          "held: orders held back; runs: the press or the earliest time of a run, or the run of the"
              + " same press that it comes before; lots: orders that are split further. What has begun or is frozen stays as it is.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = Instructions.class)))
  @APIResponse(responseCode = "412", description = "Another change came first")
  @APIResponse(responseCode = "428", description = "There are instructions and If-Match is missing")
  public Response put(
      @PathParam("plant") String plant,
      @Context HttpHeaders headers,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Instructions.class)))
          byte[] body) {
    Shop shop =
        shops
            .lockShop(plant)
            .orElseThrow(() -> ProblemException.notFound("There is no such plant."))
            .shop();
    Preconditions preconditions = Preconditions.of(headers);
    long version = book.get(plant).version();
    if (version > 0) {
      preconditions.demandMatch(version);
    }
    preconditions.allowChange(OptionalLong.of(version));
    return tagged(book.put(plant, read(body, shop)));
  }

  @POST
  @Path("effect")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "What other instructions would do to the plan; nothing is kept",
      description = "Two short searches from the plan in force: takes some seconds.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = InstructionEffect.class)))
  @APIResponse(responseCode = "429", description = "Another question is being answered")
  public InstructionEffect effect(
      @PathParam("plant") String plant,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Instructions.class)))
          byte[] body)
      throws SQLException {
    return trial.effect(plant, read(body, shops.getShop(plant).shop()));
  }

  private Instructions read(byte[] body, Shop shop) {
    return bodies.read(body, Instructions.class, sent -> InstructionCheck.of(sent, shop));
  }

  private static Response tagged(InstructionBook.Stored stored) {
    return Response.ok(stored.instructions())
        .header(HttpHeaders.ETAG, Preconditions.tag(stored.version()))
        .build();
  }
}
