package org.potlife.plan.export;

import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Period;
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
            "runs",
            "setBy",
            "lanes",
            "waterKgPerH",
            "heatKw",
            "heatDepositKw",
            "heatClothKw",
            "heatLossKw",
            "lostMPerMin",
            "changeOver");
    for (DryerDay dryer : list.dryers()) {
      for (Period period : dryer.periods()) {
        BeltLine line = period.line();
        csv.row(
            line.dryer(),
            line.from(),
            line.to(),
            line.speedMPerMin(),
            line.dwellS(),
            line.areaPercent(),
            line.heatPercent(),
            line.bound(),
            line.runs(),
            period.setBy(),
            period.lanes(),
            period.water().kgPerH(),
            period.water().kw(),
            period.water().depositKw(),
            period.water().clothKw(),
            period.water().lossKw(),
            period.lostMPerMin(),
            period.changeOver());
      }
    }
    return csv.text();
  }
}
