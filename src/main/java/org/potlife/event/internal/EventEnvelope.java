package org.potlife.event.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.potlife.event.ShopEvent;
import org.potlife.platform.problem.FieldError;

/**
 * The attributes of a CloudEvent (CloudEvents 1.0.2, JSON event format). Extension attributes are
 * allowed and not kept.
 */
record EventEnvelope(String source, String id, String type, Instant time, JsonNode data) {

  /** Clocks of machines differ; what lies further ahead is a wrong clock. */
  private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(5);

  private static final int LONGEST = 200;

  /** What the service itself tells; a stranger's event must not take its ids. */
  private static final Pattern OUR_OWN = Pattern.compile("/plants(/.*)?");

  /**
   * Reads one event.
   *
   * @param known types that have an effect, without prefix
   * @param now the present; also the time of an event that has none
   * @param errors receives what is wrong, with pointers from the event on
   * @return null when something is wrong
   */
  static EventEnvelope read(
      JsonNode event, Set<String> known, Instant now, List<FieldError> errors) {
    if (!event.isObject()) {
      errors.add(new FieldError("", "must be an object: one CloudEvent"));
      return null;
    }
    List<FieldError> wrong = new ArrayList<>();
    if (!"1.0".equals(event.path("specversion").asText())) {
      wrong.add(new FieldError("/specversion", "must be \"1.0\""));
    }
    String source = name(event, "source", wrong);
    if (OUR_OWN.matcher(source).matches()) {
      wrong.add(new FieldError("/source", "is the service's own; take one of your own"));
    }
    String id = name(event, "id", wrong);
    String type = type(event, known, wrong);
    Instant time = time(event, now, wrong);
    String format = event.path("datacontenttype").asText("application/json");
    if (!format.matches("application/([\\w.-]+\\+)?json(;.*)?")) {
      wrong.add(new FieldError("/datacontenttype", "must be application/json"));
    }
    if (!event.path("data").isObject()) {
      wrong.add(new FieldError("/data", "must be an object"));
    }
    errors.addAll(wrong);
    return wrong.isEmpty() ? new EventEnvelope(source, id, type, time, event.get("data")) : null;
  }

  private static String name(JsonNode event, String attribute, List<FieldError> wrong) {
    JsonNode value = event.path(attribute);
    String text = value.isTextual() ? value.textValue() : "";
    boolean printable = text.codePoints().allMatch(c -> c > ' ' && c != 0x7f && c < 0xD800);
    if (text.isEmpty() || text.length() > LONGEST || !printable) {
      wrong.add(
          new FieldError(
              "/" + attribute,
              "must be text of 1 to " + LONGEST + " characters without spaces, unique per event"));
    }
    return text;
  }

  private static String type(JsonNode event, Set<String> known, List<FieldError> wrong) {
    String type = event.path("type").asText("");
    String ours =
        type.startsWith(ShopEvent.PREFIX) ? type.substring(ShopEvent.PREFIX.length()) : "";
    if (!known.contains(ours)) {
      String all =
          String.join(", ", known.stream().sorted().map(each -> ShopEvent.PREFIX + each).toList());
      wrong.add(new FieldError("/type", "is not known here; known are " + all));
    }
    return ours;
  }

  private static Instant time(JsonNode event, Instant now, List<FieldError> wrong) {
    JsonNode value = event.path("time");
    if (value.isMissingNode() || value.isNull()) {
      return now;
    }
    try {
      Instant time = OffsetDateTime.parse(value.asText()).toInstant();
      if (!time.isAfter(now.plus(CLOCKS_DIFFER)) && time.isAfter(now.minus(Duration.ofDays(366)))) {
        return time;
      }
      wrong.add(
          new FieldError(
              "/time", "must lie within the last year and not ahead of now (" + now + ")"));
    } catch (DateTimeException e) {
      wrong.add(
          new FieldError(
              "/time", "must be a date-time with offset, for example 2026-12-01T06:00:00+01:00"));
    }
    return now;
  }
}
