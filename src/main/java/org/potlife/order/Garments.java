package org.potlife.order;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;

/**
 * The garments of an order.
 *
 * @param style what the packing list calls them
 * @param kind kind of garment that a press's boards must take, default shirt
 * @param colour colour of the cloth
 * @param lightness 0 (black) to 100 (white), default 30; dark cloth is printed first
 * @param cottonPercent cotton share, percent
 * @param dye kind of dye, for example reactive
 * @param quantity pieces ordered
 * @param blanks pieces in the carton; at least the quantity, default the quantity
 * @param availableFrom when they are in house
 * @param lengthMm length on the belt, mm
 * @param widthMm width on the belt, mm
 * @param massG mass of one piece, g
 */
public record Garments(
    @NotBlank @Size(max = 80) String style,
    @Size(min = 1, max = 40) String kind,
    @NotBlank @Size(max = 80) String colour,
    @DecimalMin("0") @DecimalMax("100") Double lightness,
    @NotNull @DecimalMin("0") @DecimalMax("100") Double cottonPercent,
    @NotBlank @Size(max = 40) String dye,
    @NotNull @Min(1) @Max(100000) Integer quantity,
    @Min(1) @Max(110000) Integer blanks,
    @NotNull OffsetDateTime availableFrom,
    @NotNull @Min(50) @Max(3000) Integer lengthMm,
    @NotNull @Min(50) @Max(3000) Integer widthMm,
    @NotNull @Min(5) @Max(5000) Integer massG) {

  public Garments {
    kind = kind == null ? "shirt" : kind;
    lightness = lightness == null ? 30.0 : lightness;
    blanks = blanks == null ? quantity : blanks;
  }
}
