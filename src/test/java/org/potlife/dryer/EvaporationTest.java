package org.potlife.dryer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvaporationTest {

  private static final double PIECES_PER_HOUR = 400;

  /** IAPWS-IF97. */
  @ParameterizedTest
  @CsvSource({"25, 2441.71", "40, 2406.00", "100, 2256.47"})
  void theReferenceGivesTheLatentHeatOfTheSteamTables(double tC, double kJPerKg) {
    assertThat(latentKJPerKg(tC)).isCloseTo(kJPerKg, within(0.01));
  }

  /** IAPWS-IF97. */
  @Test
  void waterIsEvaporatedWithTheLatentHeatAtBoilingPoint() {
    assertThat(Evaporation.LATENT_KJ_PER_KG).isCloseTo(latentKJPerKg(100), within(0.01));
  }

  /** IAPWS-IF97: mean from 20 to 100 degrees Celsius along the saturation line. */
  @Test
  void waterIsWarmedWithTheSpecificHeatOfTheSteamTables() {
    IF97 steam = new IF97(IF97.UnitSystem.DEFAULT);
    double kJ =
        steam.specificEnthalpySaturatedLiquidT(373.15)
            - steam.specificEnthalpySaturatedLiquidT(293.15);
    assertThat(Evaporation.WATER_KJ_PER_KG_K).isCloseTo(kJ / 80, within(0.01));
  }

  /** 400/h x 12 g x 65 % water, 20 to 100 C, efficiency 0.4, with the latent heat of IAPWS-IF97. */
  @Test
  void fourHundredPrintsAnHourAre3Point12KilogramsOfWaterAnd5Point6Kilowatts() {
    double depositWaterG = 12 * 0.65;
    double kJ = Evaporation.kJPerPiece(depositWaterG, 150, 0, 20);
    assertThat(PIECES_PER_HOUR * Evaporation.waterG(depositWaterG, 150, 0) / 1000)
        .isCloseTo(3.12, within(1e-9));
    assertThat(Evaporation.loadKw(PIECES_PER_HOUR, kJ, 1)).isCloseTo(2.25, within(0.005));
    assertThat(Evaporation.loadKw(PIECES_PER_HOUR, kJ, 0.4)).isCloseTo(5.6, within(0.05));
  }

  /** Cotton regain about 7 % (ASTM D1909, from memory): 400 x 150 g adds about 4.2 kg/h. */
  @Test
  void theClothBringsMoreWaterThanThePrint() {
    double depositWaterG = 12 * 0.65;
    double both = Evaporation.waterG(depositWaterG, 150, 7);
    assertThat(PIECES_PER_HOUR * (both - depositWaterG) / 1000).isCloseTo(4.2, within(1e-9));
    assertThat(both - depositWaterG).isGreaterThan(depositWaterG);
  }

  /**
   * 80 % to 5 % moisture, 1000 kg product, 3750 kg evaporated (Treybal, Mass-Transfer Operations,
   * ill. 12.1). Moisture there is a share of the wet mass, regain one of the dry mass: 950 kg of
   * it.
   */
  @Test
  void theWaterBalanceOfTheTextbookComesOut() {
    double dryG = 950_000;
    double before = Evaporation.waterG(0, dryG, 100 * 0.80 / 0.20);
    double after = Evaporation.waterG(0, dryG, 100 * 0.05 / 0.95);
    assertThat((before - after) / 1000).isCloseTo(3750, within(1e-6));
  }

  @Test
  void valuesOutOfRangeAreRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Evaporation.loadKw(400, 20, 0))
        .withMessageContaining("efficiency is 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Evaporation.kJPerPiece(-1, 150, 7, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> Evaporation.kJPerPiece(5, 150, 7, 120));
  }

  @Property
  void heatIsNeverNegativeAndFallsWithAWarmerRoom(
      @ForAll @DoubleRange(max = 60) double waterG,
      @ForAll @DoubleRange(max = 1000) double clothG,
      @ForAll @DoubleRange(min = -10, max = 50) double roomC) {
    double kJ = Evaporation.kJPerPiece(waterG, clothG, 7, roomC);
    assertThat(kJ).isNotNegative();
    assertThat(Evaporation.kJPerPiece(waterG, clothG, 7, roomC + 1)).isLessThanOrEqualTo(kJ);
  }

  private static double latentKJPerKg(double tC) {
    IF97 steam = new IF97(IF97.UnitSystem.DEFAULT);
    return steam.specificEnthalpySaturatedVapourT(tC + 273.15)
        - steam.specificEnthalpySaturatedLiquidT(tC + 273.15);
  }
}
