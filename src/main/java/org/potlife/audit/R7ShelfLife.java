package org.potlife.audit;

import java.util.Optional;
import org.potlife.screen.ScreenRoom;

/**
 * R7: a dry coated screen is exposed within its shelf life, and the store does not wet it again.
 */
final class R7ShelfLife implements Rule {

  @Override
  public String number() {
    return "R7";
  }

  @Override
  public String title() {
    return "Shelf life of coated screens";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    ScreenRoom room = evidence.shop().screenRoom();
    notes.check(
        room.storeHumidityPercent() <= room.emulsion().humidityLimitPercent(),
        "screen store",
        "has %.0f %% humidity, the emulsion takes up water above %.0f %%",
        room.storeHumidityPercent(),
        room.emulsion().humidityLimitPercent());
    for (ScreenFacts screen : evidence.screens()) {
      Optional<ScreenFacts.Step> dried = screen.step(Stage.DRY_COATED);
      Optional<ScreenFacts.Step> exposed = screen.step(Stage.EXPOSE);
      if (dried.isPresent() && exposed.isPresent()) {
        long kept = exposed.get().from() - dried.get().to();
        notes.check(
            kept <= room.emulsion().shelfLifeHours() * 3600L,
            screen.id(),
            "lies coated for %.1f h before it is exposed %s, it keeps %d h",
            kept / 3600.0,
            evidence.at(exposed.get().from()),
            room.emulsion().shelfLifeHours());
      }
    }
  }
}
