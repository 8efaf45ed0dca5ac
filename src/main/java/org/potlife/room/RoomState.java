package org.potlife.room;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.screen.ScreenRoom;
import org.potlife.shop.Shop;

/**
 * What the rooms have reported up to a moment, as far as a plan made at that moment needs it.
 *
 * @param climate readings by time; per place the last one before the period, then those within it
 * @param emulsion looks at drying screens, by time
 * @param broken screens that broke, by time
 */
public record RoomState(
    List<ClimateReading> climate, List<EmulsionReading> emulsion, List<BrokenScreen> broken) {

  /** Nothing was reported. */
  public static final RoomState NOTHING = new RoomState(List.of(), List.of(), List.of());

  public RoomState {
    climate = climate == null ? List.of() : List.copyOf(climate);
    emulsion = emulsion == null ? List.of() : List.copyOf(emulsion);
    broken = broken == null ? List.of() : List.copyOf(broken);
  }

  /** The set-up as it stands now: without the kept stencils that broke. */
  public Shop standing(Shop shop) {
    Set<String> ids = broken.stream().map(BrokenScreen::screen).collect(Collectors.toSet());
    ScreenRoom room = shop.screenRoom();
    return room.kept().stream().noneMatch(stencil -> ids.contains(stencil.screen()))
        ? shop
        : shop.withKept(
            room.kept().stream().filter(stencil -> !ids.contains(stencil.screen())).toList());
  }
}
