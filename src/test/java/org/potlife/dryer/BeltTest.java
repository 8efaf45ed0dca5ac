package org.potlife.dryer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BeltTest {

  /** Belt speed = heated length / dwell; pieces/h = lanes x 60 x speed / pitch (geometry). */
  @Test
  void threeMetresAndNinetySecondsGiveTwoMetresAMinuteAnd320PiecesAnHour() {
    double speed = Belt.speedMPerMin(3000, 90);
    assertThat(speed).isCloseTo(2.0, within(1e-12));
    assertThat(Belt.piecesPerHour(2, speed, 750)).isCloseTo(320, within(1e-9));
  }

  /**
   * Guards against a known bad source, a copied article that computes 60/h where 360/h is right:
   * six shirts in the oven at a time, one minute each.
   */
  @Test
  void sixShirtsAtATimeForAMinuteAre360AnHourAndNot60() {
    int sixFeetMm = 1830;
    double speed = Belt.speedMPerMin(sixFeetMm, 60);
    assertThat(Belt.piecesPerHour(2, speed, sixFeetMm / 3)).isCloseTo(360, within(1e-9));
  }

  @Test
  void lanesNeedAGapBetweenGarmentsButNoneAtTheEdges() {
    assertThat(Belt.lanes(1200, 560, 30)).isEqualTo(2);
    assertThat(Belt.lanes(1150, 560, 30)).isEqualTo(2);
    assertThat(Belt.lanes(1149, 560, 30)).isEqualTo(1);
    assertThat(Belt.lanes(500, 560, 30)).isZero();
  }

  @Test
  void valuesOutOfRangeAreRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Belt.speedMPerMin(3000, 0))
        .withMessageContaining("dwellS is 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Belt.lanes(1200, 560, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> Belt.areaMPerMin(300, 750, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Belt.areaMPerMin(-1, 750, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> Belt.piecesPerHour(2, 2, 0));
  }

  @Property
  void aFullBeltUsesUpExactlyItsSpeed(
      @ForAll @IntRange(min = 1, max = 6) int lanes,
      @ForAll @DoubleRange(min = 0.2, max = 10) double speedMPerMin,
      @ForAll @IntRange(min = 100, max = 1500) int pitchMm) {
    double full = Belt.piecesPerHour(lanes, speedMPerMin, pitchMm);
    assertThat(Belt.areaMPerMin(full, pitchMm, lanes)).isCloseTo(speedMPerMin, within(1e-9));
  }

  @Property
  void theLanesFitAndOneMoreDoesNot(
      @ForAll @IntRange(min = 200, max = 5000) int beltMm,
      @ForAll @IntRange(min = 50, max = 3000) int garmentMm,
      @ForAll @IntRange(max = 500) int gapMm) {
    int lanes = Belt.lanes(beltMm, garmentMm, gapMm);
    assertThat(widthOf(lanes, garmentMm, gapMm)).isLessThanOrEqualTo(beltMm);
    assertThat(widthOf(lanes + 1, garmentMm, gapMm)).isGreaterThan(beltMm);
  }

  private static int widthOf(int lanes, int garmentMm, int gapMm) {
    return lanes == 0 ? 0 : lanes * garmentMm + (lanes - 1) * gapMm;
  }
}
