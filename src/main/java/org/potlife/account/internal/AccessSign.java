package org.potlife.account.internal;

import io.quarkus.runtime.annotations.RegisterForReflection;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.potlife.platform.access.Caller;
import org.potlife.platform.access.Roles;

/** What every page says of who looks at it; templates read it as {@code inject:access}. */
@Named("access")
@ApplicationScoped
@RegisterForReflection
public class AccessSign {

  private final SecurityIdentity identity;
  private final SignInSettings.Mode mode;
  private final boolean organisation;

  @Inject
  AccessSign(
      SecurityIdentity identity,
      SignInSettings settings,
      @ConfigProperty(name = "quarkus.oidc.tenant-enabled") boolean organisation) {
    this.identity = identity;
    this.mode = settings.mode();
    this.organisation = organisation;
  }

  /** Whether whoever looks may do everything because there is no account yet. */
  public boolean isOpen() {
    return identity.getAttribute(Caller.KIND) == Caller.Kind.OPEN && !isOff();
  }

  /** Whether sign-in is turned off. */
  public boolean isOff() {
    return mode == SignInSettings.Mode.OFF;
  }

  /** Whether a person is signed in. */
  public boolean isSignedIn() {
    return !identity.isAnonymous() && identity.getAttribute(Caller.KIND) != Caller.Kind.OPEN;
  }

  /** The name of who is signed in. */
  public String getName() {
    Account account = identity.getAttribute(SessionIdentities.ACCOUNT);
    return account == null ? identity.getPrincipal().getName() : account.fullName();
  }

  /** Whether who is signed in has a password here. */
  public boolean isAccount() {
    return identity.getAttribute(SessionIdentities.ACCOUNT) != null;
  }

  public boolean isAdministers() {
    return identity.hasRole(Roles.ADMINISTRATOR);
  }

  public boolean isReadsTrail() {
    return identity.hasRole(Roles.ADMINISTRATOR) || identity.hasRole(Roles.PLANNER);
  }

  /** Whether an OpenID provider can vouch for people. */
  public boolean isOrganisation() {
    return organisation;
  }

  /** Whether who looks has a role, by its name; for what a page offers. */
  public boolean may(String role) {
    return identity.hasRole(role);
  }
}
