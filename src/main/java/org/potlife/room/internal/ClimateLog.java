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
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;
import org.potlife.room.CabinetAir;
import org.potlife.room.ClimateReading;
import org.potlife.shop.Shop;

/** Reads the thermometers' and hygrometers' reports back from the log of events. */
@ApplicationScoped
class ClimateLog {

  /** What dries longer than this counts with the last reading before. */
  private static final Duration CLIMATE_KEPT = Duration.ofHours(48);

  /** Closer readings of one place tell nothing new; the last one of such a while counts. */
  private static final Duration CLIMATE_STEP = Duration.ofMinutes(5);

  private final EventLog log;
  private final ObjectMapper mapper;

  @Inject
  ClimateLog(EventLog log, ObjectMapper mapper) {
    this.log = log;
    this.mapper = mapper;
  }

  /** Readings up to a moment: per place the last one before the period kept, then those in it. */
  List<ClimateReading> listUntil(String plant, Instant now) {
    List<ClimateReading> climate = new ArrayList<>();
    Instant since = now.minus(CLIMATE_KEPT);
    log.latestBefore(plant, "climate.reading", "room", since).stream()
        .map(this::climate)
        .sorted(Comparator.comparing(reading -> reading.at().toInstant()))
        .forEach(climate::add);
    climate.addAll(thinned(since(plant, since, now)));
    return climate;
  }

  private List<ClimateReading> since(String plant, Instant since, Instant now) {
    return log.list(plant, Set.of("climate.reading"), since).stream()
        .filter(event -> !event.time().isAfter(now))
        .map(this::climate)
        .toList();
  }

  /** Of readings closer to each other the last one, so that what came last is never lost. */
  static List<ClimateReading> thinned(List<ClimateReading> readings) {
    List<ClimateReading> kept = new ArrayList<>();
    Map<String, Integer> group = new HashMap<>();
    Map<String, OffsetDateTime> since = new HashMap<>();
    for (ClimateReading reading : readings) {
      OffsetDateTime begun = since.get(reading.place());
      if (begun != null && reading.at().isBefore(begun.plus(CLIMATE_STEP))) {
        kept.set(group.get(reading.place()), reading);
      } else {
        since.put(reading.place(), reading.at());
        group.put(reading.place(), kept.size());
        kept.add(reading);
      }
    }
    kept.sort(Comparator.comparing(reading -> reading.at().toInstant()));
    return kept;
  }

  /** What a place's climate was thought to be at a moment: the last reading, else the forecast. */
  Optional<ClimateReading> findBefore(Shop shop, String plant, String place, Instant at) {
    Optional<ClimateReading> read =
        log.latestBefore(plant, "climate.reading", "room", at).stream()
            .map(this::climate)
            .filter(reading -> reading.place().equals(place))
            .findFirst();
    OffsetDateTime moment = at.atOffset(ZoneOffset.UTC);
    return shop.screenRoom().cabinets().stream()
        .filter(cabinet -> cabinet.id().equals(place))
        .findFirst()
        .map(
            cabinet ->
                new CabinetAir(
                        cabinet,
                        shop.timeZone(),
                        shop.screenRoom().emulsion().humidityLimitPercent(),
                        read.stream().toList())
                    .at(moment))
        .map(
            air -> new ClimateReading(place, air.from(), air.temperatureC(), air.humidityPercent()))
        .or(() -> read);
  }

  private ClimateReading climate(ShopEvent event) {
    try {
      ClimateEffect.Data data = mapper.treeToValue(event.data(), ClimateEffect.Data.class);
      return new ClimateReading(
          data.room(),
          event.time().atOffset(ZoneOffset.UTC),
          data.temperatureC(),
          data.humidityPercent());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Event " + event.id() + " is unreadable", e);
    }
  }
}
