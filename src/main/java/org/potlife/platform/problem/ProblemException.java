package org.potlife.platform.problem;

import java.util.List;

/** A request that is refused, with the document that says why. Rolls a transaction back. */
public final class ProblemException extends RuntimeException {

  /** How many errors a document lists; a body of a thousand wrong orders needs no more. */
  private static final int MOST = 200;

  private final transient Problem problem;

  public ProblemException(ProblemType type, String detail) {
    this(Problem.of(type, detail));
  }

  ProblemException(Problem problem) {
    super(problem.detail());
    this.problem = problem;
  }

  /** Valid JSON with wrong content (422). */
  public static ProblemException invalid(List<FieldError> errors) {
    int count = errors.size();
    String detail =
        count == 1
            ? "One value cannot be taken: " + where(errors.get(0)) + " " + errors.get(0).detail()
            : count + " values cannot be taken; errors lists " + (count > MOST ? MOST : "all");
    return new ProblemException(
        Problem.of(ProblemType.INVALID, detail, errors.subList(0, Math.min(count, MOST))));
  }

  private static String where(FieldError error) {
    return error.pointer().isEmpty() ? "the body" : error.pointer();
  }

  public static ProblemException notFound(String detail) {
    return new ProblemException(ProblemType.NOT_FOUND, detail);
  }

  public static ProblemException conflict(String detail) {
    return new ProblemException(ProblemType.CONFLICT, detail);
  }

  /** Not for this caller (403); the errors say which parts of the request. */
  public static ProblemException forbidden(String detail, List<FieldError> errors) {
    return new ProblemException(Problem.of(ProblemType.FORBIDDEN, detail, errors));
  }

  public static ProblemException badRequest(String detail) {
    return new ProblemException(ProblemType.BAD_REQUEST, detail);
  }

  public Problem problem() {
    return problem;
  }
}
