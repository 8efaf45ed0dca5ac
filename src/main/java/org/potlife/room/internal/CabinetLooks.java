package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.potlife.event.ShopEvent;
import org.potlife.room.CabinetAir;
import org.potlife.room.CabinetAirflow;
import org.potlife.room.KnownScreens;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Calibration;
import org.potlife.screen.Calibration.Look;
import org.potlife.screen.Emulsion;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Keeps what looks at drying screens tell of the cabinets, and learns their airflow from it. */
@ApplicationScoped
class CabinetLooks {

  private final EntityManager entities;
  private final KnownScreens screens;
  private final Shops shops;
  private final ClimateLog climate;

  @Inject
  CabinetLooks(EntityManager entities, KnownScreens screens, Shops shops, ClimateLog climate) {
    this.entities = entities;
    this.screens = screens;
    this.shops = shops;
    this.climate = climate;
  }

  private record Load(String stage, Instant loadIn) {}

  /** Keeps a look, unless the screen was in none of the plant's cabinets with its door shut. */
  void keep(ShopEvent event, String screen, boolean dry) {
    Shop shop = shops.getShop(event.plant()).shop();
    Optional<LookedAt> looked =
        screens
            .findSheet(event.plant())
            .flatMap(sheet -> LookedAt.find(sheet, screen, event.time()));
    looked.ifPresent(
        at ->
            shop.screenRoom().cabinets().stream()
                .filter(cabinet -> cabinet.id().equals(at.step().where()))
                .findFirst()
                .ifPresent(cabinet -> keep(event, screen, dry, shop, cabinet, at)));
  }

  private void keep(
      ShopEvent event, String screen, boolean dry, Shop shop, Cabinet cabinet, LookedAt looked) {
    Emulsion emulsion = shop.screenRoom().emulsion();
    CabinetAir air =
        new CabinetAir(
            cabinet,
            shop.timeZone(),
            emulsion.humidityLimitPercent(),
            climate.listUntil(event.plant(), event.time()));
    EmulsionLookEntity look = new EmulsionLookEntity();
    look.plant = event.plant();
    look.cabinet = cabinet.id();
    look.screen = screen;
    look.stage = looked.step().step();
    look.loadIn = looked.loadIn().toInstant();
    look.at = event.time();
    look.dry = dry;
    look.requiredPaH = emulsion.requiredPaH(look.stage);
    look.deficitPaH = air.deficitPaH(looked.loadIn(), event.time().atOffset(ZoneOffset.UTC));
    entities.persist(look);
  }

  /** What the looks up to {@code now} have made of the airflow factors of cabinets looked at. */
  @Transactional
  List<CabinetAirflow> listAirflow(String plant, Instant now) {
    List<CabinetAirflow> airflow = new ArrayList<>();
    for (Cabinet cabinet : shops.getShop(plant).shop().screenRoom().cabinets()) {
      Calibration learned = calibration(plant, cabinet, now);
      if (learned.observations() > 0) {
        airflow.add(
            new CabinetAirflow(cabinet.id(), learned.factorInUse(), learned.observations()));
      }
    }
    return airflow;
  }

  /** What the looks at a cabinet's loads up to {@code now} have taught. */
  @Transactional
  Calibration calibration(String plant, Cabinet cabinet, Instant now) {
    return Calibration.of(
        cabinet.airflowFactor(),
        loads(plant, cabinet, now).stream()
            .map(Calibration::observe)
            .filter(Objects::nonNull)
            .toList());
  }

  private Collection<List<Look>> loads(String plant, Cabinet cabinet, Instant now) {
    Map<Load, List<Look>> loads = new LinkedHashMap<>();
    entities
        .createQuery(
            "select l from EmulsionLookEntity l where l.plant = :plant and l.cabinet = :cabinet"
                + " and l.at <= :now order by l.at, l.id",
            EmulsionLookEntity.class)
        .setParameter("plant", plant)
        .setParameter("cabinet", cabinet.id())
        .setParameter("now", now)
        .getResultStream()
        .forEach(
            look ->
                loads
                    .computeIfAbsent(new Load(look.stage, look.loadIn), l -> new ArrayList<>())
                    .add(look.look()));
    return loads.values();
  }
}
