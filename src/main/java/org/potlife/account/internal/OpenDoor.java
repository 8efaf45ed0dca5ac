package org.potlife.account.internal;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import io.vertx.core.net.HostAndPort;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.potlife.platform.access.Caller;
import org.potlife.platform.access.Roles;

/**
 * The service before it has accounts: whoever sits at this computer may do everything, nobody else
 * anything. It is this computer when the service listens on loopback alone, the connection comes
 * from there, and the Host header names it, so that a page whose name was rebound to 127.0.0.1
 * stays out.
 */
@ApplicationScoped
class OpenDoor implements IdentityProvider<Shown.Nothing> {

  /** What a proxy adds: then somebody else may be behind the connection. */
  private static final List<String> FORWARDED =
      List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Via");

  private final Accounts accounts;
  private final SignInSettings.Mode mode;
  private final boolean listensHere;

  @Inject
  OpenDoor(
      Accounts accounts,
      SignInSettings settings,
      @ConfigProperty(name = "quarkus.http.host") String host) {
    this.accounts = accounts;
    this.mode = settings.mode();
    this.listensHere = Loopback.isHost(host);
  }

  /** Whether it depends on nothing but the accounts whether this request may do everything. */
  boolean mayBeOpenFor(RoutingContext context) {
    return mode == SignInSettings.Mode.OFF
        || mode == SignInSettings.Mode.AUTO && listensHere && isFromHere(context);
  }

  private static boolean isFromHere(RoutingContext context) {
    HostAndPort asked = context.request().authority();
    return asked != null
        && Loopback.isHost(asked.host())
        && Loopback.isAddress(context.request().remoteAddress().hostAddress())
        && FORWARDED.stream().noneMatch(context.request().headers()::contains);
  }

  @Override
  public Class<Shown.Nothing> getRequestType() {
    return Shown.Nothing.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      Shown.Nothing nothing, AuthenticationRequestContext context) {
    return mode == SignInSettings.Mode.OFF
        ? Uni.createFrom().item(anybody())
        : context.runBlocking(
            () -> {
              if (accounts.isAny()) {
                throw new AuthenticationFailedException();
              }
              return anybody();
            });
  }

  private static SecurityIdentity anybody() {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal("this computer"))
        .addRoles(Set.of(Roles.PLANNER, Roles.ADMINISTRATOR))
        .addAttribute(Caller.KIND, Caller.Kind.OPEN)
        .build();
  }
}
