package org.potlife.account.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;

/**
 * One write: who did what, when, and what came of it. Neither bodies nor secrets.
 *
 * @param seq counts up; what is read on from
 * @param who name of the account or token
 * @param kind account, token, organisation, or open: whoever sat at this computer
 * @param path the path with its names in braces, as {@code /q/openapi} has it
 * @param plant null when it is of no plant
 * @param about what of the plant, from the path; null when the path names nothing
 * @param status of the answer; null when the service ended before it answered
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record TrailEntry(
    long seq,
    Instant at,
    String who,
    String kind,
    String method,
    String path,
    String plant,
    String about,
    Integer status) {

  /** What came of it, in words. */
  @JsonProperty("outcome")
  public String outcome() {
    if (status == null) {
      return "cut off";
    }
    if (status < 400) {
      return "done";
    }
    return status == 401 || status == 403 ? "not allowed" : "refused";
  }
}
