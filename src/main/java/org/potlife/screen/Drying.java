package org.potlife.screen;

/**
 * How fast a wet screen dries (R5): drying is vapour pressure deficit times time, in Pa h.
 *
 * <p>That drying follows the deficit is the physics of evaporation; the amount that a coat needs is
 * calibrated on one observed drying. Calibrated on about 1 h at 21.1 C and 50 %, it gives 12 to 20
 * min at 37.8 C and 20 %, as published in "How to Dry a Screen", screenweb.com, May 2002.
 */
public final class Drying {

  private Drying() {}

  /**
   * Drive of the drying, Pa: the deficit times the airflow factor. 0 if the air is more humid than
   * the emulsion's limit; at the limit it still dries.
   *
   * @param tC temperature, degrees Celsius, -40 to 60
   * @param humidityPercent relative humidity, percent, 0 to 100
   * @param humidityLimitPercent the emulsion's limit, percent
   * @param airflowFactor how much faster than in still air, greater than 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double drivePa(
      double tC, double humidityPercent, double humidityLimitPercent, double airflowFactor) {
    if (!(airflowFactor > 0) || Double.isInfinite(airflowFactor)) {
      throw new IllegalArgumentException(
          "the airflow factor is " + airflowFactor + ", must be greater than 0");
    }
    double deficitPa = VapourPressure.deficitPa(tC, humidityPercent);
    return humidityPercent > humidityLimitPercent ? 0 : deficitPa * airflowFactor;
  }

  /**
   * Temperature from which on air with this much water in it is no more humid than the limit,
   * degrees Celsius: warming leaves the vapour pressure as it is and raises what air can hold.
   *
   * @param tC temperature now, degrees Celsius, -40 to 60
   * @param humidityPercent relative humidity now, percent, above 0
   * @param humidityLimitPercent the emulsion's limit, percent, above 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double dryingFromC(double tC, double humidityPercent, double humidityLimitPercent) {
    return VapourPressure.saturatedAtC(
        VapourPressure.saturationPa(tC) * humidityPercent / humidityLimitPercent);
  }

  /**
   * Time to dry in a climate that does not change, hours; infinite if it never dries.
   *
   * @param requiredPaH drying needed, Pa h, at least 0; the cabinet's reserve included
   * @param tC temperature, degrees Celsius, -40 to 60
   * @param humidityPercent relative humidity, percent, 0 to 100
   * @param humidityLimitPercent the emulsion's limit, percent
   * @param airflowFactor how much faster than in still air, greater than 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double hours(
      double requiredPaH,
      double tC,
      double humidityPercent,
      double humidityLimitPercent,
      double airflowFactor) {
    if (!(requiredPaH >= 0)) {
      throw new IllegalArgumentException(
          "the drying needed is " + requiredPaH + " Pa h, must be 0 or more");
    }
    double drivePa = drivePa(tC, humidityPercent, humidityLimitPercent, airflowFactor);
    return requiredPaH == 0 ? 0 : requiredPaH / drivePa;
  }
}
