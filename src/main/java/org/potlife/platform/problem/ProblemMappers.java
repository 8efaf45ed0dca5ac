package org.potlife.platform.problem;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.nio.channels.ClosedChannelException;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns whatever a resource throws into a problem document. */
final class ProblemMappers {

  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);
  private static final int RETRY_AFTER_S = 5;

  @ServerExceptionMapper
  Response refused(ProblemException e) {
    return answer(e.problem()).build();
  }

  /** What the HTTP layer itself refuses: no such path, method, media type. */
  @ServerExceptionMapper
  Response refusedByLayer(WebApplicationException e, UriInfo uri) {
    int status = e.getResponse().getStatus();
    if (status < 400) {
      return e.getResponse();
    }
    if (status >= 500) {
      return unforeseen(e);
    }
    ProblemType type = ProblemType.ofStatus(status);
    Response.ResponseBuilder answer = answer(Problem.of(type, detail(type, uri)));
    String allow = e.getResponse().getHeaderString(HttpHeaders.ALLOW);
    return (allow == null ? answer : answer.header(HttpHeaders.ALLOW, allow)).build();
  }

  @ServerExceptionMapper
  Response unforeseen(Throwable e) {
    Optional<String> database = DatabaseTrouble.in(e);
    if (database.isPresent()) {
      // one line each: there will be many until it is back
      LOG.warnf("Answered 503: %s", e.toString());
      return answer(Problem.of(ProblemType.UNAVAILABLE, database.get())).build();
    }
    if (e instanceof ClosedChannelException) {
      // a browser that leaves a stream; there is nobody to answer
      LOG.debug("The caller has left", e);
      return answer(Problem.of(ProblemType.UNAVAILABLE, "The connection is closed.")).build();
    }
    String number = UUID.randomUUID().toString();
    LOG.errorf(e, "Unforeseen failure %s", number);
    return answer(
            Problem.of(
                ProblemType.INTERNAL,
                "Nothing was changed. The log has the cause under " + number + "."))
        .build();
  }

  private static String detail(ProblemType type, UriInfo uri) {
    return switch (type) {
      case NOT_FOUND -> "Nothing is served under /" + stripped(uri.getPath()) + ".";
      case METHOD_NOT_ALLOWED -> "Use one of the methods that /q/openapi lists for this path.";
      case NOT_ACCEPTABLE -> "Ask for application/json, or leave the Accept header out.";
      case UNSUPPORTED_MEDIA_TYPE -> "Send the body with Content-Type: application/json.";
      default -> "See /q/openapi for what is expected here.";
    };
  }

  private static String stripped(String path) {
    return path.startsWith("/") ? path.substring(1) : path;
  }

  private static Response.ResponseBuilder answer(Problem problem) {
    Response.ResponseBuilder answer =
        Response.status(problem.status()).type(Problem.MEDIA_TYPE).entity(problem);
    return problem.status() == ProblemType.UNAVAILABLE.status()
        ? answer.header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_S)
        : answer;
  }
}
