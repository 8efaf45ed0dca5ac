package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.room.KnownScreens;
import org.potlife.shop.Shops;

/** A screen broke and must be made anew. */
@ApplicationScoped
class BrokenEffect implements EventEffect<BrokenEffect.Data> {

  private final Shops shops;
  private final KnownScreens screens;

  @Inject
  BrokenEffect(Shops shops, KnownScreens screens) {
    this.shops = shops;
    this.screens = screens;
  }

  /**
   * @param person who found it
   */
  record Data(
      @NotBlank @Size(max = 80) String screen, Boolean frameLost, @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "screen.broken";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    boolean kept =
        shops.getShop(event.plant()).shop().screenRoom().kept().stream()
            .anyMatch(stencil -> stencil.screen().equals(data.screen()));
    return kept || screens.isPlanned(event.plant(), data.screen())
        ? Verdict.movesPlan(true)
        : Verdict.parked(
            "Neither the plan in force nor the kept stencils have a screen " + data.screen() + ".");
  }
}
