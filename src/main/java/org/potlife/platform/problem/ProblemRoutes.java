package org.potlife.platform.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Problem documents for what is refused before any resource is reached: a body over the limit. */
final class ProblemRoutes {

  private final ObjectMapper mapper;
  private final String limit;

  @Inject
  ProblemRoutes(
      ObjectMapper mapper,
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") String limit) {
    this.mapper = mapper;
    this.limit = limit;
  }

  void install(@Observes Router router) {
    router.route().order(Integer.MIN_VALUE).failureHandler(this::answer);
  }

  private void answer(RoutingContext context) {
    if (context.statusCode() != 413 || context.response().ended()) {
      context.next();
      return;
    }
    Problem problem =
        Problem.of(
            ProblemType.TOO_LARGE,
            "A body may have " + limit + " bytes at most. Send the orders in several requests.");
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader("Content-Type", Problem.MEDIA_TYPE)
        .putHeader("Connection", "close")
        .end(text(problem));
  }

  private String text(Problem problem) {
    try {
      return mapper.writeValueAsString(problem);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
