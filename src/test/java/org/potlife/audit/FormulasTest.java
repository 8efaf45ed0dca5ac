package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.order.Colour;
import org.potlife.room.RoomState;
import org.potlife.screen.Cabinet;
import org.potlife.screen.ClimatePeriod;

/** The audit's own formulas against published values. */
class FormulasTest {

  private static final long MIDNIGHT = SmallShop.at("2026-12-01T00:00:00").toEpochSecond();

  private static Climate climate(ClimatePeriod... periods) {
    return new Climate(
        new Cabinet("C", 1, 1.0, 1.0, 0, List.of(periods)),
        60,
        SmallShop.BERLIN,
        RoomState.NOTHING);
  }

  private static ClimatePeriod period(String from, double t, double humidity) {
    return new ClimatePeriod(LocalTime.parse(from), t, humidity);
  }

  @Test
  void wetDepositByMeshIsAsPublished() {
    // "How Much Ink Do You Need?", screenweb.com, April 2000, table 1
    assertThat(Deposit.wetUm(new Colour("x", 1.0, 39.0, 55.0, null, null)))
        .isCloseTo(61.76, within(0.01));
    assertThat(Deposit.wetUm(new Colour("x", 1.0, 90.0, 48.0, 50.0, null)))
        .isCloseTo(14.25, within(0.005));
  }

  @Test
  void vapourPressureDeficitIsWithinThreeInAThousandOfTheSteamTables() {
    // IAPWS-IF97: es(25 C) = 3169.75 Pa, so 1584.9 Pa at 50 %
    double paH = climate(period("00:00", 25, 50)).dryingPaH(MIDNIGHT, MIDNIGHT + 3600);
    assertThat(paH).isCloseTo(3169.75 / 2, within(3169.75 / 2 * 0.003));
    assertThat(paH).isCloseTo(1580.9, within(0.1));
  }

  @Test
  void theLastPeriodHoldsOverMidnightUntilTheFirst() {
    Climate night = climate(period("06:00", 25, 100), period("20:00", 25, 50));
    assertThat(night.dryingPaH(MIDNIGHT, MIDNIGHT + 3600)).isCloseTo(1580.9, within(0.1));
    assertThat(night.dryingPaH(MIDNIGHT + 7 * 3600, MIDNIGHT + 8 * 3600)).isZero();
  }

  @Test
  void nothingDriesAboveTheHumidityLimit() {
    Climate damp = climate(period("00:00", 25, 60), period("01:00", 25, 60.1));
    assertThat(damp.dryingPaH(MIDNIGHT, MIDNIGHT + 7200)).isCloseTo(0.8 * 1580.9, within(0.1));
  }
}
