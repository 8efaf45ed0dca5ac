package org.potlife.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.room.CabinetAir.Stretch;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;
import org.potlife.screen.VapourPressure;

/** Expected: 20 degrees and 50 % from six, 25 degrees and 40 % from eighteen. */
class CabinetAirTest {

  private static final Cabinet CABINET =
      new Cabinet(
          "C1",
          8,
          2.5,
          1.2,
          20,
          List.of(
              new ClimatePeriod(LocalTime.of(6, 0), 20.0, 50.0),
              new ClimatePeriod(LocalTime.of(18, 0), 25.0, 40.0)));

  private static OffsetDateTime at(String time) {
    return OffsetDateTime.parse("2026-12-01T" + time + ":00+01:00");
  }

  private static CabinetAir air(ClimateReading... readings) {
    return new CabinetAir(CABINET, ZoneId.of("Europe/Berlin"), 60, List.of(readings));
  }

  @Test
  void withoutAReadingTheExpectedClimateHoldsOverMidnight() {
    assertThat(air().stretches(at("05:00"), at("19:00")))
        .extracting(s -> s.from().toLocalTime() + " " + s.temperatureC() + " " + s.read())
        .containsExactly("05:00 25.0 false", "06:00 20.0 false", "18:00 25.0 false");
  }

  @Test
  void theDeficitAddsUpWithoutTheAirflowFactor() {
    double expected = VapourPressure.deficitPa(25, 40) * 1 + VapourPressure.deficitPa(20, 50) * 0.5;

    assertThat(air().deficitPaH(at("05:00"), at("06:30"))).isEqualTo(expected, within(1e-9));
  }

  @Test
  void aReadingHoldsUntilTheNextOrUntilTheNextExpectedPeriod() {
    CabinetAir air =
        air(
            new ClimateReading("C1", at("10:00"), 22, 70),
            new ClimateReading("C1", at("12:00"), 22, 55),
            new ClimateReading("C2", at("13:00"), 30, 90));

    assertThat(air.stretches(at("09:00"), at("19:00")))
        .extracting(s -> s.from().toLocalTime() + " " + s.humidityPercent() + " " + s.dries())
        .containsExactly(
            "09:00 50.0 true", "10:00 70.0 false", "12:00 55.0 true", "18:00 40.0 true");
  }

  @Test
  void overTheEmulsionsLimitNothingDriesAndAtTheLimitItStillDoes() {
    assertThat(air(new ClimateReading("C1", at("10:00"), 22, 60.1)).at(at("11:00")).deficitPa())
        .isZero();
    Stretch atTheLimit = air(new ClimateReading("C1", at("10:00"), 22, 60)).at(at("11:00"));
    assertThat(atTheLimit.dries()).isTrue();
    assertThat(atTheLimit.deficitPa()).isEqualTo(VapourPressure.deficitPa(22, 60));
  }
}
