package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.shop.ClothRules;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.RunSpec.BeltFeed;
import org.potlife.simulation.StaffedTime;

/**
 * Splits orders into lots that fit a shift (R3, R20). A lot is at most half of what the longest
 * span takes, so that it can start in the middle of a shift and share a dryer; two lots in a row on
 * one press need no second set-up.
 */
final class Lots {

  private static final double SHARE_OF_SPAN = 0.5;

  private static final int MOST_LOTS = 500;

  private final Shop shop;
  private final RunLoad load;
  private final Fit fit;
  private final int[] longestSpanS;

  Lots(Shop shop, RunLoad load, Fit fit, List<StaffedTime> staffed) {
    this.shop = shop;
    this.load = load;
    this.fit = fit;
    longestSpanS = staffed.stream().mapToInt(StaffedTime::longestSpan).toArray();
  }

  /** Pieces to print of an order in all (R20). */
  static int pieces(Order order, ClothRules cloth) {
    int ordered = order.garments().quantity();
    int allowed = (int) Math.round(ordered * (1 + cloth.spoilagePercent() / 100));
    return Math.min(order.garments().blanks(), Math.max(ordered, allowed));
  }

  /**
   * Sizes of the lots of so many pieces; differ by one at most.
   *
   * @param least lots that the planner wants at least
   */
  List<Integer> sizes(Order order, List<Print> prints, int pieces, int least) {
    int largest = Integer.MAX_VALUE;
    for (Print print : prints) {
      int best = 0;
      for (int i = 0; i < longestSpanS.length; i++) {
        best = Math.max(best, (int) (capacity(order, print, i) * SHARE_OF_SPAN));
      }
      if (best > 0) {
        largest = Math.min(largest, best);
      }
    }
    int lots = Math.min(MOST_LOTS, Math.min(pieces, Math.max(least, (pieces - 1) / largest + 1)));
    List<Integer> sizes = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      sizes.add(pieces / lots + (lot < pieces % lots ? 1 : 0));
    }
    return sizes;
  }

  /**
   * Pieces that the longest span of a press takes with the longest set-up; 0 if it does not fit.
   */
  int capacity(Order order, Print print, int pressIndex) {
    Press press = shop.presses().get(pressIndex);
    if (fit.obstacle(order, print, press) != null) {
      return 0;
    }
    Dryer dryer = shop.findDryer(press.dryer()).orElseThrow();
    BeltFeed feed = load.feed(print, order.garments(), dryer);
    long printS = longestSpanS[pressIndex] - longestSetUpS(press, print.colours().size());
    return printS <= 0
        ? 0
        : (int) Math.min(1_000_000, printS * Fit.rateAlone(feed, press, dryer) / 3600);
  }

  private static long longestSetUpS(Press press, int screens) {
    int wash = Math.max(press.washUpToDarkerMinutes(), press.washUpToLighterMinutes());
    return 60L
        * (press.changeoverMinutes()
            + press.firstPieceMinutes()
            + (long) screens * (press.minutesPerScreen() + wash)
            + (long) press.stations() * press.tearDownMinutesPerScreen());
  }
}
