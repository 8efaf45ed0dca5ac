package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.platform.problem.FieldError;

/** A press is staffed, or not, for a time, whatever its shifts say. */
@ApplicationScoped
class ShiftEffect implements EventEffect<ShiftEffect.Data> {

  /** Longer is a change of the set-up. */
  private static final Duration LONGEST = Duration.ofDays(7);

  private final Machines machines;

  @Inject
  ShiftEffect(Machines machines) {
    this.machines = machines;
  }

  /**
   * @param person who tells it
   */
  record Data(
      @NotBlank @Size(max = 40) String press,
      @NotNull OffsetDateTime from,
      @NotNull OffsetDateTime to,
      @NotNull Boolean staffed,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "shift.changed";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public List<FieldError> check(ShopEvent event, Data data) {
    Duration length = Duration.between(data.from(), data.to());
    return length.compareTo(Duration.ZERO) > 0 && length.compareTo(LONGEST) <= 0
        ? List.of()
        : List.of(
            new FieldError("/to", "must be after from, by seven days at most, was " + data.to()));
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return machines.isPressKnown(event.plant(), data.press())
        ? Verdict.movesPlan(true)
        : machines.unknownPress(event.plant(), data.press());
  }
}
