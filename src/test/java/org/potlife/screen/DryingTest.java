package org.potlife.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DryingTest {

  /** "How to Dry a Screen", screenweb.com, May 2002. */
  @Test
  void calibratedOnTheSlowPublishedDryingItPredictsTheFastOne() {
    double requiredPaH = 1.0 * Drying.drivePa(21.1, 50, 60, 1);
    double minutes = 60 * Drying.hours(requiredPaH, 37.8, 20, 60, 1);
    assertThat(minutes).isBetween(12.0, 20.0);
  }

  /** The same published drying: it is what the emulsion's default stands for. */
  @Test
  void theDefaultEmulsionDriesInAnHourAt21DegreesAndHalfHumidAir() {
    Emulsion emulsion = new Emulsion(null, null, null, null, null);
    double hours = Drying.hours(emulsion.dryingPaH(), 21.1, 50, emulsion.humidityLimitPercent(), 1);
    assertThat(hours).isCloseTo(1, within(0.01));
  }

  @Test
  void nothingDriesAboveTheLimitOfTheEmulsion() {
    assertThat(Drying.drivePa(25, 60.1, 60, 2)).isZero();
    assertThat(Drying.hours(1250, 25, 60.1, 60, 2)).isInfinite();
    assertThat(Drying.drivePa(25, 60, 60, 1)).isPositive();
  }

  @Test
  void twiceTheAirflowHalvesTheTime() {
    assertThat(Drying.hours(1250, 25, 40, 60, 2))
        .isCloseTo(Drying.hours(1250, 25, 40, 60, 1) / 2, within(1e-12));
  }

  @Test
  void whatIsDryNeedsNoTimeInAnyAir() {
    assertThat(Drying.hours(0, 25, 90, 60, 1)).isZero();
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Drying.drivePa(25, 40, 60, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Drying.hours(-1, 25, 40, 60, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Drying.drivePa(25, 140, 60, 1));
  }

  @Property
  void driveTimesTimeIsWhatTheCoatNeeds(
      @ForAll @DoubleRange(min = -10, max = 50) double tC,
      @ForAll @DoubleRange(max = 60) double humidityPercent,
      @ForAll @DoubleRange(min = 0.05, max = 20) double airflowFactor) {
    double hours = Drying.hours(1250, tC, humidityPercent, 60, airflowFactor);
    assertThat(hours * Drying.drivePa(tC, humidityPercent, 60, airflowFactor))
        .isCloseTo(1250, within(1e-6));
  }
}
