package org.potlife.account.internal;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.HttpSecurityPolicy;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.potlife.platform.access.Caller;
import org.potlife.platform.access.Roles;

/**
 * The figures of operation are of all plants: for everybody with an account, and for tokens made
 * for them, not for tokens of one plant's programs.
 */
@ApplicationScoped
class MetricsPolicy implements HttpSecurityPolicy {

  @Override
  public String name() {
    return "metrics";
  }

  @Override
  public Uni<CheckResult> checkPermission(
      RoutingContext request, Uni<SecurityIdentity> identity, AuthorizationRequestContext context) {
    return identity.map(caller -> mayRead(caller) ? CheckResult.PERMIT : CheckResult.DENY);
  }

  private static boolean mayRead(SecurityIdentity caller) {
    boolean bound = caller.getAttribute(Caller.PLANT) != null;
    return caller.hasRole(Roles.METRICS) || caller.hasRole(Roles.VIEWER) && !bound;
  }
}
