package org.potlife.order;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.List;
import org.potlife.ink.Process;

/**
 * One design on one position of the garment.
 *
 * @param design name of the artwork; the same design with the same screens needs no new set-up
 * @param position front, back, sleeve ...
 * @param process water-based or discharge
 * @param artworkApproved false holds the run back, default true
 * @param trialPrint state of the trial print, default open for discharge, else not-needed
 * @param passes strokes per colour, default 1
 * @param widthMm width of the image, mm
 * @param heightMm height of the image, mm
 * @param flashes flash and cooling units that take a station each, default 0
 * @param colours screens in printing order
 */
public record Print(
    @NotBlank @Size(max = 60) String design,
    @NotBlank @Size(max = 40) String position,
    @NotNull Process process,
    Boolean artworkApproved,
    TrialPrint trialPrint,
    @Min(1) @Max(6) Integer passes,
    @NotNull @Min(5) @Max(3000) Integer widthMm,
    @NotNull @Min(5) @Max(3000) Integer heightMm,
    @Min(0) @Max(20) Integer flashes,
    @NotEmpty @Size(max = 24) List<@NotNull @Valid Colour> colours) {

  public Print {
    artworkApproved = artworkApproved == null || artworkApproved;
    if (trialPrint == null && process != null) {
      trialPrint = process == Process.DISCHARGE ? TrialPrint.OPEN : TrialPrint.NOT_NEEDED;
    }
    passes = passes == null ? 1 : passes;
    flashes = flashes == null ? 0 : flashes;
    colours = colours == null ? null : Collections.unmodifiableList(colours);
  }
}
