package org.potlife.shop;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import java.util.Collections;
import java.util.List;

/**
 * What the plant accepts as cloth and how much spoilage it allows.
 *
 * @param dischargeMinCottonPercent least cotton share for discharge, percent, default 80
 * @param dischargeableDyes dyes that discharge, default reactive
 * @param cottonRegainPercent moisture regain of cotton, percent, default 7 (ASTM D1909, from
 *     memory)
 * @param otherRegainPercent moisture regain of the other fibres, percent, default 0.4
 * @param spoilagePercent pieces printed beyond the ordered ones, percent, default 3
 */
public record ClothRules(
    @DecimalMin("0") @DecimalMax("100") Double dischargeMinCottonPercent,
    List<@NotBlank String> dischargeableDyes,
    @DecimalMin("0") @DecimalMax("30") Double cottonRegainPercent,
    @DecimalMin("0") @DecimalMax("30") Double otherRegainPercent,
    @DecimalMin("0") @DecimalMax("50") Double spoilagePercent) {

  public ClothRules {
    dischargeMinCottonPercent =
        dischargeMinCottonPercent == null ? 80.0 : dischargeMinCottonPercent;
    dischargeableDyes =
        dischargeableDyes == null
            ? List.of("reactive")
            : Collections.unmodifiableList(dischargeableDyes);
    cottonRegainPercent = cottonRegainPercent == null ? 7.0 : cottonRegainPercent;
    otherRegainPercent = otherRegainPercent == null ? 0.4 : otherRegainPercent;
    spoilagePercent = spoilagePercent == null ? 3.0 : spoilagePercent;
  }
}
