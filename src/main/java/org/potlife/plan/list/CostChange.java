package org.potlife.plan.list;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.potlife.sheet.PlanSheet.PlanScore;

/**
 * What a plan costs against the one before. Each is counted from its own planning on: what is done
 * by now is no longer in the later one.
 *
 * @param lateMinutesBefore late minutes, summed over orders
 * @param weightedLateMinutesBefore late minutes times the weight of the order's priority, summed
 * @param kinds cost by kind, plant currency
 */
public record CostChange(
    int unplacedBefore,
    int unplaced,
    long lateMinutesBefore,
    long lateMinutes,
    long weightedLateMinutesBefore,
    long weightedLateMinutes,
    double totalCostBefore,
    double totalCost,
    List<Kind> kinds,
    String text) {

  /**
   * Cost of one kind, plant currency.
   *
   * @param more how much it grows; negative when it falls
   */
  public record Kind(String kind, double before, double now, double more) {}

  static CostChange between(PlanScore before, PlanScore now, String currency) {
    return new CostChange(
        before.unplaced(),
        now.unplaced(),
        before.lateMinutes(),
        now.lateMinutes(),
        before.weightedLateMinutes(),
        now.weightedLateMinutes(),
        before.totalCost(),
        now.totalCost(),
        now.cost().entrySet().stream().map(cost -> kind(before.cost(), cost)).toList(),
        "%s late minutes, %s %s."
            .formatted(
                signed(now.lateMinutes() - before.lateMinutes()),
                String.format(Locale.ROOT, "%+.2f", now.totalCost() - before.totalCost()),
                currency));
  }

  private static String signed(long number) {
    return number > 0 ? "+" + number : String.valueOf(number);
  }

  private static Kind kind(Map<String, Double> before, Map.Entry<String, Double> now) {
    double was = before.getOrDefault(now.getKey(), 0.0);
    return new Kind(
        now.getKey(), was, now.getValue(), Math.round(100 * (now.getValue() - was)) / 100.0);
  }
}
