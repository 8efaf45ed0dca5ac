package org.potlife.screen;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;

/**
 * Hands-on minutes per screen and stage. Defaults are common practice without a source.
 *
 * @param degrease default 5
 * @param coat default 3
 * @param expose default 3
 * @param washOut default 4
 * @param postExpose default 2
 * @param tape tape and check, default 4
 * @param reclaim default 12
 */
public record StageMinutes(
    @DecimalMin("0") @DecimalMax("120") Double degrease,
    @DecimalMin("0") @DecimalMax("120") Double coat,
    @DecimalMin("0") @DecimalMax("120") Double expose,
    @DecimalMin("0") @DecimalMax("120") Double washOut,
    @DecimalMin("0") @DecimalMax("120") Double postExpose,
    @DecimalMin("0") @DecimalMax("120") Double tape,
    @DecimalMin("0") @DecimalMax("120") Double reclaim) {

  public StageMinutes {
    degrease = degrease == null ? 5.0 : degrease;
    coat = coat == null ? 3.0 : coat;
    expose = expose == null ? 3.0 : expose;
    washOut = washOut == null ? 4.0 : washOut;
    postExpose = postExpose == null ? 2.0 : postExpose;
    tape = tape == null ? 4.0 : tape;
    reclaim = reclaim == null ? 12.0 : reclaim;
  }
}
