package org.potlife.shop;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;

/** A time in which a press or room does not work: a holiday, a repair. */
public record Closure(
    @NotNull OffsetDateTime from, @NotNull OffsetDateTime to, @Size(max = 200) String reason) {

  public Closure {
    reason = reason == null ? "closed" : reason;
  }
}
