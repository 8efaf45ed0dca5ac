package org.potlife.account.internal;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.platform.access.Roles;

/** The trail as a page. */
@Path("/trail")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Roles.PLANNER, Roles.ADMINISTRATOR})
public class TrailPage {

  private static final int ON_A_PAGE = 100;

  private final TrailBook book;

  @Inject
  TrailPage(TrailBook book) {
    this.book = book;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(
      @QueryParam("plant") String plant,
      @QueryParam("who") String who,
      @QueryParam("before") Long before) {
    String ofPlant = orNull(plant);
    String ofWho = orNull(who);
    List<TrailEntry> entries = book.list(new TrailBook.Question(ofPlant, ofWho, before, ON_A_PAGE));
    Long older = TrailResource.Part.of(entries, ON_A_PAGE).next();
    return AccountTemplates.trail(entries, ofPlant, ofWho, older);
  }

  private static String orNull(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
