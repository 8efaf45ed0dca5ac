package org.potlife.account.internal;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticator;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.potlife.platform.access.Caller;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemType;

/** Answers what the roles of a resource refuse. */
final class RefusedMappers {

  /** htmx loads no other page by itself unless told so. */
  private static final String HTMX = "HX-Request";

  private final Caller caller;
  private final OwnAccount own;
  private final AccessSign sign;

  @Inject
  RefusedMappers(Caller caller, OwnAccount own, AccessSign sign) {
    this.caller = caller;
    this.own = own;
    this.sign = sign;
  }

  @ServerExceptionMapper
  Uni<Response> unknown(UnauthorizedException e, RoutingContext context) {
    if (sign.isOrganisation() && context.normalizedPath().equals(SignInPages.ORGANISATION)) {
      return challenge(context);
    }
    return Uni.createFrom().item(strange(context));
  }

  @ServerExceptionMapper
  Response notValid(AuthenticationFailedException e, RoutingContext context) {
    return strange(context);
  }

  @ServerExceptionMapper
  Response notAllowed(ForbiddenException e, RoutingContext context) {
    if (own.find().filter(Account::mustChange).isPresent() && Refusal.isForPeople(context)) {
      return lead(context, PasswordPages.PASSWORD);
    }
    if (Refusal.isForPeople(context)) {
      return Response.status(Response.Status.FORBIDDEN)
          .type(MediaType.TEXT_HTML_TYPE)
          .entity(AccountTemplates.notallowed(why(e)))
          .build();
    }
    return problem(Problem.of(ProblemType.FORBIDDEN, why(e) + " docs/security.md has the table."));
  }

  private Response strange(RoutingContext context) {
    if (Refusal.isForPeople(context)) {
      return lead(context, Refusal.signIn(context));
    }
    return Response.fromResponse(problem(Refusal.unknown()))
        .header(HttpHeaders.WWW_AUTHENTICATE, Refusal.BEARER)
        .build();
  }

  private static Response lead(RoutingContext context, String page) {
    return context.request().headers().contains(HTMX)
        ? Response.status(Response.Status.UNAUTHORIZED).header("HX-Redirect", page).build()
        : Response.seeOther(URI.create(page)).build();
  }

  private String why(ForbiddenException e) {
    if (e instanceof PlantBound.OtherPlant) {
      return "This token is for the plant " + caller.plant().orElse("of another") + " alone.";
    }
    return caller.roles().isEmpty()
        ? "You have no role yet."
        : "It takes another role than " + String.join(", ", caller.roles()) + ".";
  }

  private static Response problem(Problem problem) {
    return Response.status(problem.status()).type(Problem.MEDIA_TYPE).entity(problem).build();
  }

  /** Where an OpenID provider is configured, it sends the browser there. */
  private static Uni<Response> challenge(RoutingContext context) {
    HttpAuthenticator authenticator = context.get(HttpAuthenticator.class.getName());
    return authenticator
        .getChallenge(context)
        .map(
            challenge -> {
              if (challenge == null) {
                return Response.seeOther(URI.create(SignInPages.SIGN_IN)).build();
              }
              Response.ResponseBuilder answer = Response.status(challenge.status);
              challenge
                  .getHeaders()
                  .forEach((name, value) -> answer.header(name.toString(), value));
              return answer.build();
            });
  }
}
