package org.potlife.platform.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;

/** Sends problem documents where no resource answers. */
@Singleton
public class ProblemAnswer {

  private final ObjectMapper mapper;

  @Inject
  ProblemAnswer(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** Ends the request with the document. */
  public void send(RoutingContext context, Problem problem) {
    context
        .response()
        .setStatusCode(problem.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
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
