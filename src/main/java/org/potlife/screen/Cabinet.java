package org.potlife.screen;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.List;

/**
 * A drying cabinet.
 *
 * @param id name of the cabinet
 * @param frames screens it takes at once
 * @param airflowFactor how much faster than still air it dries, default 1
 * @param reserveFactor how much longer than calculated the door stays shut, 1 to 3, default 1.2
 * @param gatherMinutes how long a load is collected before the door shuts, minutes, default 20
 * @param climate expected climate over the day; the last period holds over midnight until the first
 */
public record Cabinet(
    @NotBlank @Size(max = 40) String id,
    @NotNull @Min(1) @Max(500) Integer frames,
    @DecimalMin("0.05") @DecimalMax("20") Double airflowFactor,
    @DecimalMin("1") @DecimalMax("3") Double reserveFactor,
    @Min(0) @Max(240) Integer gatherMinutes,
    @NotEmpty List<@NotNull @Valid ClimatePeriod> climate) {

  public Cabinet {
    airflowFactor = airflowFactor == null ? 1.0 : airflowFactor;
    reserveFactor = reserveFactor == null ? 1.2 : reserveFactor;
    gatherMinutes = gatherMinutes == null ? 20 : gatherMinutes;
    climate = climate == null ? null : Collections.unmodifiableList(climate);
  }

  /** The same cabinet with another airflow factor. */
  public Cabinet withAirflow(double factor) {
    return new Cabinet(id, frames, factor, reserveFactor, gatherMinutes, climate);
  }
}
