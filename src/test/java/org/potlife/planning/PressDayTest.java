package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.shop;
import static org.potlife.testing.SmallShop.weekdays;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
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

  @Test
  void aRunLongerThanAShiftIsSplitIntoLots() {
    SmallShop shop = shop().shifts(daily("06:00-14:00"));
    Planned plan = plan(shop, plain("A-1").quantity(4000));
    assertThat(plan.runs("A-1")).hasSizeGreaterThan(1);
    assertThat(plan.runs("A-1").stream().mapToInt(RunLine::quantity).sum()).isEqualTo(4000);
    assertThat(plan.runs("A-1"))
        .allSatisfy(
            run ->
                assertThat(run.setUpStart().toLocalDate()).isEqualTo(run.printEnd().toLocalDate()));
  }

  @Test
  void theSameDesignAgainNeedsNoSetUp() {
    Planned plan = plan(shop(), plain("A-1").due("12:00"), plain("A-2"));
    assertThat(plan.run("A-2").setUpMinutes()).isZero();
    assertThat(plan.run("A-2").trialPieces()).isZero();
    assertThat(plan.run("A-2").setUpStart()).isEqualTo(plan.run("A-1").printEnd());
  }

  @Test
  void theBackWaitsUntilTheFrontIsCool() {
    Planned plan =
        plan(
            shop().press("P2", p -> p),
            plain("A-1").print("number", "back").colour("brick").printsInListedOrder());
    RunLine front = plan.run("A-1", "logo");
    RunLine back = plan.run("A-1", "number");
    assertThat(front.coolAt()).isEqualTo(front.offBelt().plusMinutes(5));
    assertThat(back.firstPieceAt()).isEqualTo(front.coolAt());
    assertThat(back.waits()).extracting("cause").contains("same-garments");
  }

  @Test
  void whatIsTooLongForFridayEveningWaitsForMonday() {
    SmallShop shop = shop().shifts(weekdays("06:00-22:00"));
    Planned plan =
        plan(
            shop.build(),
            List.of(plain("A-1").quantity(400).inHouse(3, "21:00").due(9, "12:00").build()),
            SmallShop.DAY.plusDays(3),
            at(3, "12:00"),
            Optional.empty());
    assertThat(plan.run("A-1").setUpStart()).isEqualTo(at(6, "06:00"));
    assertThat(plan.run("A-1").waits()).extracting("cause").contains("closed");
  }

  @Test
  void theNightOnWhichTheClocksGoBackIsAnHourLonger() {
    assertThat(nightOf(LocalDate.of(2026, 10, 24)))
        .isBetween(Duration.ofMinutes(8 * 60 + 30), Duration.ofHours(9));
  }

  @Test
  void theNightOnWhichTheClocksGoForwardIsAnHourShorter() {
    assertThat(nightOf(LocalDate.of(2027, 3, 27)))
        .isBetween(Duration.ofMinutes(6 * 60 + 30), Duration.ofHours(7));
  }

  /** From the first set-up to the last stroke of a night that has more to print than it takes. */
  private static Duration nightOf(LocalDate day) {
    SmallShop shop =
        shop()
            .kept("logo", "white")
            .press("P1", p -> p.shifts(daily("22:00-06:00")))
            .shifts(daily("00:00-00:00"));
    OffsetDateTime noon = day.atTime(12, 0).atZone(SmallShop.ZONE).toOffsetDateTime();
    List<Order> orders =
        IntStream.range(10, 40)
            .mapToObj(i -> plain("A-" + i).quantity(150).inHouse(-200, "06:00").build())
            .toList();
    PlanSheet sheet = plan(shop.build(), orders, day, noon, Optional.empty()).sheet();
    List<RunLine> night =
        sheet.runs().stream().filter(run -> run.printEnd().isBefore(noon.plusDays(1))).toList();
    return Duration.between(night.get(0).setUpStart(), night.get(night.size() - 1).printEnd());
  }

  @Test
  void aPlantOnTheOtherSideOfTheWorldKeepsItsOwnHours() {
    SmallShop shop = shop().zone("Pacific/Auckland").kept("logo", "white");
    RunLine run = plan(shop, plain("A-1")).run("A-1");
    assertThat(run.setUpStart()).hasToString("2026-12-01T06:00+13:00");
  }

  @Test
  void withoutOrdersThePlanIsEmpty() {
    PlanSheet sheet = plan(shop()).sheet();
    assertThat(sheet.runs()).isEmpty();
    assertThat(sheet.batches()).isEmpty();
    assertThat(sheet.screens()).isEmpty();
    assertThat(sheet.belts()).isEmpty();
    assertThat(sheet.score().totalCost()).isZero();
  }

  @Test
  void oneOrderStartsWithTheDay() {
    Planned plan = plan(shop(), plain("A-1"));
    assertThat(plan.run("A-1").setUpStart()).isEqualTo(at("06:00"));
    assertThat(plan.sheet().late()).isEmpty();
    assertThat(plan.sheet().unplaced()).isEmpty();
  }
}
