package org.potlife.plan.export;

import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.sheet.PlanSheet.BeltLine;

/** The belts' timetable as a file. */
public final class BeltCsv {

  private BeltCsv() {}

  /** One row per stretch with constant settings. */
  public static String of(BeltList list) {
    CsvTable csv =
        new CsvTable(
            "dryer",
            "from",
            "to",
            "speedMPerMin",
            "dwellS",
            "areaPercent",
            "heatPercent",
            "bound",
            "runs");
    for (DryerDay dryer : list.dryers()) {
      for (BeltLine line : dryer.periods()) {
        csv.row(
            line.dryer(),
            line.from(),
            line.to(),
            line.speedMPerMin(),
            line.dwellS(),
            line.areaPercent(),
            line.heatPercent(),
            line.bound(),
            line.runs());
      }
    }
    return csv.text();
  }
}
