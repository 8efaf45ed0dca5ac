package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.room.KnownScreens;

/** Somebody looked whether a screen in a cabinet is dry. */
@ApplicationScoped
class EmulsionEffect implements EventEffect<EmulsionEffect.Data> {

  private final KnownScreens screens;
  private final CabinetLooks looks;

  @Inject
  EmulsionEffect(KnownScreens screens, CabinetLooks looks) {
    this.screens = screens;
    this.looks = looks;
  }

  /**
   * @param person who looked
   */
  record Data(
      @NotBlank @Size(max = 80) String screen,
      @NotNull Boolean dry,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "emulsion.reading";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    if (!screens.isPlanned(event.plant(), data.screen())) {
      return Verdict.parked("The plan in force has no screen " + data.screen() + ".");
    }
    looks.keep(event, data.screen(), data.dry());
    return Verdict.movesPlan(true);
  }
}
