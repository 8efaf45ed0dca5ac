package org.potlife.plan.export;

import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.ChangeList.Move;
import org.potlife.plan.list.PromiseChange;

/** What a plan changes on the one before, as a file. */
public final class ChangeCsv {

  private ChangeCsv() {}

  /**
   * One row per run that moves, is new or gone, and one per order whose promise changes, told apart
   * by the first column.
   */
  public static String of(ChangeList list) {
    CsvTable csv =
        new CsvTable(
            "change",
            "run",
            "name",
            "fromPress",
            "from",
            "toPress",
            "to",
            "shiftMinutes",
            "order",
            "customer",
            "lateMinutesBefore",
            "lateMinutes",
            "text");
    for (Move move : list.moved()) {
      csv.row(
          "moved",
          move.run(),
          move.name(),
          move.fromPress(),
          move.fromStart(),
          move.toPress(),
          move.toStart(),
          move.shiftMinutes(),
          null,
          null,
          null,
          null,
          move.text());
    }
    list.added().forEach(run -> named(csv, "added", run));
    list.gone().forEach(run -> named(csv, "gone", run));
    for (PromiseChange promise : list.promises()) {
      csv.row(
          "promise",
          null,
          null,
          null,
          promise.finishBefore(),
          null,
          promise.finish(),
          null,
          promise.order(),
          promise.customer(),
          promise.lateMinutesBefore(),
          promise.lateMinutes(),
          promise.text());
    }
    return csv.text();
  }

  private static void named(CsvTable csv, String change, String run) {
    csv.row(change, run, null, null, null, null, null, null, null, null, null, null, null);
  }
}
