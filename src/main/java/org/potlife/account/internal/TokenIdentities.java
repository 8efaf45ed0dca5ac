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
import org.potlife.platform.access.Caller;

/** The program behind a token. */
@ApplicationScoped
class TokenIdentities implements IdentityProvider<Shown.Token> {

  private final Tokens tokens;

  @Inject
  TokenIdentities(Tokens tokens) {
    this.tokens = tokens;
  }

  @Override
  public Class<Shown.Token> getRequestType() {
    return Shown.Token.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      Shown.Token shown, AuthenticationRequestContext context) {
    return context.runBlocking(
        () ->
            tokens
                .use(shown.secret())
                .map(TokenIdentities::identity)
                .orElseThrow(AuthenticationFailedException::new));
  }

  private static SecurityIdentity identity(AccessToken token) {
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal(token.name()))
        .addRoles(token.roles())
        .addAttribute(Caller.KIND, Caller.Kind.TOKEN)
        .addAttribute(Caller.PLANT, token.plant())
        .build();
  }
}
