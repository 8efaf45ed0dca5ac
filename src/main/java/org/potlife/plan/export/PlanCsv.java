package org.potlife.plan.export;

import java.util.List;
import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
import org.potlife.audit.RuleResult;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.ActivationList.Weighing;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.LateList.Late;
import org.potlife.plan.list.LateList.Unplaced;
import org.potlife.plan.list.PlanOverview;
import org.potlife.plan.list.PressList;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard;
import org.potlife.plan.list.RunCard.Wait;
import org.potlife.plan.list.ScreenList;
import org.potlife.sheet.PlanSheet.BeltLine;

/** Each list as one CSV file. */
public final class PlanCsv {

  private PlanCsv() {}

  /**
   * One row per weighing, the agent as the last one of its batch: the masses of a batch's rows add
   * up to what is in the bucket.
   */
  public static String activations(ActivationList list) {
    CsvTable csv =
        new CsvTable(
            "batch",
            "ink",
            "process",
            "step",
            "component",
            "role",
            "massG",
            "scaleG",
            "mixFrom",
            "activateFrom",
            "readyAt",
            "useBy",
            "mixer",
            "presses",
            "runs",
            "orders");
    for (ActivationList.Batch batch : list.batches()) {
      int step = 0;
      for (Weighing w : batch.weighings()) {
        activation(csv, batch, ++step, w.name(), w.role(), w.massG(), w.scaleG());
      }
      if (batch.activated()) {
        activation(csv, batch, ++step, "agent", "agent", batch.agentG(), batch.totalG());
      }
    }
    return csv.text();
  }

  private static void activation(
      CsvTable csv,
      ActivationList.Batch batch,
      int step,
      String component,
      String role,
      int massG,
      int scaleG) {
    csv.row(
        batch.id(),
        batch.ink().ink(),
        batch.process(),
        step,
        component,
        role,
        massG,
        scaleG,
        batch.mixFrom(),
        batch.activateFrom(),
        batch.readyAt(),
        batch.useBy(),
        batch.mixer(),
        distinct(batch.uses().stream().map(ActivationList.Use::press).toList()),
        batch.uses().stream().map(ActivationList.Use::run).toList(),
        distinct(batch.uses().stream().map(ActivationList.Use::order).toList()));
  }

  /** One row per stage of a screen, and one per kept stencil with the stage {@code fetch}. */
  public static String screens(ScreenList list) {
    CsvTable csv =
        new CsvTable(
            "step",
            "from",
            "latestFrom",
            "to",
            "where",
            "screen",
            "design",
            "ink",
            "station",
            "meshPerCm",
            "threadUm",
            "run",
            "press",
            "setUpStart");
    for (ScreenList.Fetch fetch : list.fetches()) {
      ScreenList.Frame f = fetch.frame();
      csv.row(
          "fetch",
          null,
          fetch.neededBy(),
          null,
          "store",
          f.screen(),
          f.design(),
          f.ink().ink(),
          f.station(),
          f.meshPerCm(),
          f.threadUm(),
          fetch.run(),
          fetch.press(),
          fetch.neededBy());
    }
    for (ScreenList.Stage stage : list.stages()) {
      for (ScreenList.Job job : stage.jobs()) {
        for (ScreenList.Frame f : job.frames()) {
          csv.row(
              stage.step(),
              job.from(),
              job.latestFrom(),
              job.to(),
              job.where(),
              f.screen(),
              f.design(),
              f.ink().ink(),
              f.station(),
              f.meshPerCm(),
              f.threadUm(),
              job.run(),
              job.press(),
              job.setUpStart());
        }
      }
    }
    return csv.text();
  }

  /** One row per run. */
  public static String presses(PressList list) {
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

  /** One row per stretch with constant settings. */
  public static String belts(BeltList list) {
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

  /** One row per late order and per print without a place, told apart by the first column. */
  public static String late(LateList list) {
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

  /** One row per order with a run on the plan. */
  public static String promises(PlanOverview overview) {
    CsvTable csv =
        new CsvTable("order", "customer", "dueAt", "plannedFinish", "lateMinutes", "complete");
    for (PlanOverview.Promise p : overview.promises()) {
      csv.row(p.order(), p.customer(), p.dueAt(), p.plannedFinish(), p.lateMinutes(), p.complete());
    }
    return csv.text();
  }

  /** One row per finding, and one per rule without a finding. */
  public static String audit(AuditReport audit) {
    CsvTable csv = new CsvTable("rule", "name", "checked", "subject", "detail");
    for (RuleResult rule : audit.rules()) {
      if (rule.findings().isEmpty()) {
        csv.row(rule.rule(), rule.name(), rule.checked(), null, null);
      }
      for (Finding finding : rule.findings()) {
        csv.row(finding.rule(), rule.name(), rule.checked(), finding.subject(), finding.detail());
      }
    }
    return csv.text();
  }

  private static List<String> distinct(List<String> names) {
    return names.stream().distinct().toList();
  }
}
