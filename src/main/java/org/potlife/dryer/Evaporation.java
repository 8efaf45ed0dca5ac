package org.potlife.dryer;

/**
 * Heat that it takes to dry garments (R16): their water is warmed to the boiling point and
 * evaporated there. Heat for the cloth itself, the air and the walls stands in the dryer's
 * efficiency.
 */
public final class Evaporation {

  /** Specific heat of water, kJ/(kg K); common value, from memory. */
  public static final double WATER_KJ_PER_KG_K = 4.186;

  /** Latent heat of water at 100 degrees Celsius, kJ/kg; IAPWS-IF97. */
  public static final double LATENT_KJ_PER_KG = 2256.47;

  private static final double BOILING_C = 100;
  private static final double SECONDS_PER_HOUR = 3600;

  private Evaporation() {}

  /**
   * Water to evaporate per piece, g: that of the print and that of the cloth.
   *
   * <p>Regain counts on the bone-dry mass, but the mass of a garment is weighed as it lies in the
   * carton. Taking the one for the other puts some 7 % too much water into the cloth, on the safe
   * side.
   *
   * @param depositWaterG water in the wet print, g, at least 0
   * @param clothMassG mass of the garment, g, at least 0
   * @param regainPercent moisture regain of the cloth, percent, at least 0
   * @throws IllegalArgumentException if a value is negative or not a number
   */
  public static double waterG(double depositWaterG, double clothMassG, double regainPercent) {
    requireNotNegative("depositWaterG", depositWaterG);
    requireNotNegative("clothMassG", clothMassG);
    requireNotNegative("regainPercent", regainPercent);
    return depositWaterG + clothMassG * regainPercent / 100;
  }

  /**
   * Heat per piece without losses, kJ: {@code water x (4.186 (100 - T) + 2256.47)}, water in kg.
   *
   * @param depositWaterG water in the wet print, g, at least 0
   * @param clothMassG mass of the garment, g, at least 0
   * @param regainPercent moisture regain of the cloth, percent, at least 0
   * @param roomTemperatureC temperature at which garments enter, degrees Celsius, at most 100
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double kJPerPiece(
      double depositWaterG, double clothMassG, double regainPercent, double roomTemperatureC) {
    if (!(roomTemperatureC <= BOILING_C) || Double.isInfinite(roomTemperatureC)) {
      throw new IllegalArgumentException(
          "roomTemperatureC is " + roomTemperatureC + ", must be at most " + BOILING_C);
    }
    double waterKg = waterG(depositWaterG, clothMassG, regainPercent) / 1000;
    return waterKg * (WATER_KJ_PER_KG_K * (BOILING_C - roomTemperatureC) + LATENT_KJ_PER_KG);
  }

  /**
   * Heat that a press asks of the dryer, kW: rate x heat per piece / efficiency.
   *
   * @param ratePerHour pieces per hour, at least 0
   * @param kJPerPiece heat per piece without losses, kJ, at least 0
   * @param efficiency share of the dryer's heat that reaches the goods, greater than 0, at most 1
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double loadKw(double ratePerHour, double kJPerPiece, double efficiency) {
    requireNotNegative("ratePerHour", ratePerHour);
    requireNotNegative("kJPerPiece", kJPerPiece);
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException(
          "efficiency is " + efficiency + ", must be greater than 0 and at most 1");
    }
    return ratePerHour / SECONDS_PER_HOUR * kJPerPiece / efficiency;
  }

  private static void requireNotNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", must be 0 or more");
    }
  }
}
