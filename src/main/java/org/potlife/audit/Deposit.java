package org.potlife.audit;

import java.util.List;
import org.potlife.ink.Ink;
import org.potlife.ink.LearnedGrams;
import org.potlife.order.Colour;
import org.potlife.order.Print;

/**
 * Ink on one garment, stated anew. The wet deposit by mesh is from "How Much Ink Do You Need?",
 * screenweb.com, April 2000, table 1, plain weave; the plant's own weighing overrides it.
 */
final class Deposit {

  private Deposit() {}

  /**
   * Grams of one colour on one piece: what came with the order, else what closed runs of the same
   * artwork through the same mesh took, else by formula.
   */
  static double gramsPerPiece(Print print, Colour colour, Ink ink, List<LearnedGrams> learned) {
    if (colour.measuredG() != null) {
      return colour.measuredG();
    }
    for (LearnedGrams of : learned) {
      if (of.ink().equals(ink.id())
          && of.design().equals(print.design())
          && of.position().equals(print.position())
          && of.widthMm() == print.widthMm()
          && of.heightMm() == print.heightMm()
          && of.passes() == print.passes()
          && of.coveragePercent() == colour.coveragePercent()
          && of.meshPerCm() == colour.meshPerCm()
          && of.threadUm() == colour.threadUm()) {
        return of.grams();
      }
    }
    double areaM2 = print.widthMm() / 1000.0 * print.heightMm() / 1000.0;
    // um on one m2 are cm3, so um times g/cm3 are g/m2
    return areaM2
        * colour.coveragePercent()
        / 100.0
        * wetUm(colour)
        * ink.densityGPerCm3()
        * print.passes()
        * ink.transferFactor();
  }

  /** Height of the wet ink film, um. */
  static double wetUm(Colour colour) {
    double threadUm = colour.threadUm();
    double fabricUm = colour.fabricUm() == null ? 1.7 * threadUm : colour.fabricUm();
    double open = Math.max(0, 1 - colour.meshPerCm() * threadUm / 10_000.0);
    double coarse = 1.82 * threadUm * open * open;
    double n = colour.meshPerCm();
    if (n < 43) {
      return between(coarse, 0.285 * fabricUm, n - 42);
    }
    return between(0.285 * fabricUm, 0.35 * fabricUm, n - 139);
  }

  /** The first row of the table up to a share of 0, the second from a share of 1, mixed between. */
  private static double between(double first, double second, double share) {
    double ofSecond = Math.max(0, Math.min(1, share));
    return first + (second - first) * ofSecond;
  }
}
