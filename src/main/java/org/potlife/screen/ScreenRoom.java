package org.potlife.screen;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.List;
import org.potlife.shop.Closure;
import org.potlife.shop.Shift;

/**
 * The room that makes the screens.
 *
 * @param degreasingSinks sinks, one screen at a time each, default 1
 * @param coatingBenches benches, one screen at a time each, default 1
 * @param exposureUnits exposure units, one screen at a time each, default 1
 * @param washOutBooths wash-out booths, one screen at a time each, default 1
 * @param tapingTables taping tables, one screen at a time each, default 1
 * @param storeHumidityPercent humidity of the store for dry coated screens, percent, default 40
 * @param stages hands-on minutes per screen
 * @param cabinets drying cabinets
 * @param frames frames by mesh
 * @param kept stencils kept from earlier runs
 * @param shifts staffed time
 * @param closures exceptions to the shifts
 */
public record ScreenRoom(
    @Min(1) @Max(20) Integer degreasingSinks,
    @Min(1) @Max(20) Integer coatingBenches,
    @Min(1) @Max(20) Integer exposureUnits,
    @Min(1) @Max(20) Integer washOutBooths,
    @Min(1) @Max(20) Integer tapingTables,
    @DecimalMin("0") @DecimalMax("100") Double storeHumidityPercent,
    @NotNull @Valid Emulsion emulsion,
    @NotNull @Valid StageMinutes stages,
    @NotEmpty @Size(max = 50) List<@NotNull @Valid Cabinet> cabinets,
    @NotEmpty @Size(max = 100) List<@NotNull @Valid FrameStock> frames,
    @Size(max = 20000) List<@NotNull @Valid KeptStencil> kept,
    @NotEmpty List<@NotNull @Valid Shift> shifts,
    List<@NotNull @Valid Closure> closures) {

  public ScreenRoom {
    degreasingSinks = degreasingSinks == null ? 1 : degreasingSinks;
    coatingBenches = coatingBenches == null ? 1 : coatingBenches;
    exposureUnits = exposureUnits == null ? 1 : exposureUnits;
    washOutBooths = washOutBooths == null ? 1 : washOutBooths;
    tapingTables = tapingTables == null ? 1 : tapingTables;
    storeHumidityPercent = storeHumidityPercent == null ? 40.0 : storeHumidityPercent;
    emulsion = emulsion == null ? new Emulsion(null, null, null, null, null) : emulsion;
    stages = stages == null ? new StageMinutes(null, null, null, null, null, null, null) : stages;
    cabinets = cabinets == null ? null : Collections.unmodifiableList(cabinets);
    frames = frames == null ? null : Collections.unmodifiableList(frames);
    kept = kept == null ? List.of() : Collections.unmodifiableList(kept);
    shifts = shifts == null ? null : Collections.unmodifiableList(shifts);
    closures = closures == null ? List.of() : Collections.unmodifiableList(closures);
  }

  /** The same room with other kept stencils. */
  public ScreenRoom withKept(List<KeptStencil> stencils) {
    return new ScreenRoom(
        degreasingSinks,
        coatingBenches,
        exposureUnits,
        washOutBooths,
        tapingTables,
        storeHumidityPercent,
        emulsion,
        stages,
        cabinets,
        frames,
        stencils,
        shifts,
        closures);
  }

  /** The same room with other cabinets. */
  public ScreenRoom withCabinets(List<Cabinet> others) {
    return new ScreenRoom(
        degreasingSinks,
        coatingBenches,
        exposureUnits,
        washOutBooths,
        tapingTables,
        storeHumidityPercent,
        emulsion,
        stages,
        others,
        frames,
        kept,
        shifts,
        closures);
  }
}
