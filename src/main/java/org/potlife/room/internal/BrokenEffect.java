package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** A screen broke and must be made anew. */
@ApplicationScoped
class BrokenEffect implements EventEffect<BrokenEffect.Data> {

  private final ScreenShelf shelf;

  @Inject
  BrokenEffect(ScreenShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * @param person who found it
   */
  record Data(@NotBlank @Size(max = 80) String screen, @Size(max = 60) String person) {}

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
    return shelf.isKnown(event.plant(), data.screen())
        ? Verdict.movesPlan(true)
        : Verdict.parked(ScreenShelf.unknown(data.screen()));
  }
}
