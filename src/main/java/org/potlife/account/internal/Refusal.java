package org.potlife.account.internal;

import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemAnswer;
import org.potlife.platform.problem.ProblemType;

/** How strangers are answered: programs with a problem document, people with the way to sign in. */
@ApplicationScoped
class Refusal {

  static final String BEARER = "Bearer realm=\"potlife\"";

  private static final String HOW =
      "Sign in at /sign-in, or send a valid token: Authorization: Bearer \u2026. While no account"
          + " exists, the service's log has the link under which the first is made.";

  private final ProblemAnswer problems;

  @Inject
  Refusal(ProblemAnswer problems) {
    this.problems = problems;
  }

  static Problem unknown() {
    return Problem.of(ProblemType.UNAUTHORIZED, HOW);
  }

  /** Answers a request of which nobody is known, where no resource does. */
  void answerUnknown(RoutingContext context) {
    if (isForPeople(context)) {
      context.response().setStatusCode(303).putHeader(HttpHeaders.LOCATION, signIn(context)).end();
    } else {
      context.response().putHeader("WWW-Authenticate", BEARER);
      problems.send(context, unknown());
    }
  }

  /** Whether a person waits for the answer: the path is a page, and no token was shown. */
  static boolean isForPeople(RoutingContext context) {
    String path = context.normalizedPath();
    return !path.startsWith("/api/")
        && !path.startsWith("/q/")
        && !context.request().headers().contains(HttpHeaders.AUTHORIZATION);
  }

  /** The sign-in page, which leads back to a page that was only read. */
  static String signIn(RoutingContext context) {
    boolean back =
        context.request().method().name().equals("GET") && !context.request().uri().equals("/");
    return SignInPages.SIGN_IN
        + (back ? "?to=" + URLEncoder.encode(context.request().uri(), StandardCharsets.UTF_8) : "");
  }
}
