package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MeshTest {

  /** "How Much Ink Do You Need?", screenweb.com, April 2000, table 1 and figure 1. */
  @Test
  void aCoarseMeshLaysDownWhatThePublishedExampleSays() {
    assertThat(new Mesh(39, 55, null).wetDepositUm()).isCloseTo(61.76, within(0.01));
  }

  /** "How Much Ink Do You Need?", screenweb.com, April 2000, table 1 and figure 1. */
  @Test
  void aMediumMeshLaysDownWhatThePublishedExampleSays() {
    assertThat(new Mesh(120, 34, 50.0).wetDepositUm()).isCloseTo(14.25, within(1e-9));
  }

  /** "How Much Ink Do You Need?", screenweb.com, April 2000, table 1. */
  @Test
  void aFineMeshLaysDownThirtyFivePercentOfItsThickness() {
    assertThat(new Mesh(140, 31, 48.0).wetDepositUm()).isCloseTo(0.35 * 48, within(1e-9));
    assertThat(new Mesh(139, 31, 48.0).wetDepositUm()).isCloseTo(0.285 * 48, within(1e-9));
  }

  /** Definitions of ISO 9044 (from memory). */
  @Test
  void openingAndVolumeFollowFromThreadsAndThickness() {
    Mesh mesh = new Mesh(50, 60, 100.0);
    assertThat(mesh.openingUm()).isCloseTo(140, within(1e-9));
    assertThat(mesh.openAreaShare()).isCloseTo(0.49, within(1e-9));
    assertThat(mesh.theoreticalVolumeCm3PerM2()).isCloseTo(49, within(1e-9));
  }

  /**
   * "Mesh Matters", screenweb.com, June 2009: 305 threads per inch of 40 um, open area 25 %,
   * thickness 63 um, always less than two threads. Fabric tables differ by about 2 points of open
   * area.
   */
  @Test
  void theAssumedThicknessIsLessThanTwoThreadsAndNearAMeasuredOne() {
    Mesh mesh = new Mesh(305 / 2.54, 40, null);
    assertThat(mesh.openAreaShare()).isCloseTo(0.25, within(0.03));
    assertThat(mesh.fabricThicknessUm()).isCloseTo(63, within(0.1 * 63)).isLessThan(80);
  }

  @Test
  void aMeasuredThicknessOverridesTheAssumedOne() {
    assertThat(new Mesh(77, 48, null).fabricThicknessUm()).isCloseTo(81.6, within(1e-9));
    assertThat(new Mesh(77, 48, 78.0).fabricThicknessUm()).isEqualTo(78);
  }

  @Test
  void aCountBetweenTwoRowsOfTheTableLaysDownSomethingBetween() {
    double below = new Mesh(42, 80, null).wetDepositUm();
    double above = new Mesh(43, 80, null).wetDepositUm();
    assertThat(new Mesh(42.5, 80, null).wetDepositUm()).isBetween(above, below);
    assertThat(new Mesh(42.001, 80, null).wetDepositUm()).isCloseTo(below, within(0.1));
    assertThat(new Mesh(42.999, 80, null).wetDepositUm()).isCloseTo(above, within(0.1));
    assertThat(new Mesh(139.5, 31, 48.0).wetDepositUm()).isCloseTo(0.3175 * 48, within(1e-9));
  }

  @Test
  void threadsThatLeaveNoOpeningAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Mesh(100, 100, null))
        .withMessageContaining("no opening")
        .withMessageContaining("100.0 um");
  }

  @Test
  void threadsAndThicknessMustBeGreaterThanZero() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Mesh(0, 50, null));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mesh(Double.NaN, 50, null));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mesh(43, -1, null));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mesh(43, 80, 0.0));
  }

  @Property
  void theFilmIsThinnerThanTwoThreads(
      @ForAll @DoubleRange(min = 5, max = 200) double threadsPerCm,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double threadShare) {
    double threadUm = threadShare * 10_000 / threadsPerCm;
    Mesh mesh = new Mesh(threadsPerCm, threadUm, null);
    assertThat(mesh.wetDepositUm()).isPositive().isLessThan(2 * threadUm);
    assertThat(mesh.openAreaShare()).isStrictlyBetween(0.0, 1.0);
  }
}
