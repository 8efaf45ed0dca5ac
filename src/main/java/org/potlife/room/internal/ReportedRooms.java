package org.potlife.room.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.Set;
import java.util.stream.Stream;
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;
import org.potlife.room.BrokenScreen;
import org.potlife.room.EmulsionReading;
import org.potlife.room.RoomState;
import org.potlife.room.Rooms;

/** Reads the rooms' reports back from the log of events. */
@ApplicationScoped
class ReportedRooms implements Rooms {

  /** Longer than any screen stays in a cabinet. */
  private static final Duration LOOKS_KEPT = Duration.ofDays(60);

  private final EventLog log;
  private final ClimateLog climate;
  private final CabinetLooks looks;
  private final ObjectMapper mapper;

  @Inject
  ReportedRooms(EventLog log, ClimateLog climate, CabinetLooks looks, ObjectMapper mapper) {
    this.log = log;
    this.climate = climate;
    this.looks = looks;
    this.mapper = mapper;
  }

  @Override
  public RoomState stateAt(String plant, Instant now) {
    return new RoomState(
        climate.listUntil(plant, now),
        told(plant, "emulsion.reading", now.minus(LOOKS_KEPT), now).map(this::emulsion).toList(),
        log.latestBefore(plant, "screen.broken", "screen", now.plusNanos(1000)).stream()
            .map(this::broken)
            .sorted(Comparator.comparing(broken -> broken.at().toInstant()))
            .toList(),
        looks.listAirflow(plant, now));
  }

  private Stream<ShopEvent> told(String plant, String type, Instant since, Instant now) {
    return log.list(plant, Set.of(type), since).stream()
        .filter(event -> !event.time().isAfter(now));
  }

  private EmulsionReading emulsion(ShopEvent event) {
    EmulsionEffect.Data data = read(event, EmulsionEffect.Data.class);
    return new EmulsionReading(data.screen(), at(event), data.dry());
  }

  private BrokenScreen broken(ShopEvent event) {
    BrokenEffect.Data data = read(event, BrokenEffect.Data.class);
    return new BrokenScreen(data.screen(), at(event));
  }

  private static OffsetDateTime at(ShopEvent event) {
    return event.time().atOffset(ZoneOffset.UTC);
  }

  private <D> D read(ShopEvent event, Class<D> type) {
    try {
      return mapper.treeToValue(event.data(), type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Event " + event.id() + " is unreadable", e);
    }
  }
}
