package org.potlife.room.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.potlife.platform.access.Roles;
import org.potlife.room.CabinetAir;
import org.potlife.room.CabinetAir.Stretch;
import org.potlife.room.ClimateReading;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Calibration;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** The drying cabinets as they stand: their air and their airflow factors. */
@Path("/api/v1/plants/{plant}/screen-room/cabinets")
@Tag(name = "screen room", description = "Cabinets and screens as they stand")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Roles.VIEWER)
public class CabinetResource {

  private final Shops shops;
  private final ClimateLog climate;
  private final CabinetLooks looks;
  private final Clock clock;

  @Inject
  CabinetResource(Shops shops, ClimateLog climate, CabinetLooks looks, Clock clock) {
    this.shops = shops;
    this.climate = climate;
    this.looks = looks;
    this.clock = clock;
  }

  /**
   * All cabinets of the set-up.
   *
   * @param smoothing share of its error by which a load moves a factor
   * @param leastObservations fewer loads change no factor in use
   */
  public record Cabinets(double smoothing, int leastObservations, List<Line> cabinets) {}

  /**
   * One cabinet.
   *
   * @param setUpFactor airflow factor of the set-up
   * @param learnedFactor what the looks have made of it, in use or not
   * @param factorInUse what the next plan reckons with
   * @param observations loads that were looked at and told something
   * @param lastReading null until somebody read it
   * @param temperatureC what is reckoned with now, read or expected
   * @param humidityPercent what is reckoned with now, read or expected
   * @param read whether that was read
   * @param driesNow whether the air is at most as humid as the emulsion's limit
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Line(
      String cabinet,
      int frames,
      double setUpFactor,
      double learnedFactor,
      double factorInUse,
      int observations,
      double reserveFactor,
      ClimateReading lastReading,
      double temperatureC,
      double humidityPercent,
      boolean read,
      double humidityLimitPercent,
      boolean driesNow) {}

  @GET
  @Operation(summary = "Airflow factors with what they were learned from, and whether it dries now")
  public Cabinets list(@PathParam("plant") String plant) {
    Shop shop = shops.getShop(plant).shop();
    Instant now = clock.instant();
    List<ClimateReading> readings = climate.listUntil(plant, now);
    return new Cabinets(
        Calibration.SMOOTHING,
        Calibration.LEAST_OBSERVATIONS,
        shop.screenRoom().cabinets().stream()
            .map(cabinet -> line(plant, shop, cabinet, readings, now))
            .toList());
  }

  private Line line(
      String plant, Shop shop, Cabinet cabinet, List<ClimateReading> readings, Instant now) {
    double limit = shop.screenRoom().emulsion().humidityLimitPercent();
    OffsetDateTime local = now.atZone(shop.timeZone()).toOffsetDateTime();
    Stretch air = new CabinetAir(cabinet, shop.timeZone(), limit, readings).at(local);
    Calibration learned = looks.calibration(plant, cabinet, now);
    return new Line(
        cabinet.id(),
        cabinet.frames(),
        cabinet.airflowFactor(),
        learned.smoothedFactor(),
        learned.factorInUse(),
        learned.observations(),
        cabinet.reserveFactor(),
        readings.stream()
            .filter(reading -> reading.place().equals(cabinet.id()))
            .reduce((before, last) -> last)
            .orElse(null),
        air.temperatureC(),
        air.humidityPercent(),
        air.read(),
        limit,
        air.dries());
  }
}
