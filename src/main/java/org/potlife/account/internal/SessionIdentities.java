package org.potlife.account.internal;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Set;
import org.potlife.platform.access.Caller;

/** The person behind a session. */
@ApplicationScoped
class SessionIdentities implements IdentityProvider<Shown.Session> {

  /** Attribute of an identity: the account, an {@link Account}. */
  static final String ACCOUNT = "potlife.account";

  private final Sessions sessions;

  @Inject
  SessionIdentities(Sessions sessions) {
    this.sessions = sessions;
  }

  @Override
  public Class<Shown.Session> getRequestType() {
    return Shown.Session.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      Shown.Session shown, AuthenticationRequestContext context) {
    return context.runBlocking(
        () ->
            sessions
                .use(shown.secret())
                .map(SessionIdentities::identity)
                .orElseThrow(AuthenticationFailedException::new));
  }

  private static SecurityIdentity identity(Account account) {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal(account.name()))
        // nothing but a password of one's own comes before that is set
        .addRoles(account.mustChange() ? Set.of() : account.roles())
        .addAttribute(Caller.KIND, Caller.Kind.ACCOUNT)
        .addAttribute(ACCOUNT, account)
        .build();
  }
}
