package org.potlife.plan.export;

import org.potlife.plan.list.LateList;
import org.potlife.plan.list.LateList.Late;
import org.potlife.plan.list.LateList.Unplaced;

/** Late orders and prints without a place as a file. */
public final class LateCsv {

  private LateCsv() {}

  /** One row per late order and per print without a place, told apart by the first column. */
  public static String of(LateList list) {
    CsvTable csv =
        new CsvTable(
            "state",
            "order",
            "customer",
            "design",
            "position",
            "lot",
            "garments",
            "priority",
            "dueAt",
            "plannedFinish",
            "minutes",
            "weightedMinutes",
            "rule",
            "cause");
    for (Late late : list.late()) {
      var line = late.line();
      csv.row(
          "late",
          line.order(),
          line.customer(),
          null,
          null,
          null,
          late.garments(),
          late.priority(),
          line.dueAt(),
          line.plannedFinish(),
          line.minutes(),
          line.weightedMinutes(),
          "R21",
          line.cause());
    }
    for (Unplaced unplaced : list.unplaced()) {
      var line = unplaced.line();
      csv.row(
          "unplaced",
          line.order(),
          unplaced.customer(),
          line.design(),
          line.position(),
          line.lot(),
          unplaced.garments(),
          null,
          null,
          null,
          null,
          null,
          line.rule(),
          line.cause());
    }
    return csv.text();
  }
}
