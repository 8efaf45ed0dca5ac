package org.potlife.screen;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;

/**
 * The photo emulsion in use.
 *
 * @param dryingPaH drying that a coat needs: vapour pressure deficit times hours, Pa h, at airflow
 *     factor 1; default 1250 (one hour at 21.1 C and 50 %)
 * @param rinseDryingPaH the same for a screen wet with water after degreasing or wash-out; default
 *     600
 * @param humidityLimitPercent above this relative humidity it does not dry, percent, default 60
 * @param shelfLifeHours how long a dry coated screen keeps in dry store, hours, default 336
 */
public record Emulsion(
    @Size(max = 60) String name,
    @DecimalMin("10") @DecimalMax("50000") Double dryingPaH,
    @DecimalMin("10") @DecimalMax("50000") Double rinseDryingPaH,
    @DecimalMin("10") @DecimalMax("100") Double humidityLimitPercent,
    @Min(1) @Max(8760) Integer shelfLifeHours) {

  public Emulsion {
    name = name == null ? "emulsion" : name;
    dryingPaH = dryingPaH == null ? 1250.0 : dryingPaH;
    rinseDryingPaH = rinseDryingPaH == null ? 600.0 : rinseDryingPaH;
    humidityLimitPercent = humidityLimitPercent == null ? 60.0 : humidityLimitPercent;
    shelfLifeHours = shelfLifeHours == null ? 336 : shelfLifeHours;
  }

  /**
   * Drying that a stage needs at airflow factor 1, without a cabinet's reserve, Pa h.
   *
   * @param step a drying stage as on the sheet: dry-coated, or one of those wet with water
   */
  public double requiredPaH(String step) {
    return step.equals("dry-coated") ? dryingPaH : rinseDryingPaH;
  }
}
