package org.potlife.platform.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.configuration.MemorySize;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Problem documents for bodies over the limit, which are refused before any resource is reached.
 *
 * <p>A client that is cut off while it still sends sees a broken connection and never the answer,
 * so a body that is not absurdly long is read to its end and thrown away first.
 */
@Singleton
final class ProblemRoutes {

  private static final long LONGEST_DRAINED = 256L << 20;

  private final ObjectMapper mapper;
  private final long limit;

  @Inject
  ProblemRoutes(
      ObjectMapper mapper,
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize limit) {
    this.mapper = mapper;
    this.limit = limit.asLongValue();
  }

  void install(@Observes Router router) {
    router
        .route()
        .order(Integer.MIN_VALUE)
        .handler(this::refuseAnnounced)
        .failureHandler(this::refuseFound);
  }

  /** A body whose announced length is over the limit. */
  private void refuseAnnounced(RoutingContext context) {
    long length = announced(context.request());
    if (length <= limit) {
      context.next();
    } else if (length > LONGEST_DRAINED) {
      answer(context);
    } else {
      context.request().handler(ignored -> {}).endHandler(end -> answer(context)).resume();
    }
  }

  /** A body of unannounced length that grew over the limit. */
  private void refuseFound(RoutingContext context) {
    if (context.statusCode() == ProblemType.TOO_LARGE.status() && !context.response().ended()) {
      answer(context);
    } else {
      context.next();
    }
  }

  private static long announced(HttpServerRequest request) {
    String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
    try {
      return length == null ? 0 : Long.parseLong(length.strip());
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  private void answer(RoutingContext context) {
    Problem problem =
        Problem.of(
            ProblemType.TOO_LARGE,
            "A body may have "
                + (limit >> 20)
                + " MiB at most. Send the orders in several requests.");
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
        .putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE)
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
