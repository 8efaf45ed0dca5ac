package org.potlife.event;

import java.time.Instant;
import java.util.List;
import java.util.Set;

/** Reads what was recorded. Parked events are not part of it. */
public interface EventLog {

  /**
   * Events of the given types that happened at or after {@code since}, by their time, those of the
   * same moment in the order of their recording.
   *
   * @param types without prefix
   */
  List<ShopEvent> list(String plant, Set<String> types, Instant since);

  /**
   * The latest event of a type before a moment for each value of a field of its data.
   *
   * @param type without prefix
   * @param field name of a field of the data
   */
  List<ShopEvent> latestBefore(String plant, String type, String field, Instant before);
}
