package org.potlife.shop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.List;

/**
 * How the plant weighs one plan against another. Money is in the plant's currency.
 *
 * @param horizonDays days that a plan may reach ahead, 1 to 180, default 21
 * @param freezeMinutes runs that start sooner than this stay where they are, minutes, default 60
 * @param lateWeights weight of a late minute for priority 1, 2, 3 ...; default 10, 5, 2, 1, 1
 * @param setUpPerHour cost of an hour of set-up, default 45
 * @param overtimePerHour extra cost of an hour of overtime, default 30
 * @param emptyBeltPerHour cost of an hour of running an empty belt, default 8
 * @param runShiftedPerHour cost of an hour by which a published run starts earlier or later,
 *     divided by the root of one plus the hours until it was to start, default 6
 * @param pressChanged cost of moving a published run to another press, per run, default 10
 * @param orderSwapped cost of two neighbours on a press the other way round than published, per
 *     pair, default 3
 * @param finishPerHour cost of an hour that the whole plan ends later, default 2
 * @param thinSlackPerHour cost of an hour of slack missing to the wanted slack, default 3
 * @param wantedSlackMinutes slack before the due date that a run should have, minutes, default 120
 * @param lightBeforeDark cost when an activated ink prints light cloth before dark cloth, default 6
 * @param longestSolveSeconds upper bound for one solve, seconds, default 300
 * @param following how plans follow what happens
 */
public record PlanSettings(
    @Min(1) @Max(180) Integer horizonDays,
    @Min(0) @Max(2880) Integer freezeMinutes,
    @Size(min = 1, max = 9) List<@NotNull @Min(0) @Max(1000) Integer> lateWeights,
    @DecimalMin("0") Double setUpPerHour,
    @DecimalMin("0") Double overtimePerHour,
    @DecimalMin("0") Double emptyBeltPerHour,
    @DecimalMin("0") Double runShiftedPerHour,
    @DecimalMin("0") Double pressChanged,
    @DecimalMin("0") Double orderSwapped,
    @DecimalMin("0") Double finishPerHour,
    @DecimalMin("0") Double thinSlackPerHour,
    @Min(0) @Max(10080) Integer wantedSlackMinutes,
    @DecimalMin("0") Double lightBeforeDark,
    @Min(1) @Max(3600) Integer longestSolveSeconds,
    @Valid Following following) {

  public PlanSettings {
    horizonDays = horizonDays == null ? 21 : horizonDays;
    freezeMinutes = freezeMinutes == null ? 60 : freezeMinutes;
    lateWeights =
        lateWeights == null ? List.of(10, 5, 2, 1, 1) : Collections.unmodifiableList(lateWeights);
    setUpPerHour = setUpPerHour == null ? 45.0 : setUpPerHour;
    overtimePerHour = overtimePerHour == null ? 30.0 : overtimePerHour;
    emptyBeltPerHour = emptyBeltPerHour == null ? 8.0 : emptyBeltPerHour;
    runShiftedPerHour = runShiftedPerHour == null ? 6.0 : runShiftedPerHour;
    pressChanged = pressChanged == null ? 10.0 : pressChanged;
    orderSwapped = orderSwapped == null ? 3.0 : orderSwapped;
    finishPerHour = finishPerHour == null ? 2.0 : finishPerHour;
    thinSlackPerHour = thinSlackPerHour == null ? 3.0 : thinSlackPerHour;
    wantedSlackMinutes = wantedSlackMinutes == null ? 120 : wantedSlackMinutes;
    lightBeforeDark = lightBeforeDark == null ? 6.0 : lightBeforeDark;
    longestSolveSeconds = longestSolveSeconds == null ? 300 : longestSolveSeconds;
    following = following == null ? Following.defaults() : following;
  }

  /** Weight of a late minute; a priority beyond the list takes the last weight. */
  public int lateWeight(int priority) {
    return lateWeights.get(Math.min(priority, lateWeights.size()) - 1);
  }

  /** All defaults. */
  public static PlanSettings defaults() {
    return new PlanSettings(
        null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);
  }
}
