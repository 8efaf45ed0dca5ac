package org.potlife.web;

import java.time.LocalDate;
import java.util.List;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PressList;

/** What the start page shows. */
record StartView(List<Plant> plants) {

  /**
   * One plant.
   *
   * @param tomorrow the plant's tomorrow
   * @param planned its plan in force; null when there is none
   * @param recent its latest plans, the newest first
   */
  record Plant(
      String id, String name, LocalDate tomorrow, Planned planned, List<PlanSummary> recent) {}

  /**
   * The plan in force.
   *
   * @param presses its runs of tomorrow
   */
  record Planned(PageHead head, WallTime time, PressList presses, LateList late) {}
}
