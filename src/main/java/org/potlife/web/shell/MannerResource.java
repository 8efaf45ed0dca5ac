package org.potlife.web.shell;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.potlife.platform.access.Roles;

/** Keeps on the device how it shows figures. */
@Path("/manner")
@RolesAllowed(Roles.VIEWER)
public class MannerResource {

  private static final int A_YEAR_S = (int) Duration.ofDays(365).toSeconds();

  /**
   * Keeps the choice and goes back.
   *
   * @param back path of the screen to go back to; only one of this service
   */
  @GET
  @Operation(hidden = true)
  public Response keep(
      @QueryParam("units") String units,
      @QueryParam("clock") String clock,
      @QueryParam("back") String back) {
    Manner manner = new Manner("us".equals(units), "12".equals(clock));
    return Response.seeOther(URI.create(own(back)))
        .cookie(
            new NewCookie.Builder(Manner.COOKIE)
                .value(manner.cookie())
                .path("/")
                .maxAge(A_YEAR_S)
                .sameSite(NewCookie.SameSite.LAX)
                .build())
        .build();
  }

  private static String own(String back) {
    return back != null && back.matches("/(plants/[A-Za-z0-9._~/-]*)?") ? back : "/";
  }
}
