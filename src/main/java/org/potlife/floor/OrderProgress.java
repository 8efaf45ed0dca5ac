package org.potlife.floor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.order.Order;
import org.potlife.order.Print;

/**
 * What is done of an order by its runs that have ended, and what is still to be printed (R20).
 *
 * @param lots lots of which at least one run has ended, by number
 */
public record OrderProgress(Order order, double spoilagePercent, List<Lot> lots) {

  /**
   * One lot.
   *
   * @param planned pieces that it was to have
   * @param taken pieces that came out of the carton for it
   * @param good pieces without a fault in any print so far
   * @param printsDone prints that have ended on it
   */
  public record Lot(int number, int planned, int taken, int good, Set<Print> printsDone) {}

  public OrderProgress {
    lots = List.copyOf(lots);
  }

  /** The progress of an order by what was told of its runs; other runs are left out. */
  public static OrderProgress of(Order order, List<RunReport> told, double spoilagePercent) {
    Map<Integer, Lot> lots = new TreeMap<>();
    for (RunReport run : told) {
      if (run.ended() && run.order().equals(order.reference())) {
        order.prints().stream()
            .filter(p -> p.design().equals(run.design()) && p.position().equals(run.position()))
            .forEach(print -> lots.merge(run.lot(), lot(run, print), OrderProgress::together));
      }
    }
    return new OrderProgress(order, spoilagePercent, new ArrayList<>(lots.values()));
  }

  private static Lot lot(RunReport run, Print print) {
    return new Lot(run.lot(), run.plannedPieces(), run.printed(), run.good(), Set.of(print));
  }

  private static Lot together(Lot one, Lot other) {
    Set<Print> prints = new HashSet<>(one.printsDone());
    prints.addAll(other.printsDone());
    return new Lot(
        one.number(),
        Math.max(one.planned(), other.planned()),
        Math.max(one.taken(), other.taken()),
        Math.min(one.good(), other.good()),
        prints);
  }

  /**
   * Pieces that the prints to come have on a lot: its size while no more were spoiled than was
   * allowed for, else what is good.
   */
  public int piecesToCome(Lot lot) {
    long allowance = Math.round(lot.planned() * spoilagePercent / 100);
    return lot.planned() - lot.good() <= allowance ? lot.planned() : lot.good();
  }

  /**
   * Pieces that further lots must print.
   *
   * @param underWay pieces of the lots that stay as they are and have no run that ended
   */
  public int further(int underWay) {
    int good = goodWanted();
    if (good <= underWay) {
      return 0;
    }
    int gross = (int) Math.max(good, Math.round(good * (1 + spoilagePercent / 100)));
    int taken = lots.stream().mapToInt(Lot::taken).sum();
    int blanks = order.garments().blanks() - taken - underWay;
    return Math.max(0, Math.min(blanks, gross - underWay));
  }

  /** Good pieces that nothing will bring, since there are no blanks for them. */
  public int missing(int underWay) {
    return Math.max(0, goodWanted() - underWay - further(underWay));
  }

  /** Whether all that was ordered is printed and no lot is half done. */
  public boolean isComplete() {
    return !lots.isEmpty()
        && goodWanted() <= 0
        && lots.stream()
            .allMatch(
                lot -> piecesToCome(lot) == 0 || lot.printsDone().containsAll(order.prints()));
  }

  private int goodWanted() {
    return order.garments().quantity() - lots.stream().mapToInt(Lot::good).sum();
  }
}
