package org.potlife.web.office;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.potlife.closeout.CloseOut.InkLoss;
import org.potlife.plan.list.InkChip;
import org.potlife.shop.Shop;

/**
 * Ink of one kind that came to nothing on a day, or of all kinds together, by cause.
 *
 * @param ink its name and colour; null for all together
 */
public record DayLoss(
    InkChip ink, Part discarded, Part unaccounted, Part pastPotLife, Part together) {

  /**
   * Grams and what they cost in the plant's currency.
   *
   * @param g grams
   */
  public record Part(int g, double cost) {

    private static Part sum(List<DayLoss> of, Function<DayLoss, Part> cause) {
      return new Part(
          of.stream().map(cause).mapToInt(Part::g).sum(),
          of.stream().map(cause).mapToDouble(Part::cost).sum());
    }
  }

  /** Inks of which something came to nothing, the most expensive first. */
  static List<DayLoss> of(InkLoss loss, Shop shop) {
    return loss.inks().stream()
        .filter(ink -> ink.allG() > 0)
        .sorted(Comparator.comparingDouble(InkLoss.OfInk::cost).reversed())
        .map(ink -> of(ink, shop))
        .toList();
  }

  private static DayLoss of(InkLoss.OfInk ink, Shop shop) {
    String swatch = shop.findInk(ink.ink()).map(known -> known.swatch()).orElse("#ffffff");
    return new DayLoss(
        new InkChip(ink.ink(), swatch),
        part(ink, ink.discardedG()),
        part(ink, ink.unaccountedG()),
        part(ink, ink.pastPotLifeG()),
        part(ink, ink.allG()));
  }

  private static Part part(InkLoss.OfInk ink, int g) {
    return new Part(g, ink.costOf(g));
  }

  /** All of them together. */
  static DayLoss sum(List<DayLoss> all) {
    return new DayLoss(
        null,
        Part.sum(all, DayLoss::discarded),
        Part.sum(all, DayLoss::unaccounted),
        Part.sum(all, DayLoss::pastPotLife),
        Part.sum(all, DayLoss::together));
  }
}
