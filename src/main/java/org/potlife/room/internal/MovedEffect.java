package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.room.ScreenLife;

/** A screen has come to another state of its life. It is noted; plans go by looks and breakages. */
@ApplicationScoped
class MovedEffect implements EventEffect<MovedEffect.Data> {

  private final ScreenShelf shelf;

  @Inject
  MovedEffect(ScreenShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * @param frame name or number of the frame that carries it
   * @param person who moved it
   */
  record Data(
      @NotBlank @Size(max = 80) String screen,
      @NotNull ScreenLife state,
      @Size(max = 40) String frame,
      @Size(max = 60) String person) {}

  @Override
  public String type() {
    return "screen.moved";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    if (data.state() == ScreenLife.BROKEN) {
      return Verdict.parked("A broken screen must be made anew: tell it as screen.broken.");
    }
    return shelf.isKnown(event.plant(), data.screen())
        ? Verdict.noted()
        : Verdict.parked(ScreenShelf.unknown(data.screen()));
  }
}
