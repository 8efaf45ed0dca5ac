package org.potlife.plan.list;

import java.util.Comparator;
import java.util.List;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * What the plan cannot keep: orders that end after their due date, and prints without a place. It
 * is about the whole plan, not one day.
 *
 * @param late by weight, the worst first
 * @param unplaced as on the sheet, with the customer
 */
public record LateList(List<Late> late, List<Unplaced> unplaced) {

  /**
   * An order that ends late.
   *
   * @param cause the cause, runs by the names that people use
   */
  public record Late(LateLine line, String garments, int priority, String cause) {}

  /**
   * A print without a place.
   *
   * @param cause the cause, runs by the names that people use
   */
  public record Unplaced(UnplacedLine line, String customer, String garments, String cause) {}

  /** The list of a plan. */
  public static LateList of(PlanIndex plan) {
    return new LateList(
        plan.sheet().late().stream()
            .sorted(
                Comparator.comparingLong(LateLine::weightedMinutes)
                    .thenComparingLong(LateLine::minutes)
                    .reversed()
                    .thenComparing(LateLine::order))
            .map(
                line ->
                    new Late(
                        line,
                        plan.garments(line.order()),
                        priority(plan, line),
                        plan.inWords(line.cause())))
            .toList(),
        plan.sheet().unplaced().stream()
            .map(
                line ->
                    new Unplaced(
                        line,
                        plan.findOrder(line.order()).map(Order::customer).orElse(""),
                        plan.garments(line.order()),
                        plan.inWords(line.cause())))
            .toList());
  }

  private static int priority(PlanIndex plan, LateLine line) {
    return plan.findOrder(line.order()).map(Order::priority).orElse(0);
  }

  /** Whether every order is placed and in time. */
  public boolean empty() {
    return late.isEmpty() && unplaced.isEmpty();
  }
}
