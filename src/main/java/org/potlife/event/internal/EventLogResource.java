package org.potlife.event.internal;

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
import jakarta.ws.rs.core.MediaType;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.platform.json.Bodies;
import org.potlife.platform.problem.ProblemException;

/** The log of shop events, and what is to become of those that are parked. */
@Path("/api/v1/plants/{plant}/events")
@Tag(name = "events")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.PLANNER)
public class EventLogResource {

  private static final String ALL = "all";
  private static final int LARGEST_PAGE = 500;
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,18}");

  private final EventDesk desk;
  private final Bodies bodies;

  @Inject
  EventLogResource(EventDesk desk, Bodies bodies) {
    this.desk = desk;
    this.bodies = bodies;
  }

  @GET
  @Operation(
      summary = "The log of shop events, in the order of recording",
      description =
          "state: all, applied, parked or dismissed; limit: 1 to 500, default 100; cursor: next of"
              + " the page before.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = LogEntry.Page.class)))
  @RolesAllowed(Roles.VIEWER)
  public LogEntry.Page list(
      @PathParam("plant") String plant,
      @QueryParam("state") @DefaultValue(ALL) String state,
      @QueryParam("cursor") @DefaultValue("0") String cursor,
      @QueryParam("limit") @DefaultValue("100") String limit) {
    return desk.list(
        plant,
        state.equals(ALL) ? Optional.empty() : Optional.of(state(state)),
        number(cursor, 0, Long.MAX_VALUE, "The cursor is not one. Take next of the page before."),
        (int) number(limit, 1, LARGEST_PAGE, "limit must be a whole number from 1 to 500."));
  }

  private static LogState state(String word) {
    return LogState.find(word)
        .orElseThrow(
            () -> ProblemException.badRequest("state must be all, applied, parked or dismissed."));
  }

  private static long number(String text, long least, long most, String wrong) {
    try {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw ProblemException.badRequest(wrong);
  }

  @POST
  @Path("{seq}/settlement")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Settles a parked event: applies it again, or dismisses it with a reason",
      description =
          "Applied again it counts at its own time, and may be parked again. Who decided, when and"
              + " why is kept.")
  @APIResponse(
      responseCode = "200",
      description = "The event as it stands now",
      content = @Content(schema = @Schema(implementation = LogEntry.class)))
  @APIResponse(responseCode = "409", description = "The event is not parked")
  @APIResponse(responseCode = "422", description = "errors lists every value that cannot be taken")
  @RolesAllowed(Roles.PLANNER)
  public LogEntry settle(
      @PathParam("plant") String plant,
      @PathParam("seq") String seq,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = SettlementBody.class)))
          byte[] body) {
    long number = number(seq);
    return desk.settle(
        plant, number, bodies.read(body, SettlementBody.class, SettlementBody::check));
  }

  private static long number(String seq) {
    if (!NUMBER.matcher(seq).matches()) {
      throw ProblemException.notFound("The number of an event has digits alone.");
    }
    return Long.parseLong(seq);
  }
}
