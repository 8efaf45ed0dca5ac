package org.potlife.web.office;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.platform.access.Roles;
import org.potlife.web.shell.Job;
import org.potlife.web.shell.Screens;

/**
 * The plant's set-up in forms. Which fields there are, their units and where a value comes from
 * stands in {@code /ui/office/parameters.json}; what may be stored says the REST interface.
 */
@Path("/plants/{plant}/shop")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.VIEWER)
public class ShopScreen {

  private final Screens screens;

  @Inject
  ShopScreen(Screens screens) {
    this.screens = screens;
  }

  @GET
  @Operation(hidden = true)
  public Response shop(@PathParam("plant") String plant) {
    return screens.show(plant, Job.SHOP, OfficeScreens::shop);
  }
}
