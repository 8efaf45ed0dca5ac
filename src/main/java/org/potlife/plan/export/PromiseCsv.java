package org.potlife.plan.export;

import org.potlife.plan.list.PlanOverview;

/** What becomes of each order, as a file. */
public final class PromiseCsv {

  private PromiseCsv() {}

  /** One row per order with a run on the plan. */
  public static String of(PlanOverview overview) {
    CsvTable csv =
        new CsvTable("order", "customer", "dueAt", "plannedFinish", "lateMinutes", "complete");
    for (PlanOverview.Promise p : overview.promises()) {
      csv.row(p.order(), p.customer(), p.dueAt(), p.plannedFinish(), p.lateMinutes(), p.complete());
    }
    return csv.text();
  }
}
