package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.shop;

import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** When the presses work. */
class PressDayTest {

  private static SmallOrder plain(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  @Test
  void aPressWithoutMinutesForAFirstPiecePrintsNoTrialPieces() {
    Planned plan =
        plan(shop().press("P1", p -> p.firstPieceMinutes(0).trialPieces(3)), plain("A-1"));
    assertThat(plan.run("A-1").trialPieces()).isZero();
  }

  @Test
  void whenTheSetUpEndsAtTheBreakPrintingStartsAfterIt() {
    // 10 min changeover, 5 min for the screen, 6 min first piece
    SmallShop shop = shop().press("P1", p -> p.shifts(daily("06:00-14:00", "06:21-06:45")));
    RunLine run = plan(shop, plain("A-1").quantity(60)).run("A-1");
    assertThat(run.printStart()).isEqualTo(at("06:21"));
    assertThat(run.rates().get(0).from()).isEqualTo(at("06:45"));
  }

  @Test
  void aSetUpDoesNotEndWithTheShiftWhenThePrintWouldComeTheNextDay() {
    SmallShop shop = shop().press("P1", p -> p.shifts(daily("06:00-06:21"), daily("20:00-22:00")));
    RunLine run = plan(shop, plain("A-1").quantity(60)).run("A-1");
    assertThat(run.setUpStart()).isEqualTo(at("20:00"));
  }

  @Test
  void aHandfulOfPiecesIsDoneInWholeSeconds() {
    // 5 pieces after the trial pieces take 37.4 s, so 38 s, at 481 an hour
    RunLine run =
        plan(shop().press("P1", p -> p.ratePerHour(400)), plain("A-1").quantity(8)).run("A-1");
    assertThat(run.ratePerHour()).isEqualTo(400);
    run = plan(shop().press("P1", p -> p.ratePerHour(397)), plain("A-1").quantity(4)).run("A-1");
    assertThat(run.ratePerHour()).isEqualTo(360);
    assertThat(run.rates().get(0).ratePerHour()).isEqualTo(397);
  }

  @Test
  void screensAreChargedAlsoWhenTheSetUpTakesNoTime() {
    SmallShop shop =
        shop()
            .press(
                "P1",
                p ->
                    p.changeoverMinutes(0)
                        .minutesPerScreen(0)
                        .firstPieceMinutes(0)
                        .tearDownMinutesPerScreen(0));
    Planned plan = plan(shop, plain("A-1"));
    assertThat(plan.run("A-1").setUpStart()).isEqualTo(plan.run("A-1").printStart());
    assertThat(plan.batch("white").uses().get(0).chargeG()).isEqualTo(80);
  }

  @Test
  void aScreenTakenOffInNoTimeIsASetUpAllTheSame() {
    SmallShop shop =
        shop()
            .press(
                "P1",
                p ->
                    p.changeoverMinutes(0)
                        .minutesPerScreen(0)
                        .firstPieceMinutes(0)
                        .tearDownMinutesPerScreen(0));
    Planned plan =
        plan(
            shop,
            order("A-1").due("08:00").print("logo", "front").colour("white").colour("brick"),
            plain("A-2"));
    assertThat(plan.run("A-2").screensToChange()).isZero();
    assertThat(plan.batch("white").uses()).extracting("chargeG").containsExactly(80, 80);
  }
}
