package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import org.potlife.room.CabinetAir;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.Emulsion;
import org.potlife.simulation.Drying;

/** The drive of the drying in a cabinet over the horizon and some days before it (R5). */
final class CabinetClimate {

  /** What dries since before then is dry. */
  private static final int DAYS_BEFORE = 8;

  private CabinetClimate() {}

  static Drying drying(Cabinet cabinet, Emulsion emulsion, RoomState rooms, Horizon horizon) {
    CabinetAir air =
        new CabinetAir(cabinet, horizon.zone(), emulsion.humidityLimitPercent(), rooms.climate());
    List<Integer> from = new ArrayList<>();
    List<Double> drive = new ArrayList<>();
    for (CabinetAir.Stretch stretch :
        air.stretches(
            horizon.time(-86_400 * DAYS_BEFORE), horizon.time(horizon.end()).plusDays(2))) {
      int at = horizon.seconds(stretch.from());
      if (!from.isEmpty() && at <= from.get(from.size() - 1)) {
        from.remove(from.size() - 1);
        drive.remove(drive.size() - 1);
      }
      from.add(at);
      drive.add(stretch.deficitPa() * cabinet.airflowFactor());
    }
    return new Drying(
        from.stream().mapToInt(Integer::intValue).toArray(),
        drive.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
