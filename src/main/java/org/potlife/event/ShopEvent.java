package org.potlife.event;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;

/**
 * Something that happened in a plant, as told.
 *
 * @param source who tells it (CloudEvents {@code source})
 * @param id unique within the source
 * @param type without the prefix {@code org.potlife.}, for example climate.reading
 * @param time when it happened; what is told late keeps its own time
 * @param data what happened, as its type describes it
 */
public record ShopEvent(
    String plant, String source, String id, String type, Instant time, JsonNode data) {

  /** What every type begins with on the wire. */
  public static final String PREFIX = "org.potlife.";
}
