package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;
import org.potlife.plan.export.BeltCsv;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Period;
import org.potlife.plan.list.BeltList.Setting;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.SearchPlanner;
import org.potlife.planning.SolveWatch;
import org.potlife.shop.Shop;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;
import org.potlife.testing.SmallShop.DryerSpec;

/** What the crew of a dryer reads; the figures are worked by hand beside each check. */
class DryerListTest {

  @Test
  void theHeatStandsByPartForTheWaterOfPrintAndCloth() {
    SmallShop shop =
        shop()
            .press("P1", p -> p.ratePerHour(400))
            .system("discharge", s -> s.waterPercent(65))
            .kept("crest", "brick");
    SmallOrder shirts = order("A-1").garment(720, 560, 150).print("crest", "front").discharge();
    DryerDay dryer = dryer(shop, shirts.weighedColour("brick", 12));

    // 400/h x 12 g x 65 % = 3.12 kg/h; 400/h x 150 g x 7 % regain (ASTM D1909) = 4.20 kg/h;
    // 4.186 kJ/kgK x (100 - 20) + 2256.47 kJ/kg (latent heat at 100 C, IAPWS-IF97)
    // = 2591.35 kJ/kg; x 3.12 / 3600 = 2.246 kW; x 4.20 / 3600 = 3.023 kW;
    // of 5.269 / 0.4 = 13.173 kW the dryer loses 7.904 kW
    assertThat(dryer.settings()).hasSize(1);
    assertThat(dryer.settings().get(0).water())
        .isEqualTo(new BeltWater(7.32, 3.12, 4.20, 13.17, 2.25, 3.02, 7.90));
    // 13.173 of 60 kW
    assertThat(dryer.settings().get(0).heatPercent()).isEqualTo(22);
  }

  @Test
  void aRunTellsItsLanesAndWhatTheBeltTakesOfIt() {
    BeltRun run = dryer(shop(), order("A-1").print("crest", "front").discharge()).runs().get(0);

    // (1200 + 30) / (560 + 30) = 2.08 lanes; 4 m in 90 s is 2.667 m/min;
    // 2 x 60 x 2.667 / (720 + 30) mm = 426.7 an hour
    assertThat(run.lanes()).isEqualTo(2);
    assertThat(run.pitchMm()).isEqualTo(750);
    assertThat(run.speedLimitMPerMin()).isCloseTo(2.6667, within(0.0001));
    assertThat(run.piecesPerHour()).isEqualTo(426);
    assertThat(run.maxWaitToDryerS()).isEqualTo(60);
    // 190 g of cotton at 7 %
    assertThat(run.clothWaterG()).isCloseTo(13.3, within(1e-9));
  }

  @Test
  void dischargeBesideAFastProductTellsWhatItCosts() {
    // 4 m in 45 s are 5.333 m/min, in 90 s 2.667: the fast product loses 2.667 m/min,
    // 2 x 60 x 2.667 / 0.75 m = 426 an hour. The discharge run prints 360 of the 426 that still go,
    // so the other press gets 66 an hour from 06:33 to its last stroke at 07:02:30: 29.5 min,
    // in which it could print its 360: 294 x 29.5 / 60 = 144.5 pieces not printed
    assertThat(besideAFastProduct().mixed())
        .containsExactly(
            new MixedBelt(
                at("06:27"),
                at("07:04:46"),
                38,
                2.666666,
                List.of("A-1 crest, front"),
                "A-2 logo, front",
                4 * 60 / 45.0,
                2.667,
                426,
                30,
                144));
  }

  @Test
  void aMixedBeltEndsWhenTheFastProductIsOff() {
    // 60 blanks, 3 of them for approval: 57 at 360 an hour from 06:21 take 570 s, the way of 6 m at
    // 2.667 m/min 135 s, counted as 136; the slow product goes on until 07:04:46
    MixedBelt mixed = besideAFastProduct(60, d -> d).mixed().get(0);

    assertThat(mixed.from()).isEqualTo(at("06:27"));
    assertThat(mixed.to()).isEqualTo(at("06:21").plusSeconds(570 + 136));
  }

  @Test
  void whereThePressIsTheLimitTheMixedBeltCostsNothing() {
    // four lanes take 853 an hour even at 90 s: both presses print their 360
    DryerDay dryer = besideAFastProduct(d -> d.beltWidthMm(2400));

    assertThat(dryer.mixed()).hasSize(1);
    assertThat(dryer.mixed().get(0).lostPiecesPerHour()).isEqualTo(853);
    assertThat(dryer.mixed().get(0).heldBackMinutes()).isZero();
    assertThat(dryer.mixed().get(0).piecesNotPrinted()).isZero();
  }

  @Test
  void whatTheHeatForbidsIsNotBlamedOnTheSlowProduct() {
    // 426 pieces of 36.03 kJ an hour take 36.03 x 426 / 3600 / 0.4 = 10.66 kW, 93 % of 11.5 kW;
    // the 7 % left, 0.805 kW, warm 0.805 x 0.4 x 3600 / 36.03 = 32.2 pieces an hour more,
    // in 29.5 min 15.8
    assertThat(besideAFastProduct(d -> d.usableHeatKw(11.5)).mixed().get(0).piecesNotPrinted())
        .isEqualTo(15);
  }

  @Test
  void runsOfOneDwellAreNoMixedBelt() {
    SmallShop shop = shop().press("P2", p -> p.minRatePerHour(30));
    DryerDay dryer = dryer(shop, order("A-1"), order("A-2").print("logo", "front"));

    assertThat(dryer.periods()).anyMatch(period -> period.line().runs().size() == 2);
    assertThat(dryer.mixed()).isEmpty();
    assertThat(dryer.periods()).allMatch(period -> period.lostMPerMin() == 0);
  }

  @Test
  void theCrewTurnsTheSpeedInNumberedSteps() {
    DryerDay dryer = besideAFastProduct();

    assertThat(dryer.changes())
        .extracting(
            BeltChange::number,
            BeltChange::at,
            BeltChange::fromSpeedMPerMin,
            BeltChange::toSpeedMPerMin,
            BeltChange::why,
            BeltChange::runs)
        .containsExactly(
            tuple(1, at("06:15"), null, 5.333333, "starts", List.of("A-2 logo, front")),
            tuple(2, at("06:27"), 5.333333, 2.666666, "comes", List.of("A-1 crest, front")),
            tuple(3, at("07:04:46"), 2.666666, 5.333333, "goes", List.of("A-1 crest, front")));
    assertThat(dryer.settings())
        .extracting(Setting::setBy)
        .containsExactly(
            List.of("A-2 logo, front"), List.of("A-1 crest, front"), List.of("A-2 logo, front"));
  }

  @Test
  void aBeltThatStaysAtItsSpeedOverAGapIsNotTurned() {
    DryerDay dryer =
        dryer(shop().kept("crest", "brick"), order("A-1"), order("A-2").inHouse("12:00"));

    assertThat(dryer.settings()).hasSize(2);
    assertThat(dryer.changes()).hasSize(1);
  }

  @Test
  void theBeltsOwnSpeedIsSetByNoRun() {
    // 4 m in 45 s would be 5.33 m/min, the belt goes no faster than 2
    SmallShop shop = shop().system("water-based", s -> s.dwellS(45));
    shop.dryer("D1", d -> d.maxSpeedMPerMin(2));
    DryerDay dryer = dryer(shop, order("A-1").print("logo", "front"));

    assertThat(dryer.settings().get(0).speedMPerMin()).isEqualTo(2);
    assertThat(dryer.settings().get(0).setBy()).isEmpty();
  }

  @Test
  void theHeatByPartAgreesWithTheSheet() {
    for (Period period : besideAFastProduct().periods()) {
      // of 60 kW; the sheet gives whole percent
      assertThat(period.water().kw() / 60 * 100)
          .isCloseTo(period.line().heatPercent(), within(0.52));
    }
  }

  @Test
  void theFileHasWaterHeatAndChangeOversByPeriod() {
    String[] rows = BeltCsv.of(new BeltList(DAY, List.of(besideAFastProduct()))).split("\r\n");

    assertThat(rows[0])
        .endsWith(
            "setBy,lanes,waterKgPerH,heatKw,heatDepositKw,heatClothKw,heatLossKw,"
                + "lostMPerMin,changeOver");
    assertThat(rows[3]).endsWith("A-1:crest:front:1,2; 2,5.42,9.76,0.17,3.73,5.85,2.667,2");
  }

  private static DryerDay besideAFastProduct() {
    return besideAFastProduct(d -> d);
  }

  private static DryerDay besideAFastProduct(UnaryOperator<DryerSpec> change) {
    return besideAFastProduct(200, change);
  }

  private static DryerDay besideAFastProduct(int fast, UnaryOperator<DryerSpec> change) {
    SmallShop shop =
        shop()
            .dryer("D1", change)
            .press("P2", p -> p.minRatePerHour(30))
            .system("water-based", s -> s.dwellS(45))
            .kept("crest", "brick")
            .kept("logo", "white");
    return dryer(
        shop,
        order("A-1").quantity(180).due("10:00").print("crest", "front").discharge().colour("brick"),
        order("A-2").quantity(fast).print("logo", "front").colour("white"));
  }

  private static DryerDay dryer(SmallShop plant, SmallOrder... orders) {
    Shop shop = plant.build();
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    PlanRequest request =
        new PlanRequest(shop, built, DAY, at(-1, "18:00").toInstant(), Optional.empty(), 0, 7);
    PlanIndex plan =
        new PlanIndex(shop, built, new SearchPlanner().solve(request, SolveWatch.none()));
    return BeltList.of(plan, DAY).dryers().get(0);
  }
}
