package org.potlife.order;

import java.util.List;
import org.potlife.ink.Ink;
import org.potlife.ink.InkPerPiece;
import org.potlife.ink.LearnedGrams;
import org.potlife.ink.Mesh;
import org.potlife.shop.Shop;

/** What a colour of a print takes of its ink on one piece, and where that figure is from. */
public final class GramsPerPiece {

  private final Shop shop;
  private final List<LearnedGrams> learned;

  /**
   * @param learned what closed runs took; stands above the estimate, below what came with the order
   */
  public GramsPerPiece(Shop shop, List<LearnedGrams> learned) {
    this.shop = shop;
    this.learned = List.copyOf(learned);
  }

  /**
   * Grams of one colour.
   *
   * @throws java.util.NoSuchElementException when the shop does not have the ink
   */
  public InkPerPiece of(Print print, Colour colour) {
    Ink ink = shop.findInk(colour.ink()).orElseThrow();
    Mesh mesh = new Mesh(colour.meshPerCm(), colour.threadUm(), colour.fabricUm());
    InkPerPiece estimate =
        InkPerPiece.estimated(
            new InkPerPiece.Inputs(
                print.widthMm(),
                print.heightMm(),
                colour.coveragePercent(),
                colour.meshPerCm(),
                colour.threadUm(),
                mesh.wetDepositUm(),
                ink.densityGPerCm3(),
                print.passes(),
                ink.transferFactor()));
    if (colour.measuredG() != null) {
      return estimate.setByHand(colour.measuredG());
    }
    return learned.stream()
        .filter(of -> of.isOf(print.design(), print.position(), colour.ink(), estimate.inputs()))
        .findFirst()
        .map(found -> estimate.measured(found.grams(), found.observations()))
        .orElse(estimate);
  }
}
