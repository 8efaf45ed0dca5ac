package org.potlife.account.internal;

import io.quarkus.security.Authenticated;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestForm;

/** One's own password. */
@Path(PasswordPages.PASSWORD)
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class PasswordPages {

  static final String PASSWORD = "/password";

  private final OwnAccount own;
  private final SignIn signIn;
  private final Accounts accounts;
  private final Welcome welcome;

  @Inject
  PasswordPages(OwnAccount own, SignIn signIn, Accounts accounts, Welcome welcome) {
    this.own = own;
    this.signIn = signIn;
    this.accounts = accounts;
    this.welcome = welcome;
  }

  @GET
  @Operation(hidden = true)
  public Response form() {
    return own.find()
        .map(account -> page(200, account, FormFaults.none()))
        .orElseGet(this::noneHere);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(
      @RestForm String current,
      @RestForm String password,
      @RestForm String again,
      RoutingContext request) {
    if (own.find().isEmpty()) {
      return noneHere();
    }
    Account account = own.find().get();
    FormFaults faults = FormFaults.none();
    NewPassword chosen = NewPassword.of(password, again);
    chosen.check(account.name(), faults);
    if (chosen.password().equals(current)) {
      faults.add("password", "must be another one than before");
    }
    if (!faults.isAny()) {
      checkCurrent(account, current, request, faults);
    }
    if (faults.isAny()) {
      return page(422, account, faults);
    }
    return welcome.to("/", accounts.setPassword(account.id(), chosen.password(), false), request);
  }

  private void checkCurrent(
      Account account, String current, RoutingContext request, FormFaults faults) {
    SignIn.Attempt attempt =
        signIn.attempt(account.name(), current == null ? "" : current, request);
    if (attempt.account().isEmpty()) {
      faults.add(
          "current",
          attempt.toWait().isZero()
              ? "is not right"
              : "was wrong too often; try again in "
                  + (attempt.toWait().toMinutes() + 1)
                  + " minutes");
    }
  }

  private static Response page(int status, Account account, FormFaults faults) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(AccountTemplates.password(account, faults))
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }

  private Response noneHere() {
    return Response.status(Response.Status.NOT_FOUND)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(
            AccountTemplates.notice(
                "No password here", "You came in without an account of this service."))
        .build();
  }
}
