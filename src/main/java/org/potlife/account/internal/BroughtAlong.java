package org.potlife.account.internal;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.SecurityIdentityAugmentor;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.potlife.platform.access.Role;

/** Adds the roles that others bring along, whoever vouched for the caller. */
@ApplicationScoped
class BroughtAlong implements SecurityIdentityAugmentor {

  @Override
  public Uni<SecurityIdentity> augment(
      SecurityIdentity identity, AuthenticationRequestContext context) {
    return Uni.createFrom()
        .item(
            identity.isAnonymous()
                ? identity
                : QuarkusSecurityIdentity.builder(identity)
                    .addRoles(Role.withAllBroughtAlong(identity.getRoles()))
                    .build());
  }
}
