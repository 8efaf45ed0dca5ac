package org.potlife.plan.export;

import org.potlife.plan.list.ScreenList;

/** The screen room's list as a file. */
public final class ScreenCsv {

  private ScreenCsv() {}

  /** One row per stage of a screen, and one per kept stencil with the stage {@code fetch}. */
  public static String of(ScreenList list) {
    CsvTable csv =
        new CsvTable(
            "step",
            "from",
            "latestFrom",
            "slackMinutes",
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
              job.slackMinutes(),
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
}
