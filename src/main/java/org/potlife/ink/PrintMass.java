package org.potlife.ink;

/** Mass of ink that a print takes. Common practice; the formula is geometry. */
public final class PrintMass {

  /** Below this a surplus is noise of the floating point, g; it must not cost a whole gram. */
  private static final double NOISE_G = 1e-6;

  private PrintMass() {}

  /**
   * Ink on one piece, g: area times coverage times film height times density, per pass.
   *
   * @param widthMm width of the image, mm, greater than 0
   * @param heightMm height of the image, mm, greater than 0
   * @param coveragePercent printed share of width x height, percent, greater than 0, at most 100
   * @param wetDepositUm height of the wet film, um (which is cm3/m2), greater than 0
   * @param densityGPerCm3 density of the ink, g/cm3, greater than 0
   * @param passes strokes, at least 1
   * @param transferFactor share of the film that reaches the cloth, calibrated, greater than 0
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double gramsPerPiece(
      double widthMm,
      double heightMm,
      double coveragePercent,
      double wetDepositUm,
      double densityGPerCm3,
      int passes,
      double transferFactor) {
    requirePositive("widthMm", widthMm);
    requirePositive("heightMm", heightMm);
    requirePositive("coveragePercent", coveragePercent);
    requirePositive("wetDepositUm", wetDepositUm);
    requirePositive("densityGPerCm3", densityGPerCm3);
    requirePositive("passes", passes);
    requirePositive("transferFactor", transferFactor);
    if (coveragePercent > 100) {
      throw new IllegalArgumentException(
          "coveragePercent is " + coveragePercent + ", must be at most 100");
    }
    double printedM2 = widthMm / 1000 * heightMm / 1000 * coveragePercent / 100;
    return printedM2 * wetDepositUm * densityGPerCm3 * passes * transferFactor;
  }

  /**
   * Ink that a run draws, g, rounded up to whole grams: pieces times grams per piece, plus loss.
   * The charge that stays on the screens and the batch's reserve come on top elsewhere.
   *
   * @param pieces pieces printed, at least 0
   * @param gramsPerPiece ink per piece, g, at least 0; for several stations with one ink their sum
   * @param lossPercent ink lost in handling, percent of what is printed, at least 0
   * @throws IllegalArgumentException if a value is negative or not a number
   * @throws ArithmeticException if the mass does not fit an int (about 2000 t)
   */
  public static int runMassG(int pieces, double gramsPerPiece, double lossPercent) {
    if (pieces < 0 || !(gramsPerPiece >= 0) || !(lossPercent >= 0)) {
      throw new IllegalArgumentException(
          "pieces, gramsPerPiece and lossPercent must be 0 or more, are "
              + pieces
              + ", "
              + gramsPerPiece
              + " and "
              + lossPercent);
    }
    double massG = pieces * gramsPerPiece * (1 + lossPercent / 100);
    return Math.toIntExact((long) Math.ceil(Math.max(0, massG - NOISE_G)));
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", must be greater than 0");
    }
  }
}
