package org.potlife.order;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;

/**
 * One colour of a print: one screen, one ink.
 *
 * @param ink id of the ink
 * @param coveragePercent share of width x height that is printed, 0 &lt; percent &lt;= 100
 * @param meshPerCm threads per cm
 * @param threadUm thread diameter, um
 * @param fabricUm thickness of the mesh fabric, um, default 1.7 thread diameters
 * @param measuredG grams per piece by the plant's own weighing; overrides the estimate
 */
public record Colour(
    @NotBlank @Size(max = 40) String ink,
    @NotNull @Positive @DecimalMax("100") Double coveragePercent,
    @NotNull @DecimalMin("5") @DecimalMax("200") Double meshPerCm,
    @NotNull @DecimalMin("10") @DecimalMax("500") Double threadUm,
    @DecimalMin("10") @DecimalMax("1000") Double fabricUm,
    @Positive @DecimalMax("500") Double measuredG) {}
