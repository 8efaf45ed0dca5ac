package org.potlife.shop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;

/**
 * Staffed time that repeats every week, in the plant's local time.
 *
 * @param days days on which the shift starts
 * @param from start
 * @param to end; not after {@code from} means that the shift ends on the next day
 * @param breaks unstaffed pauses within the shift
 * @param overtime whether minutes in this shift cost extra
 */
public record Shift(
    @NotEmpty List<@NotNull DayOfWeek> days,
    @NotNull LocalTime from,
    @NotNull LocalTime to,
    List<@NotNull @Valid Break> breaks,
    Boolean overtime) {

  public Shift {
    days = days == null ? null : Collections.unmodifiableList(days);
    breaks = breaks == null ? List.of() : Collections.unmodifiableList(breaks);
    overtime = overtime != null && overtime;
  }

  /** A pause within a shift, in local time. */
  public record Break(@NotNull LocalTime from, @NotNull LocalTime to) {}
}
