package org.potlife.plan.export;

import org.potlife.plan.list.PressList;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard;
import org.potlife.plan.list.RunCard.Wait;

/** The press crews' list as a file. */
public final class PressCsv {

  private PressCsv() {}

  /** One row per run. */
  public static String of(PressList list) {
    CsvTable csv =
        new CsvTable(
            "press",
            "run",
            "order",
            "customer",
            "design",
            "position",
            "process",
            "lot",
            "lots",
            "garments",
            "quantity",
            "trialPieces",
            "setUpStart",
            "firstPieceAt",
            "printStart",
            "printEnd",
            "offBelt",
            "dueAt",
            "lateMinutes",
            "ratePerHour",
            "limitedBy",
            "dryer",
            "inks",
            "screens",
            "batches",
            "waitMinutes",
            "waits");
    for (PressDay press : list.presses()) {
      for (RunCard card : press.runs()) {
        var run = card.run();
        csv.row(
            run.press(),
            run.id(),
            run.order(),
            run.customer(),
            run.design(),
            run.position(),
            run.process(),
            run.lot(),
            run.lots(),
            card.garments(),
            run.quantity(),
            run.trialPieces(),
            run.setUpStart(),
            run.firstPieceAt(),
            run.printStart(),
            run.printEnd(),
            run.offBelt(),
            card.dueAt(),
            card.lateMinutes(),
            run.ratePerHour(),
            run.limitedBy(),
            run.dryer(),
            run.inks(),
            run.screens(),
            run.batches(),
            card.waits().stream().mapToLong(Wait::minutes).sum(),
            card.waits().stream().map(w -> w.minutes() + " min: " + w.words()).toList());
      }
    }
    return csv.text();
  }
}
