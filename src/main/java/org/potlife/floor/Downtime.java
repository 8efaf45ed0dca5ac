package org.potlife.floor;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;

/**
 * A time in which a press or a dryer was, is or will be down. Exactly one of the two is named; a
 * dryer that is down closes every press that feeds it.
 *
 * @param to when it is up again, as told or, while nobody tells, as a plan assumes
 * @param cause why, in the crew's words; null when nobody told
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Downtime(
    String press, String dryer, OffsetDateTime from, OffsetDateTime to, String cause) {

  /** Whether it closes a press that feeds this dryer. */
  public boolean stops(String ofPress, String ofDryer) {
    return ofPress.equals(press) || ofDryer.equals(dryer);
  }
}
