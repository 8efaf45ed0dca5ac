package org.potlife.account.internal;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;

/** The account of who makes the present request. */
@ApplicationScoped
class OwnAccount {

  private final SecurityIdentity identity;

  @Inject
  OwnAccount(SecurityIdentity identity) {
    this.identity = identity;
  }

  /** Empty for strangers, tokens, and people without an account here. */
  Optional<Account> find() {
    return Optional.ofNullable(identity.getAttribute(SessionIdentities.ACCOUNT));
  }
}
