package org.potlife.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VapourPressureTest {

  private static final double KELVIN = 273.15;
  private final IF97 steam = new IF97(IF97.UnitSystem.SI);

  /** IAPWS-IF97. */
  @ParameterizedTest
  @CsvSource({"20, 2339.21", "25, 3169.75", "30, 4246.69", "35, 5628.62", "40, 7384.43"})
  void agreesWithTheSteamTables(double tC, double pa) {
    assertThat(VapourPressure.saturationPa(tC)).isCloseTo(pa, withinPercentage(0.3));
    assertThat(steam.saturationPressureT(tC + KELVIN)).isCloseTo(pa, within(0.005));
  }

  /** IAPWS-IF97, table 35: proves that the reference used here is the standard. */
  @ParameterizedTest
  @CsvSource({"300, 3536.58941", "500, 2638897.76", "600, 12344314.6"})
  void theReferenceReproducesTheTableOfTheStandard(double kelvin, double pa) {
    assertThat(steam.saturationPressureT(kelvin)).isCloseTo(pa, withinPercentage(1e-6));
  }

  /** IAPWS-IF97 at every temperature that a screen room has. */
  @Property
  void agreesWithTheSteamTablesFromTenToFiftyDegrees(
      @ForAll @DoubleRange(min = 10, max = 50) double tC) {
    assertThat(VapourPressure.saturationPa(tC))
        .isCloseTo(steam.saturationPressureT(tC + KELVIN), withinPercentage(0.3));
  }

  /** Alduchov and Eskridge 1996, J. Appl. Meteorol. 35(4), 601-609. */
  @Test
  void halfHumidAirOf25DegreesLacks1581Pa() {
    assertThat(VapourPressure.deficitPa(25, 50)).isCloseTo(1580.9, within(0.05));
  }

  @Test
  void saturatedAirLacksNothing() {
    assertThat(VapourPressure.deficitPa(25, 100)).isZero();
  }

  @Property
  void theDeficitIsNeverNegativeAndGrowsWithWarmth(
      @ForAll @DoubleRange(min = -10, max = 49) double tC,
      @ForAll @DoubleRange(max = 100) double humidityPercent) {
    double deficitPa = VapourPressure.deficitPa(tC, humidityPercent);
    assertThat(deficitPa).isNotNegative();
    assertThat(VapourPressure.deficitPa(tC + 1, humidityPercent)).isGreaterThanOrEqualTo(deficitPa);
  }

  @Property
  void theTemperatureIsFoundAgainFromTheSaturationPressure(
      @ForAll @DoubleRange(min = -40, max = 60) double tC) {
    assertThat(VapourPressure.saturatedAtC(VapourPressure.saturationPa(tC)))
        .isEqualTo(tC, within(1e-9));
  }

  @Test
  void airTooHumidToDryInIsWarmedUntilItIsAtTheLimit() {
    // es(22) = 2638.5 Pa; at 75 % it holds 1978.9 Pa, which is 60 % of es(25.71) = 3298.1 Pa
    double fromC = Drying.dryingFromC(22, 75, 60);

    assertThat(fromC).isEqualTo(25.71, within(0.005));
    assertThat(VapourPressure.saturationPa(fromC) * 0.60)
        .isEqualTo(VapourPressure.saturationPa(22) * 0.75, within(1e-6));
  }

  @Test
  void impossibleAirIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> VapourPressure.saturatedAtC(0));
    assertThatIllegalArgumentException().isThrownBy(() -> VapourPressure.saturationPa(120));
    assertThatIllegalArgumentException().isThrownBy(() -> VapourPressure.saturationPa(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> VapourPressure.deficitPa(20, 101))
        .withMessageContaining("101.0 %");
  }
}
