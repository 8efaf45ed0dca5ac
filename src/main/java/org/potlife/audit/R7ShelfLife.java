package org.potlife.audit;

import java.util.Objects;
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
        notes.check(
            dried.get().to() >= evidence.plannedAt()
                || setExposed(evidence, screen) < evidence.plannedAt()
                || !evidence.reports().storeWets(dried.get().to(), exposed.get().from()),
            screen.id(),
            "lay in a store over the emulsion's limit since %s and is exposed %s without drying again",
            evidence.at(dried.get().to()),
            evidence.at(exposed.get().from()));
      }
    }
  }

  /** When the first screen of its set is exposed: then they are out of the store. */
  private static long setExposed(Evidence evidence, ScreenFacts screen) {
    return evidence.screens().stream()
        .filter(other -> Objects.equals(other.line().runs(), screen.line().runs()))
        .flatMap(other -> other.step(Stage.EXPOSE).stream())
        .mapToLong(ScreenFacts.Step::from)
        .min()
        .orElse(Long.MAX_VALUE);
  }
}
