package org.potlife.plan.export;

import java.util.List;
import org.potlife.plan.list.ActivationList;
import org.potlife.plan.list.ActivationList.Weighing;

/** The ink room's list as a file. */
public final class ActivationCsv {

  private ActivationCsv() {}

  /**
   * One row per weighing, the agent as the last one of its batch: the masses of a batch's rows add
   * up to what is in the bucket.
   */
  public static String of(ActivationList list) {
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
      for (Weighing w : batch.components()) {
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
        batch.runs(),
        distinct(batch.uses().stream().map(ActivationList.Use::order).toList()));
  }

  private static List<String> distinct(List<String> names) {
    return names.stream().distinct().toList();
  }
}
