package org.potlife.closeout;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.potlife.closeout.CloseOut.InkLoss;
import org.potlife.room.InkContainer;
import org.potlife.shop.Shop;

/**
 * Ink that came to nothing on a day, by the ink room's book: what was discarded of, or unaccounted
 * for in, batches and containers that were done with on the day, and what is left in batches whose
 * pot life ended on it. Priced as the ink's cost per kg.
 */
public final class LostInk {

  private LostInk() {}

  private static final class Sum {
    private int discardedG;
    private int unaccountedG;
    private int pastG;
  }

  /**
   * Adds up.
   *
   * @param batches the book's batches, gone or not
   */
  public static InkLoss of(
      List<InkContainer> batches, Shop shop, Instant from, Instant to, Instant now) {
    Map<String, Sum> byInk = new TreeMap<>();
    for (InkContainer batch : batches) {
      if (isWithin(batch.goneAt(), from, to)) {
        Sum sum = byInk.computeIfAbsent(batch.ink(), ink -> new Sum());
        sum.discardedG += batch.grams().discardedG();
        sum.unaccountedG += batch.grams().lostG();
      } else if (batch.goneAt() == null
          && isWithin(batch.useBy(), from, to)
          && batch.useBy().isBefore(now)) {
        byInk.computeIfAbsent(batch.ink(), ink -> new Sum()).pastG += batch.grams().leftG();
      }
    }
    List<InkLoss.OfInk> inks = new ArrayList<>();
    int all = 0;
    double cost = 0;
    for (Map.Entry<String, Sum> entry : byInk.entrySet()) {
      Sum sum = entry.getValue();
      int grams = sum.discardedG + sum.unaccountedG + sum.pastG;
      double perKg = shop.findInk(entry.getKey()).map(ink -> ink.costPerKg()).orElse(0.0);
      double own = Math.round(grams * perKg / 10) / 100.0;
      inks.add(new InkLoss.OfInk(entry.getKey(), sum.discardedG, sum.unaccountedG, sum.pastG, own));
      all += grams;
      cost += own;
    }
    return new InkLoss(all, Math.round(cost * 100) / 100.0, shop.currency(), inks);
  }

  private static boolean isWithin(Instant at, Instant from, Instant to) {
    return at != null && !at.isBefore(from) && at.isBefore(to);
  }
}
