package org.potlife.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.room.ClimateReading;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.Emulsion;
import org.potlife.simulation.Drying;

/**
 * The climate of a cabinet over the horizon and some days before it: the forecast by time of day,
 * and over it the readings. A reading holds until the next one, or until the forecast's next period
 * begins (R5).
 */
final class CabinetClimate {

  /** What dries since before then is dry. */
  private static final int DAYS_BEFORE = 8;

  private record Change(Instant at, double temperatureC, double humidityPercent) {}

  private CabinetClimate() {}

  static Drying drying(Cabinet cabinet, Emulsion emulsion, RoomState rooms, Horizon horizon) {
    List<Integer> from = new ArrayList<>();
    List<Double> drive = new ArrayList<>();
    for (Change change : changes(cabinet, rooms, horizon)) {
      int at = horizon.seconds(change.at());
      if (!from.isEmpty() && at <= from.get(from.size() - 1)) {
        from.remove(from.size() - 1);
        drive.remove(drive.size() - 1);
      }
      from.add(at);
      drive.add(
          org.potlife.screen.Drying.drivePa(
              change.temperatureC(),
              change.humidityPercent(),
              emulsion.humidityLimitPercent(),
              cabinet.airflowFactor()));
    }
    return new Drying(
        from.stream().mapToInt(Integer::intValue).toArray(),
        drive.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static List<Change> changes(Cabinet cabinet, RoomState rooms, Horizon horizon) {
    List<Change> changes = forecast(cabinet, horizon);
    Instant first = changes.get(0).at();
    for (ClimateReading reading : rooms.climate()) {
      if (reading.place().equals(cabinet.id()) && reading.at().toInstant().isAfter(first)) {
        changes.add(
            new Change(
                reading.at().toInstant(), reading.temperatureC(), reading.humidityPercent()));
      }
    }
    // of the same moment the reading counts; it was added later and the sort is stable
    changes.sort(Comparator.comparing(Change::at));
    return changes;
  }

  /** A period that the change of the clocks pushes behind the next one is left out. */
  private static List<Change> forecast(Cabinet cabinet, Horizon horizon) {
    List<ClimatePeriod> periods = new ArrayList<>(cabinet.climate());
    periods.sort(Comparator.comparing(ClimatePeriod::from));
    List<Change> changes = new ArrayList<>();
    for (int day = -DAYS_BEFORE; day <= horizon.days() + 1; day++) {
      LocalDate date = horizon.firstDay().plusDays(day);
      for (ClimatePeriod period : periods) {
        Instant at = date.atTime(period.from()).atZone(horizon.zone()).toInstant();
        while (!changes.isEmpty() && !changes.get(changes.size() - 1).at().isBefore(at)) {
          changes.remove(changes.size() - 1);
        }
        changes.add(new Change(at, period.temperatureC(), period.humidityPercent()));
      }
    }
    return changes;
  }
}
