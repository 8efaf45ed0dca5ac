package org.potlife.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.screen.Calibration.Look;
import org.potlife.screen.Calibration.Observation;

/** A coat needs 1250 Pa h. The set-up says that the cabinet dries as still air does: 1. */
class CalibrationTest {

  private static final double NEEDED = 1250;

  private static Look dry(double deficitPaH) {
    return new Look(NEEDED, deficitPaH, true);
  }

  private static Look wet(double deficitPaH) {
    return new Look(NEEDED, deficitPaH, false);
  }

  private static Calibration after(Look... loads) {
    return Calibration.of(
        1, List.of(loads).stream().map(look -> Calibration.observe(List.of(look))).toList());
  }

  @Test
  void threeLoadsThatWereDryEarlyMoveTheFactorByThreeTenthsOfTheWayEach() {
    // 1250 / 625 = 2 at least: 1 + 0.3 (2 - 1) = 1.3; 1.3 + 0.3 (0.7) = 1.51; 1.51 + 0.147 = 1.657
    Calibration learned = after(dry(625), dry(625), dry(625));

    assertThat(learned.smoothedFactor()).isEqualTo(1.657, within(1e-12));
    assertThat(learned.observations()).isEqualTo(3);
    assertThat(learned.factorInUse()).isEqualTo(1.657, within(1e-12));
  }

  @Test
  void aLoadThatIsStillWetLowersIt() {
    // 1250 / 2500 = 0.5 at most: 1 + 0.3 (0.5 - 1) = 0.85
    assertThat(after(wet(2500)).smoothedFactor()).isEqualTo(0.85, within(1e-12));
  }

  @Test
  void whatFitsTheFactorCountsAndDoesNotMoveIt() {
    Calibration learned = after(dry(2000), wet(800), dry(1250));

    assertThat(learned.smoothedFactor()).isEqualTo(1);
    assertThat(learned.observations()).isEqualTo(3);
  }

  @Test
  void twoLoadsAreShownAndNotYetUsed() {
    Calibration learned = after(dry(625), dry(625));

    assertThat(learned.smoothedFactor()).isEqualTo(1.51, within(1e-12));
    assertThat(learned.factorInUse()).isEqualTo(1);
  }

  @Test
  void looksAtOneLoadAreOneObservation() {
    assertThat(Calibration.observe(List.of(wet(500), wet(800), dry(1000), dry(1100))))
        .isEqualTo(new Observation(1.25, 1.5625));
  }

  @Test
  void ofLooksThatContradictEachOtherTheLaterCounts() {
    assertThat(Calibration.observe(List.of(dry(1000), wet(1250)))).isEqualTo(new Observation(0, 1));
    assertThat(Calibration.observe(List.of(wet(1250), dry(1250))))
        .isEqualTo(new Observation(1, Double.POSITIVE_INFINITY));
  }

  @Test
  void airThatDidNotDryTellsNothing() {
    assertThat(Calibration.observe(List.of(wet(0), dry(0)))).isNull();
  }

  @Test
  void theFactorInUseStaysWithinWhatASetUpTakes() {
    assertThat(after(dry(1), dry(1), dry(1)).factorInUse()).isEqualTo(20);
  }

  @Test
  void aFactorOfNothingIsRefused() {
    assertThatThrownBy(() -> Calibration.of(0, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("greater than 0");
  }
}
