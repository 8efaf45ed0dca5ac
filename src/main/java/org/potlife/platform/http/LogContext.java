package org.potlife.platform.http;

import jakarta.ws.rs.container.ContainerRequestContext;
import org.jboss.logging.MDC;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Names plant and plan of a request in every line that is logged on its behalf. */
final class LogContext {

  private static final int LONGEST = 60;

  @ServerRequestFilter
  void enter(ContainerRequestContext request) {
    var names = request.getUriInfo().getPathParameters();
    put("plant", names.getFirst("plant"));
    put("plan", names.getFirst("id"));
  }

  @ServerResponseFilter
  void leave() {
    MDC.remove("plant");
    MDC.remove("plan");
  }

  private static void put(String key, String value) {
    // a name from outside must not be able to write lines of its own into the log
    if (value != null && value.length() <= LONGEST && value.matches("[\\w.~-]+")) {
      MDC.put(key, value);
    }
  }
}
