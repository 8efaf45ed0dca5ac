package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.room.ClimateReading;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ScreenRoom;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** A reading of temperature and humidity. */
@ApplicationScoped
class ClimateEffect implements EventEffect<ClimateEffect.Data> {

  /** What an instrument of the trade tells apart; less moves no plan. Common practice. */
  private static final double TEMPERATURE_STEP_C = 2;

  private static final double HUMIDITY_STEP_PERCENT = 5;

  private final Shops shops;
  private final ClimateLog climate;

  @Inject
  ClimateEffect(Shops shops, ClimateLog climate) {
    this.shops = shops;
    this.climate = climate;
  }

  /**
   * @param room id of a drying cabinet, store or screen-room
   */
  record Data(
      @NotBlank @Size(max = 40) String room,
      @NotNull @DecimalMin("-10") @DecimalMax("50") Double temperatureC,
      @NotNull @DecimalMin("0") @DecimalMax("100") Double humidityPercent) {}

  @Override
  public String type() {
    return "climate.reading";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    Shop shop = shops.getShop(event.plant()).shop();
    ScreenRoom room = shop.screenRoom();
    List<String> places = new ArrayList<>(room.cabinets().stream().map(Cabinet::id).toList());
    places.add(ClimateReading.STORE);
    places.add(ClimateReading.SCREEN_ROOM);
    if (!places.contains(data.room())) {
      return Verdict.parked(
          "The screen room has no place " + data.room() + "; its places are " + places + ".");
    }
    if (data.room().equals(ClimateReading.SCREEN_ROOM)) {
      return Verdict.noted();
    }
    double limit = room.emulsion().humidityLimitPercent();
    return Verdict.movesPlan(
        climate
            .findBefore(shop, event.plant(), data.room(), event.time())
            .map(before -> differs(before, data, limit))
            .orElse(true));
  }

  private static boolean differs(ClimateReading before, Data now, double limitPercent) {
    boolean driedBefore = before.humidityPercent() <= limitPercent;
    boolean dries = now.humidityPercent() <= limitPercent;
    return driedBefore != dries
        || Math.abs(before.temperatureC() - now.temperatureC()) >= TEMPERATURE_STEP_C
        || Math.abs(before.humidityPercent() - now.humidityPercent()) >= HUMIDITY_STEP_PERCENT;
  }
}
