package org.potlife.platform.problem;

import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;

/**
 * Refuses a body whose announced length is over the limit, before anything else sees the request.
 *
 * <p>A client that is cut off while it still sends sees a broken connection and never the answer,
 * so a body that is not absurdly long is read to its end and thrown away first.
 */
@Singleton
final class AnnouncedLength {

  private final ProblemAnswer problems;
  private final BodyLimit limit;

  @Inject
  AnnouncedLength(ProblemAnswer problems, BodyLimit limit) {
    this.problems = problems;
    this.limit = limit;
  }

  void install(@Observes Router router) {
    router.route().order(Integer.MIN_VALUE).handler(this::refuseAnnounced);
  }

  private void refuseAnnounced(RoutingContext context) {
    long length = announced(context.request());
    if (length <= limit.bytes()) {
      context.next();
    } else if (length > limit.hardBytes()) {
      answer(context);
    } else {
      context.request().handler(ignored -> {}).endHandler(end -> answer(context)).resume();
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
    context.response().putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
    problems.send(context, limit.problem());
  }
}
