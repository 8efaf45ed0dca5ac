package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The way out. */
@Path("/sign-out")
public class SignOutPage {

  private final Sessions sessions;
  private final SessionCookie cookie;

  @Inject
  SignOutPage(Sessions sessions, SessionCookie cookie) {
    this.sessions = sessions;
    this.cookie = cookie;
  }

  @POST
  @PermitAll
  @Operation(hidden = true)
  public Response leave(RoutingContext request) {
    SessionCookie.in(request).ifPresent(sessions::end);
    Response.ResponseBuilder answer =
        Response.seeOther(URI.create(SignInPages.SIGN_IN)).cookie(cookie.gone(request));
    request.request().cookies().stream()
        .filter(sent -> sent.getName().startsWith(SessionCookie.OF_ORGANISATION))
        .forEach(
            sent ->
                answer.cookie(
                    new NewCookie.Builder(sent.getName()).value("").path("/").maxAge(0).build()));
    return answer.build();
  }
}
