package org.potlife.ink;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.util.Collections;
import java.util.List;
import org.potlife.shop.Closure;
import org.potlife.shop.Shift;

/**
 * The room that mixes and activates the inks.
 *
 * @param mixers people at the mixer, one job at a time each, default 1
 * @param containerG most ink in one batch, g, default 20000
 * @param scaleStepG resolution of the scale, g, default 1
 * @param mixMinutes weighing and mixing of one batch, minutes, default 8
 * @param activateMinutes stirring the agent into one batch, minutes, default 4
 * @param screenChargeG ink that stays on a screen, g per screen, default 80
 * @param lossPercent ink lost in handling, percent of what is printed, default 10
 * @param reserveG reserve per batch, g, default 50
 * @param useByWarningMinutes a use that ends less than this before the end of the pot life is
 *     marked on the list, minutes, default 30
 * @param leftovers what becomes of activated ink after its pot life, default waste
 * @param lightFrom cloth of this lightness and more is light: ink that is for light garments alone
 *     may be printed on it, 0 (black) to 100 (white), default 60
 * @param shifts staffed time
 * @param closures exceptions to the shifts
 */
public record InkRoom(
    @Min(1) @Max(20) Integer mixers,
    @Min(500) @Max(500000) Integer containerG,
    @Min(1) @Max(100) Integer scaleStepG,
    @Min(0) @Max(240) Integer mixMinutes,
    @Min(0) @Max(120) Integer activateMinutes,
    @Min(0) @Max(2000) Integer screenChargeG,
    @DecimalMin("0") @DecimalMax("100") Double lossPercent,
    @Min(0) @Max(20000) Integer reserveG,
    @Min(0) @Max(1440) Integer useByWarningMinutes,
    Leftovers leftovers,
    @DecimalMin("0") @DecimalMax("100") Double lightFrom,
    @NotEmpty List<@NotNull @Valid Shift> shifts,
    List<@NotNull @Valid Closure> closures) {

  public InkRoom {
    mixers = mixers == null ? 1 : mixers;
    containerG = containerG == null ? 20000 : containerG;
    scaleStepG = scaleStepG == null ? 1 : scaleStepG;
    mixMinutes = mixMinutes == null ? 8 : mixMinutes;
    activateMinutes = activateMinutes == null ? 4 : activateMinutes;
    screenChargeG = screenChargeG == null ? 80 : screenChargeG;
    lossPercent = lossPercent == null ? 10.0 : lossPercent;
    reserveG = reserveG == null ? 50 : reserveG;
    useByWarningMinutes = useByWarningMinutes == null ? 30 : useByWarningMinutes;
    leftovers = leftovers == null ? Leftovers.WASTE : leftovers;
    lightFrom = lightFrom == null ? 60.0 : lightFrom;
    shifts = shifts == null ? null : Collections.unmodifiableList(shifts);
    closures = closures == null ? List.of() : Collections.unmodifiableList(closures);
  }

  /** An ink room whose warning and leftovers are the defaults. */
  public InkRoom(
      Integer mixers,
      Integer containerG,
      Integer scaleStepG,
      Integer mixMinutes,
      Integer activateMinutes,
      Integer screenChargeG,
      Double lossPercent,
      Integer reserveG,
      List<Shift> shifts,
      List<Closure> closures) {
    this(
        mixers,
        containerG,
        scaleStepG,
        mixMinutes,
        activateMinutes,
        screenChargeG,
        lossPercent,
        reserveG,
        null,
        null,
        null,
        shifts,
        closures);
  }

  /** What becomes of activated ink when its pot life is over (R13). */
  public enum Leftovers {
    /** It is thrown away. */
    @JsonProperty("waste")
    WASTE,
    /** It is kept as plain ink, which no longer discharges: for light garments alone. */
    @JsonProperty("plain-for-light")
    PLAIN_FOR_LIGHT
  }
}
