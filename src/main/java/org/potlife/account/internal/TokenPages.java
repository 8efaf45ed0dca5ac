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
import org.potlife.platform.access.Caller;
import org.potlife.platform.access.Roles;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** Tokens of programs: list, make, revoke. */
@Path("/tokens")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Roles.ADMINISTRATOR)
public class TokenPages {

  private final Accounts accounts;
  private final Tokens tokens;
  private final Shops shops;
  private final Caller caller;

  @Inject
  TokenPages(Accounts accounts, Tokens tokens, Shops shops, Caller caller) {
    this.accounts = accounts;
    this.tokens = tokens;
    this.shops = shops;
    this.caller = caller;
  }

  @GET
  @Operation(hidden = true)
  public Response list() {
    return list(200, TokenForm.empty(), FormFaults.none());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response make(
      @RestForm String plant, @RestForm String name, @RestForm List<String> roles) {
    TokenForm form = TokenForm.of(plant, name, roles);
    if (!accounts.isAny()) {
      // what is made while anybody on this computer may make it would outlive that time
      return list(
          409,
          form,
          FormFaults.none().add("name", "can be given once there is an account: make one first"));
    }
    FormFaults faults = form.check(shops.listPlants());
    if (faults.isAny()) {
      return list(422, form, faults);
    }
    Optional<Tokens.Made> made =
        tokens.create(form.plant(), form.name(), form.roles(), caller.name().orElse("nobody"));
    return made.map(token -> answer(200, AccountTemplates.tokenmade(token.token(), token.secret())))
        .orElseGet(
            () -> list(422, form, faults.add("name", "is that of a valid token of this plant")));
  }

  @POST
  @Path("{id: \\d{1,18}}/revocation")
  @Operation(hidden = true)
  public Response revoke(@PathParam("id") long id) {
    try {
      tokens.revoke(id);
      return Response.seeOther(URI.create("/tokens")).build();
    } catch (ProblemException e) {
      return answer(
          e.problem().status(), AccountTemplates.notice(e.problem().title(), e.problem().detail()));
    }
  }

  private Response list(int status, TokenForm form, FormFaults faults) {
    return answer(status, AccountTemplates.tokens(tokens.list(), shops.listPlants(), form, faults));
  }

  private static Response answer(int status, Object page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE)
        .entity(page)
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }
}
