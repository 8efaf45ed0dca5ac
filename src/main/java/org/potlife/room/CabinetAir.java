package org.potlife.room;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.Drying;

/**
 * The air in a cabinet: its expected climate by time of day, over it the readings. A reading holds
 * until the next one, or until the expected climate's next period begins (R5).
 */
public final class CabinetAir {

  private final Cabinet cabinet;
  private final ZoneId zone;
  private final double humidityLimitPercent;
  private final List<ClimateReading> readings;

  /**
   * @param humidityLimitPercent the emulsion's limit
   * @param readings of any place, in any order
   */
  public CabinetAir(
      Cabinet cabinet, ZoneId zone, double humidityLimitPercent, List<ClimateReading> readings) {
    this.cabinet = cabinet;
    this.zone = zone;
    this.humidityLimitPercent = humidityLimitPercent;
    this.readings =
        readings.stream().filter(reading -> reading.place().equals(cabinet.id())).toList();
  }

  /**
   * Air that stays as it is for a while.
   *
   * @param dries whether it is at most as humid as the emulsion's limit
   * @param deficitPa what it could still take up, Pa; 0 when it does not dry
   * @param read whether somebody read it; else it is what is expected at this time of day
   */
  public record Stretch(
      OffsetDateTime from,
      OffsetDateTime to,
      double temperatureC,
      double humidityPercent,
      boolean dries,
      double deficitPa,
      boolean read) {

    private double deficitPaH() {
      return deficitPa * Duration.between(from, to).toMillis() / 3_600_000.0;
    }
  }

  private record Change(
      OffsetDateTime at, double temperatureC, double humidityPercent, boolean read) {}

  /** The stretches between two moments, cut to them. */
  public List<Stretch> stretches(OffsetDateTime from, OffsetDateTime to) {
    List<Change> changes = changes(from, to);
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      OffsetDateTime begins = changes.get(i).at().isBefore(from) ? from : changes.get(i).at();
      OffsetDateTime ends =
          i + 1 < changes.size() && changes.get(i + 1).at().isBefore(to)
              ? changes.get(i + 1).at()
              : to;
      if (begins.isBefore(ends)) {
        stretches.add(stretch(changes.get(i), begins, ends));
      }
    }
    return stretches;
  }

  /** Deficit that adds up between two moments at airflow factor 1, Pa h. */
  public double deficitPaH(OffsetDateTime from, OffsetDateTime to) {
    return stretches(from, to).stream().mapToDouble(Stretch::deficitPaH).sum();
  }

  /** The air at a moment, over the second that begins with it. */
  public Stretch at(OffsetDateTime moment) {
    return stretches(moment, moment.plusSeconds(1)).get(0);
  }

  private Stretch stretch(Change change, OffsetDateTime from, OffsetDateTime to) {
    return new Stretch(
        from.atZoneSameInstant(zone).toOffsetDateTime(),
        to.atZoneSameInstant(zone).toOffsetDateTime(),
        change.temperatureC(),
        change.humidityPercent(),
        change.humidityPercent() <= humidityLimitPercent,
        Drying.drivePa(change.temperatureC(), change.humidityPercent(), humidityLimitPercent, 1),
        change.read());
  }

  private List<Change> changes(OffsetDateTime from, OffsetDateTime to) {
    List<Change> changes = new ArrayList<>();
    List<ClimatePeriod> periods = new ArrayList<>(cabinet.climate());
    periods.sort(Comparator.comparing(ClimatePeriod::from));
    LocalDate last = to.atZoneSameInstant(zone).toLocalDate();
    LocalDate first = from.atZoneSameInstant(zone).toLocalDate().minusDays(1);
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      for (ClimatePeriod period : periods) {
        OffsetDateTime at = day.atTime(period.from()).atZone(zone).toOffsetDateTime();
        // the change of the clocks pushes a period behind the next one: then it has no time
        while (!changes.isEmpty() && !changes.get(changes.size() - 1).at().isBefore(at)) {
          changes.remove(changes.size() - 1);
        }
        changes.add(new Change(at, period.temperatureC(), period.humidityPercent(), false));
      }
    }
    for (ClimateReading reading : readings) {
      changes.add(
          new Change(reading.at(), reading.temperatureC(), reading.humidityPercent(), true));
    }
    // of the same moment the reading counts; it was added later and the sort is stable
    changes.sort(Comparator.comparing(change -> change.at().toInstant()));
    return changes;
  }
}
