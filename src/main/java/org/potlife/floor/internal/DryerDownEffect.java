package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.platform.problem.FieldError;

/** A dryer is down, and with it every press that feeds it. */
@ApplicationScoped
class DryerDownEffect implements EventEffect<DryerDownEffect.Data> {

  private final Machines machines;

  @Inject
  DryerDownEffect(Machines machines) {
    this.machines = machines;
  }

  /**
   * @param until when it is expected to be up; null when nobody knows
   * @param person who tells it
   */
  record Data(
      @NotBlank @Size(max = 40) String dryer,
      OffsetDateTime until,
      @Size(max = 200) String cause,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "dryer.down";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public List<FieldError> check(ShopEvent event, Data data) {
    return Machines.checkUntil(event, data.until());
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return machines.isDryerKnown(event.plant(), data.dryer())
        ? Verdict.movesPlan(true)
        : machines.unknownDryer(event.plant(), data.dryer());
  }
}
