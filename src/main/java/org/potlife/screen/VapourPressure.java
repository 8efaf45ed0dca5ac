package org.potlife.screen;

/**
 * Vapour pressure of water in air.
 *
 * <p>Source: Alduchov and Eskridge 1996, J. Appl. Meteorol. 35(4), 601-609: {@code 610.94
 * exp(17.625 t / (243.04 + t))} Pa. Within 0.3 % of the steam tables from 10 to 50 degrees.
 */
public final class VapourPressure {

  private static final double LEAST_C = -40;
  private static final double MOST_C = 60;

  private VapourPressure() {}

  /**
   * Saturation vapour pressure over water, Pa.
   *
   * @param tC temperature, degrees Celsius, -40 to 60
   * @throws IllegalArgumentException if the temperature is out of range
   */
  public static double saturationPa(double tC) {
    if (!(tC >= LEAST_C && tC <= MOST_C)) {
      throw new IllegalArgumentException(
          "the temperature is " + tC + " C, must be " + LEAST_C + " to " + MOST_C + " C");
    }
    return 610.94 * Math.exp(17.625 * tC / (243.04 + tC));
  }

  /**
   * The temperature at which the air is saturated with this vapour pressure: the formula solved for
   * the temperature, degrees Celsius.
   *
   * @param vapourPa greater than 0
   * @throws IllegalArgumentException if it is not
   */
  public static double saturatedAtC(double vapourPa) {
    if (!(vapourPa > 0) || Double.isInfinite(vapourPa)) {
      throw new IllegalArgumentException(
          "the vapour pressure is " + vapourPa + " Pa, must be greater than 0");
    }
    double exponent = Math.log(vapourPa / 610.94);
    return 243.04 * exponent / (17.625 - exponent);
  }

  /**
   * What the air could still take up, Pa: {@code es(T) (1 - RH)}.
   *
   * @param tC temperature, degrees Celsius, -40 to 60
   * @param humidityPercent relative humidity, percent, 0 to 100
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double deficitPa(double tC, double humidityPercent) {
    if (!(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException(
          "the humidity is " + humidityPercent + " %, must be 0 to 100 %");
    }
    return saturationPa(tC) * (1 - humidityPercent / 100);
  }
}
