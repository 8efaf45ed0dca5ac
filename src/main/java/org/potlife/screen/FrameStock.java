package org.potlife.screen;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;

/**
 * Frames of one mesh that the plant owns, those with a kept stencil included.
 *
 * @param meshPerCm threads per cm
 * @param threadUm thread diameter, um
 * @param count frames
 */
public record FrameStock(
    @NotNull @DecimalMin("5") @DecimalMax("200") Double meshPerCm,
    @NotNull @DecimalMin("10") @DecimalMax("500") Double threadUm,
    @NotNull @Min(0) @Max(10000) Integer count) {}
