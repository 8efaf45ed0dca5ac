package org.potlife.outbox.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.potlife.event.ShopEvent;
import org.potlife.outbox.Notice;

/** Writes a notice as a CloudEvent 1.0 in the JSON format. */
@Singleton
class EventDocument {

  /** Wide enough for every number, so that the sequence extension sorts as text. */
  private static final String SEQUENCE = "%019d";

  private final ObjectMapper mapper;

  @Inject
  EventDocument(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  String write(Notice notice, long seq) {
    ObjectNode event = mapper.createObjectNode();
    event.put("specversion", "1.0");
    event.put("id", notice.id());
    event.put("source", notice.source());
    event.put("type", ShopEvent.PREFIX + notice.type());
    if (notice.subject() != null) {
      event.put("subject", notice.subject());
    }
    event.put(
        "time",
        DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(notice.time().atOffset(ZoneOffset.UTC)));
    event.put("datacontenttype", "application/json");
    event.put("plant", notice.plant());
    event.put("sequence", SEQUENCE.formatted(seq));
    event.set("data", mapper.valueToTree(notice.data()));
    try {
      return mapper.writeValueAsString(event);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
