package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.List;
import org.potlife.sheet.PlanSheet.BeltLine;

/** The belts' timetable of one local day, one entry per dryer of the shop. */
public record BeltList(LocalDate day, List<DryerDay> dryers) {

  /** The timetable of a day. */
  public static BeltList of(PlanIndex plan, LocalDate day) {
    return new BeltMapping(plan).list(day);
  }

  /**
   * The day of one dryer.
   *
   * @param heatedLengthMm length in which the dwell counts, mm
   * @param presses presses that feed it
   * @param periods stretches with constant settings, in time
   */
  public record DryerDay(
      String dryer, int heatedLengthMm, List<String> presses, List<Period> periods) {}

  /**
   * A stretch with constant settings.
   *
   * @param line as on the sheet
   * @param bound what binds, in words
   * @param speedChanged whether somebody has to turn the speed at its start
   */
  public record Period(BeltLine line, String bound, boolean speedChanged) {}
}
