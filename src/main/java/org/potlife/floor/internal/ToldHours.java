package org.potlife.floor.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;
import org.potlife.floor.Downtime;
import org.potlife.floor.Hours;
import org.potlife.floor.Staffing;
import org.potlife.shop.Shops;

/** Reads back from the log what was told of the hours of presses and dryers. */
@ApplicationScoped
class ToldHours {

  /** Longer than any run of an open order lies back. */
  private static final Duration KEPT = Duration.ofDays(60);

  private static final Set<String> UP_AND_DOWN =
      Set.of("press.down", "press.up", "dryer.down", "dryer.up");

  private final EventLog log;
  private final Shops shops;
  private final ObjectMapper mapper;

  @Inject
  ToldHours(EventLog log, Shops shops, ObjectMapper mapper) {
    this.log = log;
    this.shops = shops;
    this.mapper = mapper;
  }

  /** The times in which presses and dryers are down, by what was told to happen before a moment. */
  List<Downtime> down(String plant, Instant now) {
    List<Hours.Told> told =
        log.list(plant, UP_AND_DOWN, now.minus(KEPT)).stream()
            .filter(event -> event.time().isBefore(now))
            .map(this::told)
            .toList();
    return Hours.down(told, shops.getShop(plant).shop().timeZone(), now);
  }

  /** Times that are staffed otherwise than usual, by what was told before a moment. */
  List<Staffing> staffing(String plant, Instant now) {
    List<Hours.ToldShift> told =
        log.list(plant, Set.of("shift.changed"), now.minus(KEPT)).stream()
            .filter(event -> event.time().isBefore(now))
            .map(this::shift)
            .toList();
    return Hours.staffing(told, shops.getShop(plant).shop().timeZone());
  }

  private Hours.Told told(ShopEvent event) {
    String press = text(event, "press");
    String dryer = text(event, "dryer");
    String until = text(event, "until");
    return new Hours.Told(
        press,
        dryer,
        event.time(),
        event.type().endsWith(".up"),
        until == null ? null : OffsetDateTime.parse(until).toInstant(),
        text(event, "cause"));
  }

  private static String text(ShopEvent event, String field) {
    return event.data().hasNonNull(field) ? event.data().get(field).asText() : null;
  }

  private Hours.ToldShift shift(ShopEvent event) {
    try {
      ShiftEffect.Data data = mapper.treeToValue(event.data(), ShiftEffect.Data.class);
      return new Hours.ToldShift(
          data.press(),
          event.time(),
          data.from().toInstant(),
          data.to().toInstant(),
          data.staffed());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Event " + event.id() + " is unreadable", e);
    }
  }
}
