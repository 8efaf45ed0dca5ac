package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A dryer is up again. Told without its having been down, it ends what is told late. */
@ApplicationScoped
class DryerUpEffect implements EventEffect<DryerUpEffect.Data> {

  private final Machines machines;

  @Inject
  DryerUpEffect(Machines machines) {
    this.machines = machines;
  }

  /**
   * @param person who tells it
   */
  record Data(@NotBlank @Size(max = 40) String dryer, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "dryer.up";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return machines.isDryerKnown(event.plant(), data.dryer())
        ? Verdict.movesPlan(machines.isDryerDown(event.plant(), data.dryer(), event.time()))
        : machines.unknownDryer(event.plant(), data.dryer());
  }
}
