package org.potlife.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import org.potlife.room.ClimateReading;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;

/**
 * Drying in a cabinet over its expected climate, stated anew; a reading holds until the next one or
 * until the next period of the expected climate. The drive is the vapour pressure deficit with the
 * saturation pressure of Alduchov and Eskridge 1996 (J. Appl. Meteorol. 35(4) 601-609); above the
 * emulsion's humidity limit there is none.
 */
final class Climate {

  /** Further ahead nobody waits for a screen. */
  private static final long LONGEST_S = 200L * 86_400;

  private final Cabinet cabinet;
  private final double humidityLimitPercent;
  private final ZoneId zone;
  private final List<ClimatePeriod> periods;
  private final List<ClimateReading> readings;

  Climate(Cabinet cabinet, double humidityLimitPercent, ZoneId zone, RoomState rooms) {
    this.cabinet = cabinet;
    this.humidityLimitPercent = humidityLimitPercent;
    this.zone = zone;
    this.periods =
        cabinet.climate().stream().sorted(Comparator.comparing(ClimatePeriod::from)).toList();
    this.readings =
        rooms.climate().stream()
            .filter(reading -> reading.place().equals(cabinet.id()))
            .sorted(Comparator.comparing(reading -> reading.at().toInstant()))
            .toList();
  }

  /** Drying between two moments, vapour pressure deficit times airflow times hours, Pa h. */
  double dryingPaH(long from, long to) {
    double sum = 0;
    LocalDate last = Instant.ofEpochSecond(to).atZone(zone).toLocalDate();
    LocalDate dayBefore = Instant.ofEpochSecond(from).atZone(zone).toLocalDate().minusDays(1);
    for (LocalDate day = dayBefore; !day.isAfter(last); day = day.plusDays(1)) {
      for (int i = 0; i < periods.size(); i++) {
        long start = at(day, periods.get(i).from());
        long end =
            i + 1 < periods.size()
                ? at(day, periods.get(i + 1).from())
                : at(day.plusDays(1), periods.get(0).from());
        sum += within(periods.get(i), start, end, from, to);
      }
    }
    return sum;
  }

  /** When so much has dried since {@code from}, epoch seconds; far ahead if never. */
  long reaches(double neededPaH, long from) {
    long low = from;
    long high = from + LONGEST_S;
    while (low < high) {
      long middle = low + (high - low) / 2;
      if (dryingPaH(from, middle) >= neededPaH) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Drying between two moments within one period of the forecast and its readings. */
  private double within(ClimatePeriod period, long start, long end, long from, long to) {
    double sum = 0;
    long since = start;
    double drivePa = drivePa(period.temperatureC(), period.humidityPercent());
    for (ClimateReading reading : readings) {
      long at = reading.at().toEpochSecond();
      if (at >= start && at < end) {
        sum += drivePa * overlap(since, at, from, to) / 3600.0;
        since = at;
        drivePa = drivePa(reading.temperatureC(), reading.humidityPercent());
      }
    }
    return sum + drivePa * overlap(since, end, from, to) / 3600.0;
  }

  private static long overlap(long start, long end, long from, long to) {
    return Math.max(0, Math.min(end, to) - Math.max(start, from));
  }

  private double drivePa(double t, double humidityPercent) {
    if (humidityPercent > humidityLimitPercent) {
      return 0;
    }
    double saturationPa = 610.94 * Math.exp(17.625 * t / (243.04 + t));
    return saturationPa * (1 - humidityPercent / 100) * cabinet.airflowFactor();
  }

  private long at(LocalDate day, LocalTime time) {
    return day.atTime(time).atZone(zone).toEpochSecond();
  }
}
