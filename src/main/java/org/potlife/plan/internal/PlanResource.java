package org.potlife.plan.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;
import org.potlife.plan.Publication;
import org.potlife.plan.StoredPlan;
import org.potlife.platform.access.Roles;
import org.potlife.platform.http.Preconditions;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Plans: ask, look, publish, stop. */
@Path("/api/v1/plants/{plant}/plans")
@Tag(name = "plans", description = "Plans of a plant; current stands for the one in force")
@Produces(MediaType.APPLICATION_JSON)
public class PlanResource {

  private static final byte[] NOTHING_ASKED = "{}".getBytes(StandardCharsets.UTF_8);
  private static final int LONGEST_LIST = 500;

  private final Plans plans;
  private final Shops shops;
  private final Bodies bodies;
  private final Clock clock;

  @Inject
  PlanResource(Plans plans, Shops shops, Bodies bodies, Clock clock) {
    this.plans = plans;
    this.shops = shops;
    this.bodies = bodies;
    this.clock = clock;
  }

  @POST
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "Asks for a plan; it is solved in the background")
  @APIResponse(
      responseCode = "202",
      description = "Location is the plan, whose state moves from solving to draft or failed",
      content = @Content(schema = @Schema(implementation = PlanView.class)))
  @APIResponse(responseCode = "422", description = "errors lists every value that cannot be taken")
  @RolesAllowed(Roles.PLANNER)
  public Response request(
      @PathParam("plant") String plant,
      @RequestBody(content = @Content(schema = @Schema(implementation = PlanBody.class)))
          byte[] body) {
    Shop shop = shops.getShop(plant).shop();
    LocalDate today = LocalDate.ofInstant(clock.instant(), shop.timeZone());
    int longest = shop.settings().longestSolveSeconds();
    PlanBody asked =
        bodies.read(
            body == null || body.length == 0 ? NOTHING_ASKED : body,
            PlanBody.class,
            sent -> sent.check(today, longest));
    StoredPlan plan = plans.request(plant, asked.wish(today, longest));
    return tagged(Response.accepted(PlanView.of(plan)), plan)
        .location(URI.create("/api/v1/plants/" + plant + "/plans/" + plan.summary().id()))
        .build();
  }

  @GET
  @Operation(summary = "The plans of the plant, the newest first")
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public List<PlanSummary> list(
      @PathParam("plant") String plant, @QueryParam("limit") @DefaultValue("50") int limit) {
    if (limit < 1 || limit > LONGEST_LIST) {
      throw ProblemException.badRequest("limit must lie between 1 and " + LONGEST_LIST + ".");
    }
    return plans.listPlans(plant, limit);
  }

  @GET
  @Path("{id}")
  @Operation(summary = "The plan: its state and, once it stands, all its parts")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = PlanView.class)))
  @RolesAllowed({Roles.VIEWER, Roles.ERP})
  public Response get(@PathParam("plant") String plant, @PathParam("id") String id) {
    return view(plans.getPlan(plant, id));
  }

  @POST
  @Path("{id}/publication")
  @Consumes(MediaType.WILDCARD)
  @Operation(
      summary = "Puts a draft into force; the plan before is superseded",
      description =
          "Refused when the plan is stale, no draft, or breaks a rule. Takes no body. With If-Match"
              + " also when the plan has changed since it was read.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = PlanView.class)))
  @APIResponse(
      responseCode = "409",
      description = "findings lists the broken rules",
      content = @Content(schema = @Schema(implementation = RefusedPublication.class)))
  @APIResponse(responseCode = "412", description = "The plan has changed since it was read")
  @RolesAllowed(Roles.PLANNER)
  public Response publish(
      @PathParam("plant") String plant, @PathParam("id") String id, @Context HttpHeaders headers) {
    Publication publication = plans.publish(plant, id, Preconditions.of(headers));
    return publication.published() ? view(publication.plan()) : refused(publication);
  }

  @POST
  @Path("{id}/restoration")
  @Consumes(MediaType.WILDCARD)
  @Operation(
      summary = "Brings a superseded plan back, as a further version that is at once in force",
      description =
          "What has begun since stays, as do the runs in the freeze window; the other runs stand on"
              + " their presses in their order again, what is new goes where it fits best. Refused"
              + " when the plan is not superseded, a run cannot stand there any more, nothing of it"
              + " is still to be done, or a rule would be broken. Takes no body.")
  @APIResponse(
      responseCode = "201",
      description = "Location is the new version, in force",
      content = @Content(schema = @Schema(implementation = PlanView.class)))
  @APIResponse(
      responseCode = "409",
      description = "detail says what stands in the way; findings lists the broken rules",
      content = @Content(schema = @Schema(implementation = RefusedPublication.class)))
  @APIResponse(responseCode = "412", description = "The plan has changed since it was read")
  @RolesAllowed(Roles.PLANNER)
  public Response restore(
      @PathParam("plant") String plant, @PathParam("id") String id, @Context HttpHeaders headers) {
    Publication restored = plans.restore(plant, id, Preconditions.of(headers));
    if (!restored.published()) {
      return refused(restored);
    }
    StoredPlan plan = restored.plan();
    return tagged(Response.status(Response.Status.CREATED).entity(PlanView.of(plan)), plan)
        .location(URI.create("/api/v1/plants/" + plant + "/plans/" + plan.summary().id()))
        .build();
  }

  private static Response refused(Publication publication) {
    return Response.status(Response.Status.CONFLICT)
        .type(Problem.MEDIA_TYPE)
        .entity(RefusedPublication.of(publication))
        .build();
  }

  @POST
  @Path("{id}/stop")
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "Ends the search soon and keeps the best plan so far")
  @APIResponse(
      responseCode = "202",
      content = @Content(schema = @Schema(implementation = PlanView.class)))
  @RolesAllowed(Roles.PLANNER)
  public Response stop(@PathParam("plant") String plant, @PathParam("id") String id) {
    StoredPlan plan = plans.stop(plant, id);
    return tagged(Response.accepted(PlanView.of(plan)), plan).build();
  }

  private static Response view(StoredPlan plan) {
    return tagged(Response.ok(PlanView.of(plan)), plan).build();
  }

  private static Response.ResponseBuilder tagged(Response.ResponseBuilder answer, StoredPlan plan) {
    return answer.header(HttpHeaders.ETAG, Preconditions.tag(plan.rowVersion()));
  }
}
