package org.potlife.room.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;
import org.potlife.room.BrokenScreen;
import org.potlife.room.ClimateReading;
import org.potlife.room.EmulsionReading;
import org.potlife.room.RoomState;
import org.potlife.room.Rooms;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.shop.Shop;

/** Reads the rooms' reports back from the log of events. */
@ApplicationScoped
class ReportedRooms implements Rooms {

  /** What dries longer than this counts with the last reading before. */
  private static final Duration CLIMATE_KEPT = Duration.ofHours(48);

  /** Closer readings of one place tell nothing new; the last one of such a while counts. */
  private static final Duration CLIMATE_STEP = Duration.ofMinutes(5);

  /** Longer than any screen stays in the room. */
  private static final Duration SCREENS_KEPT = Duration.ofDays(60);

  private final EventLog log;
  private final ObjectMapper mapper;

  @Inject
  ReportedRooms(EventLog log, ObjectMapper mapper) {
    this.log = log;
    this.mapper = mapper;
  }

  @Override
  public RoomState stateAt(String plant, Instant now) {
    List<ClimateReading> climate = new ArrayList<>();
    Instant since = now.minus(CLIMATE_KEPT);
    log.latestBefore(plant, "climate.reading", "room", since).stream()
        .map(this::climate)
        .sorted(Comparator.comparing(reading -> reading.at().toInstant()))
        .forEach(climate::add);
    climate.addAll(thinned(told(plant, "climate.reading", since, now).map(this::climate).toList()));
    Instant screensSince = now.minus(SCREENS_KEPT);
    return new RoomState(
        climate,
        told(plant, "emulsion.reading", screensSince, now).map(this::emulsion).toList(),
        told(plant, "screen.broken", screensSince, now).map(this::broken).toList());
  }

  private Stream<ShopEvent> told(String plant, String type, Instant since, Instant now) {
    return log.list(plant, Set.of(type), since).stream()
        .filter(event -> !event.time().isAfter(now));
  }

  private static List<ClimateReading> thinned(List<ClimateReading> readings) {
    List<ClimateReading> kept = new ArrayList<>();
    Map<String, Integer> last = new HashMap<>();
    for (ClimateReading reading : readings) {
      Integer before = last.get(reading.place());
      if (before != null
          && reading.at().toInstant().isBefore(kept.get(before).at().plus(CLIMATE_STEP).toInstant())
          && !kept.get(before).at().isEqual(reading.at())) {
        continue;
      }
      last.put(reading.place(), kept.size());
      kept.add(reading);
    }
    return kept;
  }

  /** What a place's climate was thought to be at a moment: the last reading, else the forecast. */
  Optional<ClimateReading> climateBefore(Shop shop, String plant, String place, Instant at) {
    Optional<ClimateReading> read =
        log.latestBefore(plant, "climate.reading", "room", at).stream()
            .map(this::climate)
            .filter(reading -> reading.place().equals(place))
            .findFirst();
    Optional<ClimateReading> forecast =
        shop.screenRoom().cabinets().stream()
            .filter(cabinet -> cabinet.id().equals(place))
            .findFirst()
            .map(cabinet -> forecast(cabinet, at.atZone(shop.timeZone()).toOffsetDateTime()));
    return read.isPresent() && (forecast.isEmpty() || !forecast.get().at().isAfter(read.get().at()))
        ? read
        : forecast;
  }

  private static ClimateReading forecast(Cabinet cabinet, OffsetDateTime at) {
    List<ClimatePeriod> periods =
        cabinet.climate().stream().sorted(Comparator.comparing(ClimatePeriod::from)).toList();
    ClimatePeriod holds = periods.get(periods.size() - 1);
    OffsetDateTime since = at.minusDays(1).with(holds.from());
    for (ClimatePeriod period : periods) {
      if (!period.from().isAfter(at.toLocalTime())) {
        holds = period;
        since = at.with(period.from());
      }
    }
    return new ClimateReading(cabinet.id(), since, holds.temperatureC(), holds.humidityPercent());
  }

  private ClimateReading climate(ShopEvent event) {
    ClimateEffect.Data data = read(event, ClimateEffect.Data.class);
    return new ClimateReading(data.room(), at(event), data.temperatureC(), data.humidityPercent());
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
