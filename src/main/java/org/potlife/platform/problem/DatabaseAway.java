package org.potlife.platform.problem;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.Optional;

/**
 * Answers 503 where the database is away before any resource is reached: nobody can be known then.
 */
@Singleton
final class DatabaseAway {

  private static final int EARLY = Integer.MIN_VALUE + 2;
  private static final String RETRY_AFTER_S = "5";

  private final ProblemAnswer problems;

  @Inject
  DatabaseAway(ProblemAnswer problems) {
    this.problems = problems;
  }

  void install(@Observes Router router) {
    router.route().order(EARLY).failureHandler(this::look);
  }

  private void look(RoutingContext context) {
    Optional<String> away =
        context.failure() == null ? Optional.empty() : DatabaseTrouble.in(context.failure());
    if (away.isEmpty() || context.response().ended() || context.response().headWritten()) {
      context.next();
    } else {
      context.response().putHeader("Retry-After", RETRY_AFTER_S);
      problems.send(context, Problem.of(ProblemType.UNAVAILABLE, away.get()));
    }
  }
}
