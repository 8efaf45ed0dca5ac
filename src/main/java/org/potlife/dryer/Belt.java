package org.potlife.dryer;

/** Speed and room of a dryer's belt (R14, R15). The formulas are geometry. */
public final class Belt {

  private static final double MM_PER_M = 1000;
  private static final double MINUTES_PER_HOUR = 60;
  private static final double SECONDS_PER_MINUTE = 60;

  private Belt() {}

  /**
   * Fastest belt speed that keeps a garment in the tunnel for the dwell, m/min: heated length /
   * dwell. The belt's own maximum is for the caller to apply.
   *
   * @param heatedLengthMm length in which the dwell counts, mm, greater than 0
   * @param dwellS dwell, seconds, greater than 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double speedMPerMin(int heatedLengthMm, double dwellS) {
    requirePositive("heatedLengthMm", heatedLengthMm);
    requirePositive("dwellS", dwellS);
    return heatedLengthMm / MM_PER_M * SECONDS_PER_MINUTE / dwellS;
  }

  /**
   * Garments that lie side by side with a gap between two of them; 0 if not even one fits.
   *
   * @param beltWidthMm usable width, mm, greater than 0
   * @param garmentWidthMm width of a garment, mm, greater than 0
   * @param gapMm gap between two garments, mm, at least 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static int lanes(int beltWidthMm, int garmentWidthMm, int gapMm) {
    requirePositive("beltWidthMm", beltWidthMm);
    requirePositive("garmentWidthMm", garmentWidthMm);
    if (gapMm < 0) {
      throw new IllegalArgumentException("gapMm is " + gapMm + ", must be 0 or more");
    }
    return (beltWidthMm + gapMm) / (garmentWidthMm + gapMm);
  }

  /**
   * Most pieces per hour that a belt takes when it carries nothing else: lanes x 60 x speed /
   * pitch.
   *
   * @param lanes garments side by side, at least 0
   * @param speedMPerMin belt speed, m/min, greater than 0
   * @param pitchMm belt length per garment, gap included, mm, greater than 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double piecesPerHour(int lanes, double speedMPerMin, int pitchMm) {
    if (lanes < 0) {
      throw new IllegalArgumentException("lanes is " + lanes + ", must be 0 or more");
    }
    requirePositive("speedMPerMin", speedMPerMin);
    requirePositive("pitchMm", pitchMm);
    return lanes * MINUTES_PER_HOUR * speedMPerMin / (pitchMm / MM_PER_M);
  }

  /**
   * Length of belt that a press uses up, m/min; what all presses on a belt use together must not
   * exceed its speed.
   *
   * @param ratePerHour pieces per hour, at least 0
   * @param pitchMm belt length per garment, gap included, mm, greater than 0
   * @param lanes garments side by side, at least 1
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double areaMPerMin(double ratePerHour, int pitchMm, int lanes) {
    if (!(ratePerHour >= 0) || Double.isInfinite(ratePerHour)) {
      throw new IllegalArgumentException("ratePerHour is " + ratePerHour + ", must be 0 or more");
    }
    requirePositive("pitchMm", pitchMm);
    requirePositive("lanes", lanes);
    return ratePerHour / MINUTES_PER_HOUR * (pitchMm / MM_PER_M) / lanes;
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", must be greater than 0");
    }
  }
}
