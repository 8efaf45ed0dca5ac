package org.potlife.platform.http;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MultivaluedMap;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.potlife.platform.problem.ProblemException;

/** The database knows no text with a NUL in it, so nothing can have such a name. */
final class NulNames {

  @ServerRequestFilter
  void refuse(ContainerRequestContext request) {
    if (hasNul(request.getUriInfo().getPathParameters())) {
      throw ProblemException.notFound("Nothing has a name with a NUL character in it.");
    }
    if (hasNul(request.getUriInfo().getQueryParameters())) {
      throw ProblemException.badRequest("A query parameter has a NUL character in it.");
    }
  }

  private static boolean hasNul(MultivaluedMap<String, String> parameters) {
    return parameters.values().stream()
        .anyMatch(values -> values.stream().anyMatch(value -> value.indexOf(0) >= 0));
  }
}
