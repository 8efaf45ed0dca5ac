package org.potlife.closeout.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.closeout.CloseOut;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;

/** A day's close-out. */
@Path("/api/v1/plants/{plant}/days/{day}/close-out")
@RolesAllowed(Roles.VIEWER)
@Tag(name = "close-out")
@Produces(MediaType.APPLICATION_JSON)
public class CloseOutResource {

  private final DayBooks books;

  @Inject
  CloseOutResource(DayBooks books) {
    this.books = books;
  }

  @GET
  @Operation(
      summary = "Plan against actual of a local day",
      description =
          "Per run, per press in the figures of ISO 22400-2, on time in full per order, ink lost in"
              + " grams and money, and what is carried over. Of a day that is not over, as far as"
              + " it is told.")
  @APIResponse(responseCode = "404", description = "There is no such plant or no such day")
  public CloseOut get(@PathParam("plant") String plant, @PathParam("day") String day) {
    try {
      LocalDate local = LocalDate.parse(day);
      if (!Years.holds(local.getYear())) {
        throw ProblemException.notFound("There is no close-out of " + day + ".");
      }
      return books.closeOut(plant, local);
    } catch (DateTimeParseException e) {
      throw ProblemException.notFound("A day is named like 2026-12-01, " + day + " is none.");
    }
  }
}
