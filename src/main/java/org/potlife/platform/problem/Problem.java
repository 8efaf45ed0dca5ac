package org.potlife.platform.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A problem document (RFC 9457).
 *
 * @param type stable name of the kind of failure
 * @param title the kind in words
 * @param status HTTP status
 * @param detail this occurrence, with the remedy
 * @param errors every value of the request that cannot be taken
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Problem(
    String type, String title, int status, String detail, List<FieldError> errors) {

  public static final String MEDIA_TYPE = "application/problem+json";

  public static Problem of(ProblemType type, String detail) {
    return of(type, detail, List.of());
  }

  public static Problem of(ProblemType type, String detail, List<FieldError> errors) {
    return new Problem(type.urn(), type.title(), type.status(), detail, List.copyOf(errors));
  }
}
