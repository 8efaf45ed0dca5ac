package org.potlife.audit;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.shop.ClothRules;

/** The lots of an order of which a run has ended, and what is wanted beyond them (R20). */
final class CountedLots {

  private final Order order;
  private final double spoilage;
  private final Map<Integer, Count> counts = new TreeMap<>();

  private static final class Count {
    int planned;
    int taken;
    int good = Integer.MAX_VALUE;
    final Set<Integer> prints = new HashSet<>();
  }

  CountedLots(Order order, FloorReport report, ClothRules cloth) {
    this.order = order;
    spoilage = cloth.spoilagePercent() / 100;
    for (RunReport run : report.runs()) {
      int print = run.endedAt() == null ? -1 : printOf(run);
      if (print >= 0) {
        Count count = counts.computeIfAbsent(run.lot(), lot -> new Count());
        count.planned = Math.max(count.planned, run.plannedPieces());
        count.taken = Math.max(count.taken, run.good() + run.spoiled());
        count.good = Math.min(count.good, run.good());
        count.prints.add(print);
      }
    }
  }

  private int printOf(RunReport run) {
    for (int i = 0; i < order.prints().size() && order.reference().equals(run.order()); i++) {
      Print print = order.prints().get(i);
      if (print.design().equals(run.design()) && print.position().equals(run.position())) {
        return i;
      }
    }
    return -1;
  }

  boolean none() {
    return counts.isEmpty();
  }

  Set<Integer> lots() {
    return counts.keySet();
  }

  /** Pieces that other prints have on a counted lot; null for a lot that is not counted. */
  Integer piecesOf(int lot) {
    Count count = counts.get(lot);
    if (count == null) {
      return null;
    }
    int lost = count.planned - count.good;
    return lost > Math.round(count.planned * spoilage) ? count.good : count.planned;
  }

  /** Counted lots on which a print is done, or on which nothing is left to print on. */
  Set<Integer> closedFor(Print print) {
    Set<Integer> closed = new HashSet<>();
    counts.forEach(
        (lot, count) -> {
          if (count.prints.contains(order.prints().indexOf(print)) || piecesOf(lot) == 0) {
            closed.add(lot);
          }
        });
    return closed;
  }

  /** Pieces of further lots beside so many that stay in lots not counted. */
  long further(long staying) {
    long wanted = wanted();
    if (wanted <= staying) {
      return 0;
    }
    long blanks = order.garments().blanks() - staying;
    for (Count count : counts.values()) {
      blanks -= count.taken;
    }
    long all = Math.max(wanted, Math.round(wanted * (1 + spoilage)));
    return Math.max(0, Math.min(all - staying, blanks));
  }

  /** Good pieces that nothing brings. */
  long missing(long staying) {
    return Math.max(0, wanted() - staying - further(staying));
  }

  private long wanted() {
    return order.garments().quantity() - counts.values().stream().mapToLong(c -> c.good).sum();
  }
}
