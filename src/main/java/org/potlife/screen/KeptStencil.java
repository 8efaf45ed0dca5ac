package org.potlife.screen;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * A screen kept from an earlier run: developed, dry and ready for the press.
 *
 * @param screen name of the screen
 * @param design the design it carries
 * @param ink the ink it was made for
 * @param meshPerCm threads per cm
 * @param threadUm thread diameter, um
 */
public record KeptStencil(
    @NotBlank @Size(max = 60) String screen,
    @NotBlank @Size(max = 60) String design,
    @NotBlank @Size(max = 40) String ink,
    @NotNull @DecimalMin("5") @DecimalMax("200") Double meshPerCm,
    @NotNull @DecimalMin("10") @DecimalMax("500") Double threadUm) {}
