package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.RestForm;
import org.potlife.platform.access.Roles;

/** The way in. */
@Path(SignInPages.SIGN_IN)
@Produces(MediaType.TEXT_HTML)
public class SignInPages {

  static final String SIGN_IN = "/sign-in";
  static final String ORGANISATION = "/sign-in/organisation";

  private static final Logger LOG = Logger.getLogger(SignInPages.class);

  private final SignIn signIn;
  private final Accounts accounts;
  private final Sessions sessions;
  private final Welcome welcome;
  private final TrailDraft trail;

  @Inject
  SignInPages(
      SignIn signIn, Accounts accounts, Sessions sessions, Welcome welcome, TrailDraft trail) {
    this.signIn = signIn;
    this.accounts = accounts;
    this.sessions = sessions;
    this.welcome = welcome;
    this.trail = trail;
  }

  @GET
  @PermitAll
  @Operation(hidden = true)
  public Response form(@QueryParam("to") String to) {
    return page(200, "", to, null);
  }

  @POST
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response enter(
      @RestForm String name,
      @RestForm String password,
      @RestForm String to,
      RoutingContext request) {
    String typed = name == null ? "" : name;
    SignIn.Attempt attempt = signIn.attempt(typed, password == null ? "" : password, request);
    if (attempt.account().isEmpty()) {
      LOG.infof("Sign-in refused to %s", ClientAddress.of(request));
      return refused(attempt.toWait(), typed, to);
    }
    Account account = attempt.account().get().account();
    trail.by(account);
    // what the browser brought along is of no use any more: nobody rides on a planted session
    SessionCookie.in(request).ifPresent(sessions::end);
    String page = account.mustChange() ? PasswordPages.PASSWORD : LocalPath.orStart(to);
    return welcome.to(page, account, request);
  }

  private Response refused(Duration wait, String name, String to) {
    if (wait.isZero()) {
      return page(
          422, name, to, "Name or password is wrong. Both are wrong as well for a closed account.");
    }
    Response answer =
        page(
            429,
            name,
            to,
            "There were too many failures in a row. Try again in " + words(wait) + ".");
    return Response.fromResponse(answer)
        .header(HttpHeaders.RETRY_AFTER, wait.toSeconds() + 1)
        .build();
  }

  private static String words(Duration wait) {
    return wait.toMinutes() < 1
        ? "less than a minute"
        : wait.toHours() < 1 ? wait.toMinutes() + 1 + " minutes" : wait.toHours() + 1 + " hours";
  }

  private Response page(int status, String name, String to, String fault) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(AccountTemplates.signin(name, LocalPath.orStart(to), fault, !accounts.isAny()))
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }

  /** An OpenID provider, where one is configured, guards this page and leads back to it. */
  @GET
  @Path("organisation")
  @RolesAllowed(Roles.VIEWER)
  @Operation(hidden = true)
  public Response organisation() {
    return Response.seeOther(URI.create("/")).build();
  }
}
