package org.potlife.event.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;

/** Shop events come in here. */
@Path("/api/v1/plants/{plant}/events")
@Tag(name = "events")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Roles.PRESS, Roles.INK_ROOM, Roles.SCREEN_ROOM, Roles.PLANNER, Roles.ERP})
public class EventResource {

  private final EventIntake intake;

  @Inject
  EventResource(EventIntake intake) {
    this.intake = intake;
  }

  /** What became of each event, in the order of the request. */
  record Receipt(List<Line> events) {

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Line(String source, String id, String outcome, String cause) {}
  }

  @POST
  @Consumes({
    MediaType.APPLICATION_JSON,
    "application/cloudevents+json",
    "application/cloudevents-batch+json"
  })
  @Operation(
      summary = "Tells what happened in the shop: one CloudEvent 1.0 or an array of them",
      description =
          "All are recorded with their effect, or none. An event that was told before, by source"
              + " and id, is known and takes no effect again; one that contradicts the shop's state"
              + " is parked with its cause.")
  @APIResponse(
      responseCode = "200",
      description = "All are recorded",
      content = @Content(schema = @Schema(implementation = Receipt.class)))
  @APIResponse(responseCode = "422", description = "None is recorded; errors lists why")
  public Receipt post(@PathParam("plant") String plant, @RequestBody(required = true) byte[] body) {
    return new Receipt(
        intake.take(plant, body).stream()
            .map(
                taken ->
                    new Receipt.Line(
                        taken.source(),
                        taken.id(),
                        taken.outcome().name().toLowerCase(Locale.ROOT),
                        taken.cause()))
            .toList());
  }
}
