package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
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
   * @param changes change-overs that the crew makes on this day, in time
   * @param settings what is set on the dryer, in time
   * @param runs what the runs on it ask of it, in order of their first piece
   * @param mixed stretches in which a run is slowed by another one
   * @param periods stretches in which nothing changes at all
   */
  public record DryerDay(
      String dryer,
      int heatedLengthMm,
      List<String> presses,
      List<BeltChange> changes,
      List<Setting> settings,
      List<BeltRun> runs,
      List<MixedBelt> mixed,
      List<Period> periods) {}

  /**
   * A stretch in which nothing changes.
   *
   * @param line as on the sheet
   * @param setBy ids of the runs whose dwell sets the speed; empty when the belt goes no faster
   * @param lanes garments side by side, by run
   * @param water water and heat
   * @param lostMPerMin what the fastest run in the tunnel would have more of the belt if it were
   *     alone, m/min
   * @param changeOver number of the change-over that it begins with; null without
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Period(
      @JsonUnwrapped BeltLine line,
      List<String> setBy,
      List<Integer> lanes,
      BeltWater water,
      double lostMPerMin,
      Integer changeOver) {}

  /**
   * A stretch with one speed.
   *
   * @param dwellS dwell in the heated length at this speed, seconds
   * @param areaPercent largest share of the belt's area in use in the stretch
   * @param heatPercent largest share of the usable heat in use in the stretch
   * @param bounds what binds at some time in the stretch: dwell, area, heat
   * @param setBy names of the runs whose dwell sets the speed; empty when the belt goes no faster
   * @param runs names of the runs in the tunnel
   * @param water water and heat at the moment with the most heat; null when the dryer is unknown
   * @param continued whether another setting follows without a gap
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Setting(
      OffsetDateTime from,
      OffsetDateTime to,
      double speedMPerMin,
      int dwellS,
      int areaPercent,
      int heatPercent,
      List<String> bounds,
      List<String> setBy,
      List<String> runs,
      BeltWater water,
      boolean continued) {}
}
