package org.potlife.account.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;

/** Who did what and when. */
@Path("/api/v1/trail")
@Tag(name = "trail", description = "Who did what and when")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Roles.PLANNER, Roles.ADMINISTRATOR})
public class TrailResource {

  private static final int LONGEST_LIST = 1000;

  private final TrailBook book;

  @Inject
  TrailResource(TrailBook book) {
    this.book = book;
  }

  /**
   * A part of the trail, the newest first.
   *
   * @param next value of before for the entries that are older; left out at the end
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Part(List<TrailEntry> entries, Long next) {

    static Part of(List<TrailEntry> entries, int limit) {
      return new Part(
          entries, entries.size() < limit ? null : entries.get(entries.size() - 1).seq());
    }
  }

  @GET
  @Operation(
      summary = "Every write with who made it and what came of it, the newest first",
      description =
          "who is the name of an account or token. outcome is done, refused, not allowed, or cut off"
              + " when the service ended before it answered. No bodies and no secrets are kept.")
  public Part list(
      @QueryParam("plant") String plant,
      @QueryParam("who") String who,
      @QueryParam("before") Long before,
      @QueryParam("limit") @DefaultValue("100") int limit) {
    if (limit < 1 || limit > LONGEST_LIST) {
      throw ProblemException.badRequest("limit must lie between 1 and " + LONGEST_LIST + ".");
    }
    return Part.of(book.list(new TrailBook.Question(plant, who, before, limit)), limit);
  }
}
