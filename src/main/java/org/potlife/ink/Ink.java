package org.potlife.ink;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.util.List;

/**
 * An ink of the plant.
 *
 * @param id name by which orders ask for it
 * @param system id of its {@link InkSystem}
 * @param swatch the ink's own colour as {@code #rrggbb}, for the screens and sheets
 * @param lightness 0 (black) to 100 (white); wash-up takes longer from dark to light
 * @param densityGPerCm3 density of the ink, g/cm3, default 1.05
 * @param costPerKg price of the ink with agent, plant currency per kg, default 12
 * @param agentPercent agent on top of the ink's mass, percent; 0 for inks without agent
 * @param transferFactor share of the theoretical deposit that reaches the cloth, calibrated by the
 *     plant's weighing, default 1.0
 * @param recipe components in weighing order; percentages sum to 100
 */
public record Ink(
    @NotBlank @Size(max = 40) String id,
    @NotBlank @Size(max = 40) String system,
    @NotNull @Pattern(regexp = "#[0-9a-fA-F]{6}", message = "must look like #1a2b3c") String swatch,
    @NotNull @DecimalMin("0") @DecimalMax("100") Double lightness,
    @DecimalMin("0.5") @DecimalMax("3") Double densityGPerCm3,
    @PositiveOrZero Double costPerKg,
    @PositiveOrZero @DecimalMax("20") Double agentPercent,
    @DecimalMin("0.05") @DecimalMax("3") Double transferFactor,
    @NotEmpty @Size(max = 20) List<@NotNull @Valid Component> recipe) {

  public Ink {
    densityGPerCm3 = densityGPerCm3 == null ? 1.05 : densityGPerCm3;
    costPerKg = costPerKg == null ? 12.0 : costPerKg;
    agentPercent = agentPercent == null ? 0.0 : agentPercent;
    transferFactor = transferFactor == null ? 1.0 : transferFactor;
    recipe = recipe == null ? null : java.util.Collections.unmodifiableList(recipe);
  }
}
