package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A press is up again. Told without its having been down, it ends what is told late. */
@ApplicationScoped
class PressUpEffect implements EventEffect<PressUpEffect.Data> {

  private final Machines machines;

  @Inject
  PressUpEffect(Machines machines) {
    this.machines = machines;
  }

  /**
   * @param person who tells it
   */
  record Data(@NotBlank @Size(max = 40) String press, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "press.up";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return machines.isPressKnown(event.plant(), data.press())
        ? Verdict.movesPlan(machines.isPressDown(event.plant(), data.press(), event.time()))
        : machines.unknownPress(event.plant(), data.press());
  }
}
