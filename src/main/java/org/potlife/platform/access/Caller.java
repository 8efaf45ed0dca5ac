package org.potlife.platform.access;

import io.quarkus.arc.Arc;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;

/** Who makes the present request. Work that no request asked for is the service's own. */
@ApplicationScoped
public class Caller {

  /** Attribute of an identity: the one plant that it may see. */
  public static final String PLANT = "potlife.plant";

  /** Attribute of an identity: what kind of caller it is, a {@link Kind}. */
  public static final String KIND = "potlife.kind";

  private final SecurityIdentity identity;
  private final CurrentVertxRequest request;

  @Inject
  Caller(SecurityIdentity identity, CurrentVertxRequest request) {
    this.identity = identity;
    this.request = request;
  }

  /** What kind of caller it is. */
  public enum Kind {
    /** Somebody with an account of this service. */
    ACCOUNT,
    /** A program with a token. */
    TOKEN,
    /** Somebody whom an OpenID provider vouches for. */
    ORGANISATION,
    /** Whoever sits at this computer, while no account exists. */
    OPEN
  }

  /** Whether it has one of the roles. The service itself may everything. */
  public boolean mayAs(Collection<String> roles) {
    return isService() || roles.stream().anyMatch(identity::hasRole);
  }

  /** The name of account or token; empty for strangers and for the service itself. */
  public Optional<String> name() {
    return isService() || identity.isAnonymous()
        ? Optional.empty()
        : Optional.of(identity.getPrincipal().getName());
  }

  /** What kind of caller it is; an identity of nobody here was brought by an OpenID provider. */
  public Optional<Kind> kind() {
    return name().map(name -> kindOf(identity));
  }

  /** The one plant that it may see; empty when it may see all. */
  public Optional<String> plant() {
    return isService() ? Optional.empty() : Optional.ofNullable(identity.getAttribute(PLANT));
  }

  /** Whether it may see a plant. */
  public boolean maySee(String plant) {
    return plant().map(own -> own.equals(plant)).orElse(true);
  }

  /** Its roles with all that they bring along. */
  public Set<String> roles() {
    return isService() ? Set.of() : identity.getRoles();
  }

  private static Kind kindOf(SecurityIdentity identity) {
    Kind kind = identity.getAttribute(KIND);
    return kind == null ? Kind.ORGANISATION : kind;
  }

  private boolean isService() {
    return !Arc.container().requestContext().isActive() || request.getCurrent() == null;
  }
}
