package org.potlife.ink;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Ink of one colour on one piece, with where the figure is from.
 *
 * @param grams ink on one piece, g
 * @param source what the figure rests on
 * @param observations close-outs that a measured figure was learned from; null otherwise
 * @param estimateG what the formula gives, g; equals {@code grams} where nothing stands above it
 * @param inputs what the formula is fed with
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record InkPerPiece(
    double grams, Source source, Integer observations, double estimateG, Inputs inputs) {

  /** What a figure rests on; the later ones stand above the earlier. */
  public enum Source {
    /** Area, coverage, deposit, density, passes, transfer. */
    @JsonProperty("formula")
    FORMULA,
    /** Learned from what closed runs really took. */
    @JsonProperty("measured")
    MEASURED,
    /** Entered with the order. */
    @JsonProperty("set-by-hand")
    SET_BY_HAND
  }

  /**
   * What the formula is fed with.
   *
   * @param depositUm height of the wet film that the mesh lays down, um
   */
  public record Inputs(
      int widthMm,
      int heightMm,
      double coveragePercent,
      double meshPerCm,
      double threadUm,
      double depositUm,
      double densityGPerCm3,
      int passes,
      double transferFactor) {

    double estimateG() {
      return PrintMass.gramsPerPiece(
          widthMm, heightMm, coveragePercent, depositUm, densityGPerCm3, passes, transferFactor);
    }
  }

  /** By the formula alone. */
  public static InkPerPiece estimated(Inputs inputs) {
    double grams = inputs.estimateG();
    return new InkPerPiece(grams, Source.FORMULA, null, grams, inputs);
  }

  /** The same with the grams that were entered with the order. */
  public InkPerPiece setByHand(double byHandG) {
    return new InkPerPiece(byHandG, Source.SET_BY_HAND, null, estimateG, inputs);
  }

  /** The same with the grams that closed runs took. */
  public InkPerPiece measured(double measuredG, int closeOuts) {
    return new InkPerPiece(measuredG, Source.MEASURED, closeOuts, estimateG, inputs);
  }
}
