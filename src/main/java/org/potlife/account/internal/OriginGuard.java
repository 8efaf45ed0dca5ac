package org.potlife.account.internal;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.HostAndPort;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.Optional;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemAnswer;
import org.potlife.platform.problem.ProblemType;

/** Refuses what {@link OriginRule} refuses, before anybody looks at who sends it. */
@Singleton
final class OriginGuard {

  /** After the length of the body was looked at, before sign-in. */
  private static final int EARLY = Integer.MIN_VALUE + 1;

  private final ProblemAnswer problems;

  @Inject
  OriginGuard(ProblemAnswer problems) {
    this.problems = problems;
  }

  void install(@Observes Router router) {
    router.route().order(EARLY).handler(this::look);
  }

  private void look(RoutingContext context) {
    HttpServerRequest request = context.request();
    HostAndPort asked = request.authority();
    Optional<String> refusal =
        OriginRule.refusal(
            request.method().name(),
            request.getHeader("Sec-Fetch-Site"),
            request.getHeader("Origin"),
            asked == null ? null : asked.toString(),
            SessionCookie.isAnyIn(context));
    if (refusal.isEmpty()) {
      context.next();
    } else {
      // the body is thrown away, or the connection would be stuck on it
      request.resume();
      problems.send(context, Problem.of(ProblemType.FORBIDDEN, refusal.get()));
    }
  }
}
