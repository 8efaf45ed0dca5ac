package org.potlife.room;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ScreenRoom;
import org.potlife.shop.Shop;

/**
 * What the rooms have reported up to a moment, as far as a plan made at that moment needs it.
 *
 * @param climate readings by time; per place the last one before the period, then those within it
 * @param emulsion looks at drying screens, by time
 * @param broken screens that broke, by time
 * @param airflow what looks have made of the airflow factors of cabinets
 */
public record RoomState(
    List<ClimateReading> climate,
    List<EmulsionReading> emulsion,
    List<BrokenScreen> broken,
    List<CabinetAirflow> airflow) {

  /** Nothing was reported. */
  public static final RoomState NOTHING = new RoomState(null, null, null, null);

  public RoomState {
    climate = climate == null ? List.of() : List.copyOf(climate);
    emulsion = emulsion == null ? List.of() : List.copyOf(emulsion);
    broken = broken == null ? List.of() : List.copyOf(broken);
    airflow = airflow == null ? List.of() : List.copyOf(airflow);
  }

  /** Reports that have taught nothing of the airflow. */
  public RoomState(
      List<ClimateReading> climate, List<EmulsionReading> emulsion, List<BrokenScreen> broken) {
    this(climate, emulsion, broken, List.of());
  }

  /**
   * The set-up as it stands now: without the kept stencils that broke, and with the airflow factors
   * that the cabinets have shown.
   */
  public Shop standing(Shop shop) {
    Set<String> ids = broken.stream().map(BrokenScreen::screen).collect(Collectors.toSet());
    ScreenRoom room = shop.screenRoom();
    return shop.withScreenRoom(
        room.withKept(
                room.kept().stream().filter(stencil -> !ids.contains(stencil.screen())).toList())
            .withCabinets(room.cabinets().stream().map(this::standing).toList()));
  }

  private Cabinet standing(Cabinet cabinet) {
    return airflow.stream()
        .filter(learned -> learned.cabinet().equals(cabinet.id()))
        .findFirst()
        .map(learned -> cabinet.withAirflow(learned.factor()))
        .orElse(cabinet);
  }
}
