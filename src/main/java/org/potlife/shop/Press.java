package org.potlife.shop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import org.potlife.ink.Process;

/**
 * A press and its habits. Defaults are common practice without a source.
 *
 * @param id name of the press
 * @param stations print positions that take one screen or one flash or cooling unit each
 * @param printWidthMm widest image, mm
 * @param printHeightMm highest image, mm
 * @param processes what may be printed on it
 * @param garmentKinds kinds of garment its boards take; empty means all
 * @param dryer id of the dryer that it feeds
 * @param ratePerHour pieces per hour when nothing holds it back
 * @param minRatePerHour least rate at which it is worth running, pieces/h, default 30 % of the rate
 * @param changeoverMinutes fixed part of a set-up, minutes, default 10
 * @param minutesPerScreen set-up per screen that differs, minutes, default 5
 * @param tearDownMinutesPerScreen take-down per screen of the run before, minutes, default 2
 * @param washUpToDarkerMinutes wash-up per station whose ink gets darker, minutes, default 3
 * @param washUpToLighterMinutes wash-up per station whose ink gets lighter, minutes, default 6
 * @param firstPieceMinutes first piece through the dryer and approved, minutes, default 6; part of
 *     the set-up, at its end
 * @param trialPieces pieces printed for approval per set-up, default 3
 * @param maxPauseMinutes longest break that a run may pause over, minutes, default 30
 * @param maxWaitToDryerS longest wait between last stroke and belt, seconds, default 60; a plan has
 *     none at all, since the rate follows the belt, so it only binds the crew
 * @param inService false takes the press out of planning
 * @param shifts staffed time
 * @param closures exceptions to the shifts
 * @param extraShifts staffed time beside the shifts, for once
 */
public record Press(
    @NotBlank @Size(max = 40) String id,
    @NotNull @Min(1) @Max(40) Integer stations,
    @NotNull @Min(10) @Max(5000) Integer printWidthMm,
    @NotNull @Min(10) @Max(5000) Integer printHeightMm,
    @NotEmpty List<@NotNull Process> processes,
    List<@NotBlank @Size(max = 40) String> garmentKinds,
    @NotBlank @Size(max = 40) String dryer,
    @NotNull @Min(1) @Max(3000) Integer ratePerHour,
    @Min(1) @Max(3000) Integer minRatePerHour,
    @DecimalMin("0") Integer changeoverMinutes,
    @DecimalMin("0") Integer minutesPerScreen,
    @DecimalMin("0") Integer tearDownMinutesPerScreen,
    @DecimalMin("0") Integer washUpToDarkerMinutes,
    @DecimalMin("0") Integer washUpToLighterMinutes,
    @DecimalMin("0") Integer firstPieceMinutes,
    @DecimalMin("0") Integer trialPieces,
    @Min(0) @Max(240) Integer maxPauseMinutes,
    @Min(1) @Max(3600) Integer maxWaitToDryerS,
    Boolean inService,
    @NotEmpty List<@NotNull @Valid Shift> shifts,
    List<@NotNull @Valid Closure> closures,
    List<@NotNull @Valid ExtraShift> extraShifts) {

  /** A time for which the press is staffed for once; it counts as overtime. */
  public record ExtraShift(@NotNull OffsetDateTime from, @NotNull OffsetDateTime to) {}

  public Press {
    processes = processes == null ? null : Collections.unmodifiableList(processes);
    garmentKinds = garmentKinds == null ? List.of() : Collections.unmodifiableList(garmentKinds);
    if (minRatePerHour == null && ratePerHour != null) {
      minRatePerHour = Math.max(1, ratePerHour * 3 / 10);
    }
    changeoverMinutes = changeoverMinutes == null ? 10 : changeoverMinutes;
    minutesPerScreen = minutesPerScreen == null ? 5 : minutesPerScreen;
    tearDownMinutesPerScreen = tearDownMinutesPerScreen == null ? 2 : tearDownMinutesPerScreen;
    washUpToDarkerMinutes = washUpToDarkerMinutes == null ? 3 : washUpToDarkerMinutes;
    washUpToLighterMinutes = washUpToLighterMinutes == null ? 6 : washUpToLighterMinutes;
    firstPieceMinutes = firstPieceMinutes == null ? 6 : firstPieceMinutes;
    trialPieces = trialPieces == null ? 3 : trialPieces;
    maxPauseMinutes = maxPauseMinutes == null ? 30 : maxPauseMinutes;
    maxWaitToDryerS = maxWaitToDryerS == null ? 60 : maxWaitToDryerS;
    inService = inService == null || inService;
    shifts = shifts == null ? null : Collections.unmodifiableList(shifts);
    closures = closures == null ? List.of() : Collections.unmodifiableList(closures);
    extraShifts = extraShifts == null ? List.of() : Collections.unmodifiableList(extraShifts);
  }

  /** The same press with other exceptions to its shifts. */
  public Press withTimes(List<Closure> closed, List<ExtraShift> extra) {
    return with(shifts, closed, extra);
  }

  /** The same press with other shifts. */
  public Press withShifts(List<Shift> other) {
    return with(other, closures, extraShifts);
  }

  private Press with(List<Shift> inShifts, List<Closure> closed, List<ExtraShift> extra) {
    return new Press(
        id,
        stations,
        printWidthMm,
        printHeightMm,
        processes,
        garmentKinds,
        dryer,
        ratePerHour,
        minRatePerHour,
        changeoverMinutes,
        minutesPerScreen,
        tearDownMinutesPerScreen,
        washUpToDarkerMinutes,
        washUpToLighterMinutes,
        firstPieceMinutes,
        trialPieces,
        maxPauseMinutes,
        maxWaitToDryerS,
        inService,
        inShifts,
        closed,
        extra);
  }

  /** Taking screens down after a run, s: from then on they are released (R4). */
  public int tearDownS(int screens) {
    return 60 * tearDownMinutesPerScreen * screens;
  }
}
