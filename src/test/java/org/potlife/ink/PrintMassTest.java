package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PrintMassTest {

  @Test
  void aSquareMetreUnderTenMicrometresWeighsTenTimesItsDensity() {
    assertThat(PrintMass.gramsPerPiece(1000, 1000, 100, 10, 1.05, 1, 1))
        .isCloseTo(10.5, within(1e-12));
  }

  @Test
  void coveragePassesAndTransferScaleTheMass() {
    double plain = PrintMass.gramsPerPiece(300, 380, 100, 38.76, 1.05, 1, 1);
    assertThat(PrintMass.gramsPerPiece(300, 380, 25, 38.76, 1.05, 2, 0.8))
        .isCloseTo(plain * 0.25 * 2 * 0.8, within(1e-12));
  }

  @Test
  void aRunDrawsItsLossAndIsRoundedUp() {
    assertThat(PrintMass.runMassG(247, 1.5, 10)).isEqualTo(408); // 407.55
    assertThat(PrintMass.runMassG(0, 1.5, 10)).isZero();
  }

  @Test
  void noiseOfTheFloatingPointCostsNoGram() {
    assertThat(100 * 1.0 * (1 + 10 / 100.0)).isGreaterThan(110);
    assertThat(PrintMass.runMassG(100, 1.0, 10)).isEqualTo(110);
  }

  @Test
  void valuesOutOfRangeAreRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PrintMass.gramsPerPiece(300, 300, 120, 40, 1, 1, 1))
        .withMessageContaining("coveragePercent is 120.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PrintMass.gramsPerPiece(300, 300, 20, 40, 1, 0, 1))
        .withMessageContaining("passes");
    assertThatIllegalArgumentException().isThrownBy(() -> PrintMass.runMassG(-1, 1, 10));
  }

  @Property
  void aRunDrawsAtMostOneGramMoreThanItPrints(
      @ForAll @IntRange(max = 20_000) int pieces,
      @ForAll @DoubleRange(min = 0.01, max = 60) double gramsPerPiece,
      @ForAll @DoubleRange(max = 30) double lossPercent) {
    double exactG = pieces * gramsPerPiece * (1 + lossPercent / 100);
    assertThat((double) PrintMass.runMassG(pieces, gramsPerPiece, lossPercent))
        .isGreaterThanOrEqualTo(exactG - 1e-5)
        .isLessThan(exactG + 1 + 1e-5);
  }
}
