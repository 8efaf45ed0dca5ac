package org.potlife.plan.list;

import java.time.LocalDate;
import java.time.OffsetDateTime;
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
   * @param settings what is set on the dryer, in time
   * @param periods stretches in which nothing changes at all, as on the sheet
   */
  public record DryerDay(
      String dryer,
      int heatedLengthMm,
      List<String> presses,
      List<Setting> settings,
      List<BeltLine> periods) {}

  /**
   * A stretch with one speed.
   *
   * @param dwellS dwell in the heated length at this speed, seconds
   * @param areaPercent largest share of the belt's area in use in the stretch
   * @param heatPercent largest share of the usable heat in use in the stretch
   * @param bounds what binds at some time in the stretch: dwell, area, heat
   * @param runs names of the runs in the tunnel
   * @param continued whether another setting follows without a gap
   */
  public record Setting(
      OffsetDateTime from,
      OffsetDateTime to,
      double speedMPerMin,
      int dwellS,
      int areaPercent,
      int heatPercent,
      List<String> bounds,
      List<String> runs,
      boolean continued) {}
}
