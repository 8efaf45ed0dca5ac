package org.potlife.ink;

/**
 * Grams per piece of one colour as closed runs took them. It stands in the place of the estimate
 * for every later print of the same artwork through the same mesh: another size, coverage or mesh
 * begins anew.
 *
 * <p>Each close-out moves the figure by a fixed share of its error (simple exponential smoothing,
 * R. G. Brown 1956, from memory); the first one replaces the estimate.
 *
 * @param grams what the next piece is reckoned to take, g
 * @param observations close-outs that went into it
 */
public record LearnedGrams(
    String design,
    String position,
    String ink,
    double meshPerCm,
    double threadUm,
    int widthMm,
    int heightMm,
    double coveragePercent,
    int passes,
    double grams,
    int observations) {

  /**
   * Share of the error that a close-out corrects. So the last five make up five sixths of the
   * figure, and one bad weighing does not turn it over. Common practice.
   */
  public static final double SMOOTHING = 0.3;

  /** The first close-out of a colour. */
  public static LearnedGrams first(
      String design, String position, String ink, InkPerPiece.Inputs inputs, double observedG) {
    return new LearnedGrams(
        design,
        position,
        ink,
        inputs.meshPerCm(),
        inputs.threadUm(),
        inputs.widthMm(),
        inputs.heightMm(),
        inputs.coveragePercent(),
        inputs.passes(),
        observedG,
        1);
  }

  /** With one more close-out. */
  public LearnedGrams next(double observedG) {
    return new LearnedGrams(
        design,
        position,
        ink,
        meshPerCm,
        threadUm,
        widthMm,
        heightMm,
        coveragePercent,
        passes,
        grams + SMOOTHING * (observedG - grams),
        observations + 1);
  }

  /** Whether this was learned from the same artwork and mesh. */
  public boolean isOf(String ofDesign, String atPosition, String ofInk, InkPerPiece.Inputs inputs) {
    return design.equals(ofDesign)
        && position.equals(atPosition)
        && ink.equals(ofInk)
        && meshPerCm == inputs.meshPerCm()
        && threadUm == inputs.threadUm()
        && widthMm == inputs.widthMm()
        && heightMm == inputs.heightMm()
        && coveragePercent == inputs.coveragePercent()
        && passes == inputs.passes();
  }
}
