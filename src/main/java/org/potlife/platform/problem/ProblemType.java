package org.potlife.platform.problem;

/** Kinds of failure, each with its stable name and its HTTP status. */
public enum ProblemType {
  BAD_REQUEST("bad-request", 400, "The request is not understood"),
  NOT_JSON("not-json", 400, "The body is not valid JSON"),
  UNAUTHORIZED("unauthorized", 401, "Who are you?"),
  FORBIDDEN("forbidden", 403, "This is not allowed"),
  NOT_FOUND("not-found", 404, "There is nothing here"),
  METHOD_NOT_ALLOWED("method-not-allowed", 405, "This method is not offered here"),
  NOT_ACCEPTABLE("not-acceptable", 406, "The wanted media type is not offered here"),
  CONFLICT("conflict", 409, "The present state does not allow this"),
  PRECONDITION_FAILED("precondition-failed", 412, "It has changed in the meantime"),
  TOO_LARGE("too-large", 413, "The body is too large"),
  UNSUPPORTED_MEDIA_TYPE("unsupported-media-type", 415, "This media type is not read here"),
  INVALID("invalid", 422, "The content cannot be taken"),
  PRECONDITION_REQUIRED("precondition-required", 428, "A precondition is needed"),
  TOO_MANY_REQUESTS("too-many-requests", 429, "Another request must end first"),
  INTERNAL("internal", 500, "The service failed"),
  UNAVAILABLE("unavailable", 503, "The service is not ready");

  private final String word;
  private final int status;
  private final String title;

  ProblemType(String word, int status, String title) {
    this.word = word;
    this.status = status;
    this.title = title;
  }

  public int status() {
    return status;
  }

  String title() {
    return title;
  }

  /** The value of {@code type} in the document. */
  public String urn() {
    return "urn:potlife:problem:" + word;
  }

  /** The kind for a status that a library chose; client errors without a kind are bad requests. */
  static ProblemType ofStatus(int status) {
    for (ProblemType type : values()) {
      if (type.status == status && type != NOT_JSON) {
        return type;
      }
    }
    return status >= 400 && status < 500 ? BAD_REQUEST : INTERNAL;
  }
}
