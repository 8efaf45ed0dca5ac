package org.potlife.platform.http;

import jakarta.ws.rs.core.HttpHeaders;
import java.util.Arrays;
import java.util.OptionalLong;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.ProblemType;

/**
 * The preconditions of a request (RFC 9110, section 13), against versions that count up.
 *
 * @param ifMatch value of If-Match, or null
 * @param ifNoneMatch value of If-None-Match, or null
 */
public record Preconditions(String ifMatch, String ifNoneMatch) {

  /** None. */
  public static final Preconditions NONE = new Preconditions(null, null);

  public static Preconditions of(HttpHeaders headers) {
    return new Preconditions(
        headers.getHeaderString(HttpHeaders.IF_MATCH),
        headers.getHeaderString(HttpHeaders.IF_NONE_MATCH));
  }

  /** The entity tag of a version. */
  public static String tag(long version) {
    return "\"" + version + "\"";
  }

  /**
   * Refuses a change whose preconditions do not hold.
   *
   * @param current version that is there, empty when nothing is
   * @throws ProblemException 412
   */
  public void allowChange(OptionalLong current) {
    if (ifMatch != null && (current.isEmpty() || !names(ifMatch, current.getAsLong()))) {
      throw failed(
          current.isEmpty()
              ? "There is nothing yet that If-Match could name. Leave it out to create."
              : "If-Match names "
                  + ifMatch
                  + ", the present version is "
                  + tag(current.getAsLong())
                  + ". Read it again and repeat the change on it.");
    }
    if (ifNoneMatch != null && current.isPresent() && names(ifNoneMatch, current.getAsLong())) {
      throw failed(
          "It exists already, as version "
              + tag(current.getAsLong())
              + ". Leave If-None-Match out to replace it.");
    }
  }

  /**
   * Refuses a change of something that is there unless it says which version it changes.
   *
   * @throws ProblemException 428
   */
  public void demandMatch(long current) {
    if (ifMatch == null && ifNoneMatch == null) {
      throw new ProblemException(
          ProblemType.PRECONDITION_REQUIRED,
          "Send If-Match with the ETag that you last read; the present one is "
              + tag(current)
              + ".");
    }
  }

  /** Whether a reader has this version already. */
  public boolean alreadyRead(long current) {
    return ifNoneMatch != null && names(ifNoneMatch.replace("W/", ""), current);
  }

  private static boolean names(String list, long version) {
    return Arrays.stream(list.split(","))
        .map(String::strip)
        .anyMatch(tag -> tag.equals("*") || tag.equals(tag(version)));
  }

  private static ProblemException failed(String detail) {
    return new ProblemException(ProblemType.PRECONDITION_FAILED, detail);
  }
}
