package org.potlife.event.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * One event of the log.
 *
 * @param seq its number, in the order of recording
 * @param time when it happened
 * @param recordedAt when it was told
 * @param cause what of the shop's state it contradicts; null when it took effect
 * @param settlements what was decided about it; null when it was never parked
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record LogEntry(
    long seq,
    String source,
    String id,
    String type,
    OffsetDateTime time,
    OffsetDateTime recordedAt,
    String state,
    String cause,
    JsonNode data,
    List<Settlement> settlements) {

  /** A page of them; next is the cursor of the next one, left out on the last. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Page(List<LogEntry> events, String next) {}

  /**
   * A decision.
   *
   * @param cause what the event was parked for
   * @param outcome applied, parked (again) or dismissed
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Settlement(
      String how, String by, String note, OffsetDateTime at, String cause, String outcome) {}

  static LogEntry of(
      ShopEventEntity row, JsonNode data, List<EventSettlementEntity> decided, ZoneId zone) {
    return new LogEntry(
        row.seq,
        row.source,
        row.eventId,
        row.type,
        at(row.time, zone),
        at(row.recordedAt, zone),
        row.state().word(),
        row.parked,
        data,
        decided.isEmpty() ? null : decided.stream().map(each -> settlement(each, zone)).toList());
  }

  private static Settlement settlement(EventSettlementEntity row, ZoneId zone) {
    return new Settlement(row.how, row.person, row.note, at(row.at, zone), row.cause, row.outcome);
  }

  private static OffsetDateTime at(Instant instant, ZoneId zone) {
    return instant.atZone(zone).toOffsetDateTime();
  }
}
