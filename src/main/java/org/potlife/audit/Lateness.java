package org.potlife.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.PlanScore;

/**
 * Part of R21: an order is as late as its last run on the sheet comes off the belt after the due
 * date, in minutes rounded up; every late order is listed, no other, and the score adds them up.
 */
final class Lateness {

  private final Evidence evidence;
  private final Notes notes;

  Lateness(Evidence evidence, Notes notes) {
    this.evidence = evidence;
    this.notes = notes;
  }

  void check() {
    Map<String, LateLine> listed = new HashMap<>();
    for (LateLine line : Completeness.there(evidence.sheet().late())) {
      notes.check(listed.put(line.order(), line) == null, line.order(), "is listed as late twice");
      notes.check(
          evidence.orders().containsKey(line.order()),
          line.order(),
          "is listed as late and is no open order");
    }
    long minutes = 0;
    long weighted = 0;
    for (Order order : evidence.orders().values()) {
      long finish =
          evidence.runs(order).stream().mapToLong(RunFacts::offBelt).max().orElse(Long.MIN_VALUE);
      long due = order.dueAt().toEpochSecond();
      long late = finish <= due ? 0 : (finish - due + 59) / 60;
      check(order, listed.get(order.reference()), late, finish);
      minutes += late;
      weighted += late * weight(order);
    }
    PlanScore score = evidence.sheet().score();
    if (score != null) {
      notes.check(
          score.lateMinutes() == minutes && score.weightedLateMinutes() == weighted,
          "score",
          "counts %d late minutes, weighted %d; they are %d, weighted %d",
          score.lateMinutes(),
          score.weightedLateMinutes(),
          minutes,
          weighted);
    }
  }

  private void check(Order order, LateLine line, long late, long finish) {
    if (late == 0) {
      notes.check(line == null, order.reference(), "is listed as late and is not");
      return;
    }
    if (!notes.check(
        line != null,
        order.reference(),
        "is %d min late, off the belt %s, and is not listed",
        late,
        evidence.at(finish))) {
      return;
    }
    notes.check(
        line.minutes() == late && line.weightedMinutes() == late * weight(order),
        order.reference(),
        "is listed %d min late, weighted %d; it is %d min, weighted %d",
        line.minutes(),
        line.weightedMinutes(),
        late,
        late * weight(order));
    notes.check(
        line.dueAt() != null
            && line.dueAt().isEqual(order.dueAt())
            && line.plannedFinish() != null
            && line.plannedFinish().toEpochSecond() == finish,
        order.reference(),
        "is listed as due %s and finished %s, it is due %s and finished %s",
        line.dueAt(),
        line.plannedFinish(),
        order.dueAt(),
        evidence.at(finish));
    notes.check(
        line.cause() != null && !line.cause().isBlank(),
        order.reference(),
        "is %d min late without a cause",
        late);
  }

  private long weight(Order order) {
    List<Integer> weights = evidence.shop().settings().lateWeights();
    return weights.get(Math.min(order.priority(), weights.size()) - 1);
  }
}
