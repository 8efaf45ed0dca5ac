package org.potlife.account.internal;

import io.quarkus.security.ForbiddenException;
import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.potlife.platform.access.Caller;

/** A token of one plant opens nothing of another, and nothing that is of no plant. */
final class PlantBound {

  /** The token is for another plant. */
  static final class OtherPlant extends ForbiddenException {}

  private final Caller caller;

  @Inject
  PlantBound(Caller caller) {
    this.caller = caller;
  }

  @ServerRequestFilter
  void look(ContainerRequestContext request) {
    String asked = request.getUriInfo().getPathParameters().getFirst("plant");
    if (!caller.maySee(asked)) {
      throw new OtherPlant();
    }
  }
}
