package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.List;

/**
 * The press crews' list of one local day: per press its runs in order.
 *
 * @param presses all presses of the shop; one without a run has an empty list
 */
public record PressList(LocalDate day, List<PressDay> presses) {

  /** The list of a day. */
  public static PressList of(PlanIndex plan, LocalDate day) {
    return new PressMapping(plan).list(day);
  }

  /**
   * The day of one press.
   *
   * @param dryer id of the dryer it feeds
   * @param inService whether the press is planned at all
   * @param pieces pieces of all its runs
   */
  public record PressDay(
      String press, String dryer, boolean inService, int pieces, List<RunCard> runs) {}
}
