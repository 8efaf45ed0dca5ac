package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestForm;

/** Where the first account is made. */
@Path("/set-up")
@Produces(MediaType.TEXT_HTML)
@PermitAll
public class SetUpPages {

  private final SetUpLink link;
  private final Accounts accounts;
  private final Welcome welcome;
  private final TrailDraft trail;

  @Inject
  SetUpPages(SetUpLink link, Accounts accounts, Welcome welcome, TrailDraft trail) {
    this.link = link;
    this.accounts = accounts;
    this.welcome = welcome;
    this.trail = trail;
  }

  @GET
  @Operation(hidden = true)
  public Response where() {
    return accounts.isAny()
        ? Response.seeOther(URI.create(SignInPages.SIGN_IN)).build()
        : notice(
            200,
            "The first account",
            "The service wrote a link into its log when it started: \"There is no account yet. Make"
                + " the first one: \u2026\". Open it. Who can read the log runs the service.");
  }

  @GET
  @Path("{secret}")
  @Operation(hidden = true)
  public Response form(@PathParam("secret") String secret) {
    return link.isGood(secret)
        ? page(200, secret, AccountForm.empty(), FormFaults.none())
        : notGood();
  }

  @POST
  @Path("{secret}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response make(
      @PathParam("secret") String secret,
      @RestForm String name,
      @RestForm String fullName,
      @RestForm String password,
      @RestForm String again,
      RoutingContext request) {
    if (!link.isGood(secret)) {
      return notGood();
    }
    AccountForm form = AccountForm.of(name, fullName, List.of());
    FormFaults faults = FormFaults.none();
    form.checkName(faults);
    form.checkFullName(faults);
    NewPassword chosen = NewPassword.of(password, again);
    chosen.check(form.name(), faults);
    if (faults.isAny()) {
      return page(422, secret, form, faults);
    }
    Optional<Account> first = link.use(secret, form.name(), form.fullName(), chosen.password());
    if (first.isEmpty()) {
      return notGood();
    }
    trail.by(first.get());
    return welcome.to("/accounts", first.get(), request);
  }

  private static Response page(int status, String secret, AccountForm form, FormFaults faults) {
    return answer(status, AccountTemplates.setup(secret, form, faults));
  }

  private static Response notGood() {
    return notice(
        404,
        "This link is not good",
        "It was used, is too old, or is not complete. Start the service again for a new one; once"
            + " there is an account, sign in.");
  }

  private static Response notice(int status, String title, String text) {
    return answer(status, AccountTemplates.notice(title, text));
  }

  private static Response answer(int status, Object page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(page)
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }
}
