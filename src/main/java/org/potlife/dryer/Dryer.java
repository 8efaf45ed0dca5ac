package org.potlife.dryer;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;

/**
 * A belt dryer.
 *
 * @param id name of the dryer
 * @param heatedLengthMm length of the tunnel in which the dwell counts, mm
 * @param beltLengthMm way from loading to unloading, mm; at least the heated length
 * @param beltWidthMm usable width of the belt, mm
 * @param gapMm free space between two garments, along and across, mm, default 30
 * @param maxSpeedMPerMin fastest belt speed, m/min, default 6
 * @param usableHeatKw heat that the tunnel can give, kW
 * @param efficiency share of that heat that reaches the goods, 0.05 to 1, default 0.4
 * @param roomTemperatureC temperature of goods that enter, degrees Celsius, default 20
 * @param coolMinutes until a garment behind the belt may be printed again, minutes, default 5
 */
public record Dryer(
    @NotBlank @Size(max = 40) String id,
    @NotNull @Min(300) @Max(50000) Integer heatedLengthMm,
    @NotNull @Min(300) @Max(80000) Integer beltLengthMm,
    @NotNull @Min(200) @Max(5000) Integer beltWidthMm,
    @Min(0) @Max(500) Integer gapMm,
    @DecimalMin("0.1") @DecimalMax("60") Double maxSpeedMPerMin,
    @NotNull @Positive @DecimalMax("2000") Double usableHeatKw,
    @DecimalMin("0.05") @DecimalMax("1") Double efficiency,
    @DecimalMin("-10") @DecimalMax("50") Double roomTemperatureC,
    @Min(0) @Max(240) Integer coolMinutes) {

  public Dryer {
    gapMm = gapMm == null ? 30 : gapMm;
    maxSpeedMPerMin = maxSpeedMPerMin == null ? 6.0 : maxSpeedMPerMin;
    efficiency = efficiency == null ? 0.4 : efficiency;
    roomTemperatureC = roomTemperatureC == null ? 20.0 : roomTemperatureC;
    coolMinutes = coolMinutes == null ? 5 : coolMinutes;
  }
}
