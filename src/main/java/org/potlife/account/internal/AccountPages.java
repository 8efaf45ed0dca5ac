package org.potlife.account.internal;

import jakarta.annotation.security.RolesAllowed;
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
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;

/** Accounts of people: list, make, change, close, give a new first password. */
@Path("/accounts")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.ADMINISTRATOR)
public class AccountPages {

  private final Accounts accounts;
  private final Failures failures;

  @Inject
  AccountPages(Accounts accounts, Failures failures) {
    this.accounts = accounts;
    this.failures = failures;
  }

  @GET
  @Operation(hidden = true)
  public Response list() {
    return list(200, AccountForm.empty(), FormFaults.none());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response make(
      @RestForm String name, @RestForm String fullName, @RestForm List<String> roles) {
    if (!accounts.isAny()) {
      // made here, the first could be one whose password nobody remembers
      return answer(
          409,
          AccountTemplates.notice(
              "The first account", "It is made under the link that the service's log has."));
    }
    AccountForm form = AccountForm.of(name, fullName, roles);
    FormFaults faults = form.check();
    if (faults.isAny()) {
      return list(422, form, faults);
    }
    String password = Secret.freshPassword();
    Optional<Account> made =
        accounts.create(form.name(), form.fullName(), form.roles(), password, true);
    return made.map(account -> answer(200, AccountTemplates.newpassword(account, password)))
        .orElseGet(() -> list(422, form, faults.add("name", "is taken")));
  }

  @GET
  @Path("{id: \\d{1,18}}")
  @Operation(hidden = true)
  public Response form(@PathParam("id") long id) {
    try {
      Account account = accounts.get(id);
      return form(200, account, AccountForm.of(account), FormFaults.none());
    } catch (ProblemException e) {
      return notice(e);
    }
  }

  @POST
  @Path("{id: \\d{1,18}}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(
      @PathParam("id") long id,
      @RestForm String fullName,
      @RestForm List<String> roles,
      @RestForm String active) {
    try {
      Account account = accounts.get(id);
      AccountForm form = AccountForm.of(account.name(), fullName, roles);
      FormFaults faults = FormFaults.none();
      form.checkRest(faults);
      if (faults.isAny()) {
        return form(422, account, form, faults);
      }
      accounts.change(id, form.fullName(), form.roles(), active != null);
      return Response.seeOther(URI.create("/accounts")).build();
    } catch (ProblemException e) {
      return notice(e);
    }
  }

  @POST
  @Path("{id: \\d{1,18}}/password")
  @Operation(hidden = true)
  public Response newPassword(@PathParam("id") long id) {
    try {
      String password = Secret.freshPassword();
      Account account = accounts.setPassword(id, password, true);
      failures.forget(account.name());
      return answer(200, AccountTemplates.newpassword(account, password));
    } catch (ProblemException e) {
      return notice(e);
    }
  }

  private Response list(int status, AccountForm form, FormFaults faults) {
    return answer(status, AccountTemplates.accounts(accounts.list(), form, faults));
  }

  private static Response form(int status, Account account, AccountForm form, FormFaults faults) {
    return answer(status, AccountTemplates.account(account, form, faults));
  }

  private static Response notice(ProblemException e) {
    return answer(
        e.problem().status(), AccountTemplates.notice(e.problem().title(), e.problem().detail()));
  }

  private static Response answer(int status, Object page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(page)
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }
}
