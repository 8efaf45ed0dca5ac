package org.potlife.shop.internal;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.ink.RecipeVersion;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Recipes;
import org.potlife.shop.Shops;

/** The recipes that an ink has had. They are changed with the shop document alone. */
@Path("/api/v1/plants/{plant}/inks/{ink}/recipes")
@Tag(name = "shop")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.VIEWER)
public class RecipeResource {

  private final Recipes recipes;
  private final Shops shops;

  @Inject
  RecipeResource(Recipes recipes, Shops shops) {
    this.recipes = recipes;
    this.shops = shops;
  }

  /** Versions of one recipe, the one in force first. */
  public record Versions(String ink, List<RecipeVersion> recipes) {}

  @GET
  @Operation(summary = "Every recipe that the ink has had, the one in force first")
  public Versions list(@PathParam("plant") String plant, @PathParam("ink") String ink) {
    shops.getShop(plant);
    List<RecipeVersion> versions = recipes.list(plant, ink);
    if (versions.isEmpty()) {
      throw ProblemException.notFound("The plant never had an ink of this name.");
    }
    return new Versions(ink, versions);
  }
}
