package org.potlife.room.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.room.ScreenStatus;
import org.potlife.shop.Shops;

/** The screens as they stand. Reports come in as shop events alone. */
@Path("/api/v1/plants/{plant}/screen-room/screens")
@Tag(name = "screen room", description = "Cabinets and screens as they stand")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.VIEWER)
public class ScreenResource {

  private final Shops shops;
  private final ScreenShelf shelf;
  private final Clock clock;

  @Inject
  ScreenResource(Shops shops, ScreenShelf shelf, Clock clock) {
    this.shops = shops;
    this.shelf = shelf;
    this.clock = clock;
  }

  /** Screens of the plan in force, kept stencils, and what was reported besides. */
  public record Screens(List<ScreenStatus> screens) {}

  @GET
  @Operation(summary = "Every screen with its state, reported or planned")
  public Screens list(@PathParam("plant") String plant) {
    shops.getShop(plant);
    return new Screens(
        shelf.list(plant, clock.instant()).stream().map(ScreenStatus::brief).toList());
  }

  @GET
  @Path("{screen: .+}")
  @Operation(summary = "One screen with all that was reported of it")
  public ScreenStatus screen(@PathParam("plant") String plant, @PathParam("screen") String screen) {
    shops.getShop(plant);
    return shelf
        .find(plant, screen, clock.instant())
        .orElseThrow(
            () ->
                ProblemException.notFound(
                    "The plan in force, the kept stencils and the reports have no such screen."));
  }
}
