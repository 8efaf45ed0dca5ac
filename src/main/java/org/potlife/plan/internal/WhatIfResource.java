package org.potlife.plan.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.sql.SQLException;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.platform.json.Bodies;

/** Questions to the plan in force. */
@Path("/api/v1/plants/{plant}/what-if")
@Tag(name = "plans")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.PLANNER)
public class WhatIfResource {

  private final WhatIfDesk desk;
  private final Bodies bodies;

  @Inject
  WhatIfResource(WhatIfDesk desk, Bodies bodies) {
    this.desk = desk;
    this.bodies = bodies;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "What would become of the plan in force; nothing is stored",
      description =
          "One question: an order with dueAt, a press with downFrom and downTo, or a press with a"
              + " further shift. Runs that have begun or are about to stay whatever is asked.")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = WhatIfAnswer.class)))
  @APIResponse(responseCode = "409", description = "No plan is in force")
  @APIResponse(responseCode = "422", description = "errors lists every value that cannot be taken")
  @APIResponse(responseCode = "429", description = "Another question is being answered")
  public WhatIfAnswer ask(
      @PathParam("plant") String plant,
      @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = WhatIfBody.class)))
          byte[] body)
      throws SQLException {
    return desk.answer(plant, bodies.read(body, WhatIfBody.class, WhatIfBody::check));
  }
}
