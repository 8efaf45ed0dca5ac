package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** The tension of a mesh was measured. It is noted. */
@ApplicationScoped
class TensionEffect implements EventEffect<TensionEffect.Data> {

  private final ScreenShelf shelf;

  @Inject
  TensionEffect(ScreenShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * @param frame name or number of the frame; needed without a screen
   * @param screen the screen that it carries
   * @param newtonPerCm N/cm, 1 to 100
   * @param person who measured
   */
  record Data(
      @Size(min = 1, max = 40) String frame,
      @Size(min = 1, max = 80) String screen,
      @NotNull @DecimalMin("1") @DecimalMax("100") Double newtonPerCm,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "screen.tension";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    if (data.frame() == null && data.screen() == null) {
      return Verdict.parked("A tension is of a frame or of a screen: name one of them.");
    }
    return data.screen() == null || shelf.isKnown(event.plant(), data.screen())
        ? Verdict.noted()
        : Verdict.parked(ScreenShelf.unknown(data.screen()));
  }
}
