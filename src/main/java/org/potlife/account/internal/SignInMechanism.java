package org.potlife.account.internal;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Finds out who makes a request: a token in the Authorization header, a session's cookie, or, while
 * the service is open, whoever sits at this computer. Bearer tokens that are not ours are left to
 * an OpenID provider where one is configured.
 */
@ApplicationScoped
class SignInMechanism implements HttpAuthenticationMechanism {

  /** Before OpenID (1001), which would refuse our tokens. */
  private static final int PRIORITY = 2000;

  private static final String BEARER = "bearer ";

  private final OpenDoor door;
  private final Refusal refusal;
  private final boolean organisation;

  @Inject
  SignInMechanism(
      OpenDoor door,
      Refusal refusal,
      @ConfigProperty(name = "quarkus.oidc.tenant-enabled") boolean organisation) {
    this.door = door;
    this.refusal = refusal;
    this.organisation = organisation;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      RoutingContext context, IdentityProviderManager identities) {
    if (isForAnybody(context.normalizedPath())) {
      return Uni.createFrom().nullItem();
    }
    Optional<String> bearer = bearer(context);
    if (bearer.isPresent()) {
      return bearer.get().startsWith(Secret.TOKEN_PREFIX) || !organisation
          ? identities.authenticate(new Shown.Token(bearer.get()))
          : Uni.createFrom().nullItem();
    }
    Uni<SecurityIdentity> open =
        door.mayBeOpenFor(context)
            ? orNobody(identities.authenticate(new Shown.Nothing()))
            : Uni.createFrom().nullItem();
    return SessionCookie.in(context)
        .map(secret -> orNobody(identities.authenticate(new Shown.Session(secret))))
        .map(session -> session.onItem().ifNull().switchTo(open))
        .orElse(open);
  }

  /** Health must answer while the database does not, and no style sheet is worth a look at it. */
  private static boolean isForAnybody(String path) {
    return path.startsWith("/q/") && !path.startsWith("/q/metrics")
        || path.startsWith("/ui/")
        || path.startsWith("/webjars/")
        || path.endsWith(".css");
  }

  private static Uni<SecurityIdentity> orNobody(Uni<SecurityIdentity> identity) {
    return identity.onFailure(AuthenticationFailedException.class).recoverWithNull();
  }

  private static Optional<String> bearer(RoutingContext context) {
    String header = context.request().getHeader(HttpHeaders.AUTHORIZATION);
    return header != null && header.regionMatches(true, 0, BEARER, 0, BEARER.length())
        ? Optional.of(header.substring(BEARER.length()).strip())
        : Optional.empty();
  }

  @Override
  public Uni<ChallengeData> getChallenge(RoutingContext context) {
    return Uni.createFrom()
        .item(
            leadsToOrganisation(context)
                ? null
                : new ChallengeData(401, "WWW-Authenticate", Refusal.BEARER));
  }

  /** What no resource answers: a token that is not valid, figures of operation. */
  @Override
  public Uni<Boolean> sendChallenge(RoutingContext context) {
    if (leadsToOrganisation(context)) {
      return HttpAuthenticationMechanism.super.sendChallenge(context);
    }
    refusal.answerUnknown(context);
    return Uni.createFrom().item(true);
  }

  /** Whether the request is for the page that an OpenID provider guards. */
  private boolean leadsToOrganisation(RoutingContext context) {
    return organisation && context.normalizedPath().equals(SignInPages.ORGANISATION);
  }

  @Override
  public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
    return Set.of(Shown.Token.class, Shown.Session.class, Shown.Nothing.class);
  }

  @Override
  public int getPriority() {
    return PRIORITY;
  }
}
