package org.potlife.closeout;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.closeout.CloseOut.Missed;
import org.potlife.closeout.CloseOut.Promises;
import org.potlife.floor.FloorReport;
import org.potlife.floor.OrderProgress;
import org.potlife.floor.RunReport;
import org.potlife.order.Order;

/**
 * On time in full, per order: all that was ordered is printed well, and the last stroke, with the
 * planned way over the belt behind it, was not after the due date.
 */
public final class KeptPromises {

  private KeptPromises() {}

  /**
   * Counts.
   *
   * @param due orders that were due on the day and not cancelled
   * @param told what was told of their runs
   * @param overTheBelt longest planned way over the belt of any of their runs
   */
  public static Promises of(
      List<Order> due, FloorReport told, double spoilagePercent, Duration overTheBelt) {
    List<Missed> missed = new ArrayList<>();
    for (Order order : due) {
      OrderProgress progress = OrderProgress.of(order, told.runs(), spoilagePercent);
      int good = progress.lots().stream().mapToInt(OrderProgress.Lot::good).sum();
      OffsetDateTime last =
          told.runs().stream()
              .filter(run -> run.order().equals(order.reference()) && run.ended())
              .map(RunReport::endedAt)
              .max(Comparator.comparing(OffsetDateTime::toInstant))
              .orElse(null);
      boolean late = last != null && last.plus(overTheBelt).isAfter(order.dueAt());
      if (!progress.isComplete() || late) {
        missed.add(
            new Missed(
                order.reference(),
                order.dueAt(),
                order.garments().quantity(),
                good,
                why(progress, late, last)));
      }
    }
    int kept = due.size() - missed.size();
    return new Promises(
        due.size(), kept, due.isEmpty() ? null : (double) kept / due.size(), missed);
  }

  private static String why(OrderProgress progress, boolean late, OffsetDateTime last) {
    if (last == null) {
      return "nothing of it is told to be done";
    }
    if (!progress.isComplete()) {
      return late ? "not in full, and late" : "not in full";
    }
    return "late";
  }
}
