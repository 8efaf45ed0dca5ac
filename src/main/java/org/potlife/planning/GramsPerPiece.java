package org.potlife.planning;

import org.potlife.ink.Ink;
import org.potlife.ink.InkPerPiece;
import org.potlife.ink.Mesh;
import org.potlife.order.Colour;
import org.potlife.order.Print;
import org.potlife.shop.Shop;

/** What a colour of a print takes of its ink on one piece, and where that figure is from. */
public final class GramsPerPiece {

  private final Shop shop;

  public GramsPerPiece(Shop shop) {
    this.shop = shop;
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
    return colour.measuredG() == null ? estimate : estimate.setByHand(colour.measuredG());
  }
}
