package org.potlife.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;

/**
 * Drying in a cabinet over its expected climate, stated anew. The drive is the vapour pressure
 * deficit with the saturation pressure of Alduchov and Eskridge 1996 (J. Appl. Meteorol. 35(4)
 * 601-609); above the emulsion's humidity limit there is none.
 */
final class Climate {

  private final Cabinet cabinet;
  private final double humidityLimitPercent;
  private final ZoneId zone;
  private final List<ClimatePeriod> periods;

  Climate(Cabinet cabinet, double humidityLimitPercent, ZoneId zone) {
    this.cabinet = cabinet;
    this.humidityLimitPercent = humidityLimitPercent;
    this.zone = zone;
    this.periods =
        cabinet.climate().stream().sorted(Comparator.comparing(ClimatePeriod::from)).toList();
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
        long seconds = Math.min(end, to) - Math.max(start, from);
        if (seconds > 0) {
          sum += drivePa(periods.get(i)) * seconds / 3600.0;
        }
      }
    }
    return sum;
  }

  private double drivePa(ClimatePeriod period) {
    if (period.humidityPercent() > humidityLimitPercent) {
      return 0;
    }
    double t = period.temperatureC();
    double saturationPa = 610.94 * Math.exp(17.625 * t / (243.04 + t));
    return saturationPa * (1 - period.humidityPercent() / 100) * cabinet.airflowFactor();
  }

  private long at(LocalDate day, LocalTime time) {
    return day.atTime(time).atZone(zone).toEpochSecond();
  }
}
