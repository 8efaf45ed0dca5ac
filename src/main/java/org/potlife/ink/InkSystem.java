package org.potlife.ink;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;

/**
 * What all inks of one make-up have in common. Defaults are common practice; a plant enters what
 * its data sheets say.
 *
 * @param id name of the system in this plant
 * @param process water-based or discharge
 * @param standMinutes rest between the end of activation and the first stroke, minutes, default 15
 * @param potLifeMinutes life after the end of activation, minutes, default 720
 * @param agentMinPercent least agent on top of the ink's mass, percent, default 5 for discharge
 * @param agentMaxPercent most agent, percent, default 8 for discharge
 * @param retarderMaxPercent most retarder, percent of the ink, default 5
 * @param dwellS least time in the heated tunnel, seconds, default 90
 * @param waterPercent water in the wet deposit, percent by mass, default 65
 * @param pressNotes squeegee, flood and speed, as the press crew reads them
 */
public record InkSystem(
    @NotBlank @Size(max = 40) String id,
    @NotNull Process process,
    @Min(0) @Max(240) Integer standMinutes,
    @Min(30) @Max(2880) Integer potLifeMinutes,
    @PositiveOrZero @DecimalMax("20") Double agentMinPercent,
    @PositiveOrZero @DecimalMax("20") Double agentMaxPercent,
    @PositiveOrZero @DecimalMax("20") Double retarderMaxPercent,
    @Min(10) @Max(900) Integer dwellS,
    @PositiveOrZero @DecimalMax("95") Double waterPercent,
    @Size(max = 500) String pressNotes) {

  public InkSystem {
    boolean discharge = process == Process.DISCHARGE;
    standMinutes = standMinutes == null ? (discharge ? 15 : 0) : standMinutes;
    potLifeMinutes = potLifeMinutes == null ? 720 : potLifeMinutes;
    agentMinPercent = agentMinPercent == null ? (discharge ? 5.0 : 0.0) : agentMinPercent;
    agentMaxPercent = agentMaxPercent == null ? (discharge ? 8.0 : 0.0) : agentMaxPercent;
    retarderMaxPercent = retarderMaxPercent == null ? 5.0 : retarderMaxPercent;
    dwellS = dwellS == null ? 90 : dwellS;
    waterPercent = waterPercent == null ? 65.0 : waterPercent;
    pressNotes = pressNotes == null ? "" : pressNotes;
  }

  /** Whether inks of this system are activated, and so have a pot life. */
  public boolean activated() {
    return process == Process.DISCHARGE;
  }
}
