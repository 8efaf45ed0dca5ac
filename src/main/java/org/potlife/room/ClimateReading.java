package org.potlife.room;

import java.time.OffsetDateTime;

/**
 * A reading of a thermometer and a hygrometer.
 *
 * @param place id of a drying cabinet, {@code store} or {@code screen-room}
 * @param at when it was read
 * @param temperatureC degrees Celsius, -10 to 50
 * @param humidityPercent relative humidity, percent, 0 to 100
 */
public record ClimateReading(
    String place, OffsetDateTime at, double temperatureC, double humidityPercent) {

  /** Place of the store for dry coated screens. */
  public static final String STORE = "store";

  /** Place of the room around the cabinets. */
  public static final String SCREEN_ROOM = "screen-room";
}
