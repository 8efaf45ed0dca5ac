package org.potlife.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.potlife.ink.InkPerPiece;
import org.potlife.order.GramsPerPiece;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.plan.list.BeltList;
import org.potlife.plan.list.BeltRun;
import org.potlife.plan.list.BeltWater;
import org.potlife.plan.list.PlanIndex;
import org.potlife.planning.BareSearch;
import org.potlife.planning.PlanRequest;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.ComponentLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Shop;

/**
 * The day of docs/worked-day.md: two runs of the demo plant worked by hand, beside each check, and
 * what the plan says. Its lines are made by a published dispatch rule, so it is the same every
 * time.
 */
class WorkedDayTest {

  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
  private static final String PIER = "KO-2099:pier:front:1";
  private static final String PIER_BACK = "KO-2099:pier-back:back:1";
  private static final String ISLAND = "IC-2072:island:front:1";

  private static Shop shop;
  private static List<Order> orders;
  private static PlanSheet sheet;

  @BeforeAll
  static void planTheDayInTheAfternoonBefore() {
    shop = DemoPlant.shop();
    orders = DemoPlant.orders(DAY);
    OffsetDateTime now = DAY.minusDays(1).atTime(14, 0).atZone(ZONE).toOffsetDateTime();
    PlanRequest request =
        new PlanRequest(shop, orders, DAY, now.toInstant(), Optional.empty(), 0, 7);
    sheet = BareSearch.sheetByAtcs(request);
  }

  @Test
  void gramsPerPieceFollowFromMeshAndArea() {
    // deposit 0.285 F with F = 1.7 d: 43-80 38.76 um, 55-64 31.008 um, 77-48 23.256 um
    // 0.300 x 0.340 m x 20 % x 38.76 um x 1.12 g/cm3 = 0.88559 g
    assertGrams(PIER, 0, 0.88559);
    // 0.300 x 0.340 x 12 % x 31.008 x 1.05 = 0.39851
    assertGrams(PIER, 1, 0.39851);
    // 0.300 x 0.340 x 8 % x 23.256 x 1.05 = 0.19926
    assertGrams(PIER, 2, 0.19926);
    // 0.340 x 0.360 x 28 % x 38.76 x 1.28 x transfer 0.90 = 1.53030
    assertGrams(ISLAND, 0, 1.53030);
    // 0.340 x 0.360 x 18 % x 31.008 x 1.05 x 0.95 = 0.68146
    assertGrams(ISLAND, 1, 0.68146);
  }

  @Test
  void aRunDrawsItsPiecesWithTheLossAndACharge() {
    // round(510 x 1.03) = 525 of 530 blanks, round(325 x 1.03) = 335 of 338
    assertThat(run(PIER).quantity()).isEqualTo(525);
    assertThat(run(ISLAND).quantity()).isEqualTo(335);
    // 525 x 0.88559 x 1.10 = 511.4; 525 x 0.39851 x 1.10 = 230.1; 525 x 0.19926 x 1.10 = 115.1
    assertDraw("bone-261201-1", PIER, 512);
    assertDraw("sea-261201-1", PIER, 231);
    assertDraw("brick-261201-1", PIER, 116);
    // 335 x 1.53030 x 1.10 = 563.9; 335 x 0.68146 x 1.10 = 251.1
    assertDraw("white-261201-1", ISLAND, 564);
    assertDraw("teal-261201-1", ISLAND, 252);
  }

  @Test
  void aBatchIsWhatItServesAndTheReserve() {
    // 512 + 254 + 732 + 93 + 392 + 100 + 141 + 57 + 435 = 2716, 9 charges of 80, 50 reserve
    assertThat(batch("bone-261201-1").massG()).isEqualTo(2716 + 9 * 80 + 50);
    // 91 + 91 + 564 + 435 + 324 = 1505, 5 charges, reserve
    assertThat(batch("white-261201-1").massG()).isEqualTo(1505 + 5 * 80 + 50);
    assertThat(batch("teal-261201-1").massG()).isEqualTo(252 + 80 + 50);
  }

  @Test
  void componentsAreWholeStepsOfTheScaleThatSumToTheBatch() {
    // of 3486 g: 79.5 % 2771.37, 17 % 592.62, 0.5 % 17.43, 3 % 104.58; rounded down 3484,
    // the two grams left go to the largest remainders .62 and .58
    assertComponents("bone-261201-1", 2771, 593, 17, 105);
    // of 1955 g: 1329.40, 547.40, 48.875, 29.325; two left: .875, and of the two .40 the first
    assertComponents("white-261201-1", 1330, 547, 49, 29);
    // of 382 g: 345.328, 17.572, 11.46, 7.64; two left: .64 and .572
    assertComponents("teal-261201-1", 345, 18, 11, 8);
    // 3486 x 7 % = 244.02; 3459 x 6 % = 207.54; 1479 x 6 % = 88.74
    assertThat(batch("bone-261201-1").agentG()).isEqualTo(244);
    assertThat(batch("sea-261201-1").agentG()).isEqualTo(208);
    assertThat(batch("brick-261201-1").agentG()).isEqualTo(89);
    assertThat(batch("teal-261201-1").agentG()).isZero();
  }

  @Test
  void theClockOfABatchIsCountedBackFromTheFirstPiece() {
    // first piece 07:17:10 less 15 min stand; 12 h from there
    for (String id : List.of("sea-261201-1", "brick-261201-1")) {
      assertThat(batch(id).activatedAt()).isEqualTo(at("07:02:10"));
      assertThat(batch(id).readyAt()).isEqualTo(at("07:17:10"));
      assertThat(batch(id).useBy()).isEqualTo(at("19:02:10"));
    }
    // two mixers, three inks: the third has to be done before the 8 + 4 min of the others
    assertThat(batch("bone-261201-1").activatedAt()).isEqualTo(at("06:50:10"));
    assertThat(batch("bone-261201-1").useBy()).isEqualTo(at("18:50:10"));
    // without agent: mixed in 8 min by the first piece, no clock
    assertThat(batch("teal-261201-1").mixFrom()).isEqualTo(at("11:13:05"));
    assertThat(batch("teal-261201-1").readyAt()).isEqualTo(run(ISLAND).firstPieceAt());
    assertThat(batch("teal-261201-1").useBy()).isNull();
  }

  @Test
  void aScreenDriesByTheCabinetsDeficit() {
    // C2: 610.94 e^(17.625 x 30 / 273.04) = 4236.65 Pa, x (1 - 0.30) = 2965.66 Pa, airflow 1.4
    // rinse 600 x 1.2 / (2965.66 x 1.4) h = 624.3 s after 10 min of gathering
    assertThat(dries("dry-degreased")).isEqualTo(Duration.ofSeconds(600 + 625));
    // coat 1250 x 1.2 / 4151.92 h = 1300.6 s
    assertThat(dries("dry-coated")).isEqualTo(Duration.ofSeconds(600 + 1301));
    // C1: 32 C, 28 %: 4748.62 x 0.72 = 3419.01 Pa, x 1.8 = 6154.21
    // 600 x 1.2 / 6154.21 h = 421.2 s after 12 min of gathering
    assertThat(dries("dry-washed")).isEqualTo(Duration.ofSeconds(720 + 422));
  }

  @Test
  void theSetUpCountsScreensAndWashUps() {
    // P1 after one screen of white: 10 + 1 x 2 + 3 x 5 + 3 (white 99 to bone 88) + 6
    assertThat(run(PIER).setUpMinutes()).isEqualTo(36);
    // P3 after one screen of sea: 12 + 1 x 2 + 2 x 4 + 6 (sea 43 to white 99) + 6
    assertThat(run(ISLAND).setUpMinutes()).isEqualTo(34);
    assertThat(run(PIER).printStart()).isEqualTo(run(PIER).setUpStart().plusMinutes(36));
  }

  @Test
  void theRateIsThatOfThePressOrOfTheBelt() {
    // D1: 6 m in 90 s = 4.00 m/min, (1800 + 30) / (520 + 30) = 3.3 lanes,
    // 3 x 60 x 4 / 0.730 = 986.3 an hour: the press prints its 360
    BeltRun pier = onBelt("D1", PIER);
    assertThat(pier.lanes()).isEqualTo(3);
    assertThat(pier.speedLimitMPerMin()).isCloseTo(4, within(1e-9));
    assertThat(pier.piecesPerHour()).isEqualTo(986);
    assertThat(run(PIER).ratePerHour()).isEqualTo(360);
    assertThat(run(PIER).limitedBy()).isEqualTo("press");
    // D2: 4 m in 110 s = 2.182 m/min, (1250 + 30) / 550 = 2.3 lanes,
    // 2 x 60 x 2.182 / 0.730 = 358.7 an hour: less than the press's 450
    BeltRun island = onBelt("D2", ISLAND);
    assertThat(island.lanes()).isEqualTo(2);
    assertThat(island.speedLimitMPerMin()).isCloseTo(2.1818, within(0.0001));
    assertThat(island.piecesPerHour()).isEqualTo(358);
    assertThat(run(ISLAND).ratePerHour()).isEqualTo(358);
    assertThat(run(ISLAND).limitedBy()).isEqualTo("dryer");
  }

  @Test
  void theHeatGoesToTheClothMoreThanToThePrint() {
    // 4.186 x (100 - 21) + 2256.47 (IAPWS-IF97) = 2587.16 kJ/kg
    // pier: 1.48336 g x 65 % = 0.9642 g and 150 g x 7 % = 10.5 g a piece;
    // x 360/h = 0.347 + 3.780 kg/h; 0.249 + 2.717 kW; / 0.4 = 7.415 kW of 40 are 18.5 %
    BeltList.Period pier = alone("D1", PIER);
    assertThat(pier.water()).isEqualTo(new BeltWater(4.13, 0.35, 3.78, 7.41, 0.25, 2.72, 4.45));
    assertThat(pier.line().heatPercent()).isEqualTo(19);
    // island: 1.5303 x 50 % + 0.68146 x 60 % = 1.1740 g; x 358/h = 0.420 + 3.759 kg/h;
    // 0.302 + 2.701 kW; / 0.4 = 7.509 kW of 25 are 30.0 %
    BeltList.Period island = alone("D2", ISLAND);
    assertThat(island.water()).isEqualTo(new BeltWater(4.18, 0.42, 3.76, 7.51, 0.30, 2.70, 4.51));
    assertThat(island.line().heatPercent()).isEqualTo(30);
  }

  @Test
  void timesOnThePressFollowFromPiecesAndRate() {
    // the 3 trial pieces are printed: 522 / 360 h = 87 min
    assertThat(run(PIER).printEnd()).isEqualTo(at("07:23:10").plusMinutes(87));
    // 332 / 358 h = 3338.5 s, and half an hour of break
    assertThat(run(ISLAND).printEnd()).isEqualTo(at("11:27:05").plusSeconds(3339 + 1800));
    // off the belt for sure, at the slowest speed that any run may ask of the dryer (120 s):
    // D1 3.0 m/min, 8.5 m in 170 s; D2 2.0 m/min, 6 m in 180 s
    assertThat(run(PIER).offBelt()).isEqualTo(run(PIER).printEnd().plusSeconds(170));
    assertThat(run(ISLAND).offBelt()).isEqualTo(run(ISLAND).printEnd().plusSeconds(180));
  }

  @Test
  void thePromiseIsTheLastGarmentOffTheBelt() {
    // the back print may begin when the front is cool: 08:53:00 + 5 min
    assertThat(run(PIER_BACK).firstPieceAt()).isEqualTo(at("08:58"));
    // printed from 09:04 in 522 / 420 h = 4474.3 s and a break of 30 min, off the belt 170 s later
    assertThat(run(PIER_BACK).offBelt()).isEqualTo(at("09:04").plusSeconds(4475 + 1800 + 170));
    // due 07:00, done 10:51:25: 231 min 25 s, rounded up; weight 10
    assertThat(sheet.late())
        .filteredOn(late -> late.order().equals("KO-2099"))
        .extracting(LateLine::plannedFinish, LateLine::minutes, LateLine::weightedMinutes)
        .containsExactly(tuple(at("10:51:25"), 232L, 2320L));
    // due 17:00, done 12:55:44
    assertThat(run(ISLAND).offBelt()).isEqualTo(at("12:55:44"));
    assertThat(sheet.late()).extracting(LateLine::order).doesNotContain("IC-2072");
  }

  private static void assertGrams(String run, int station, double grams) {
    Print print = new PlanIndex(shop, orders, sheet).findPrint(run(run)).orElseThrow();
    InkPerPiece ink = new GramsPerPiece(shop, List.of()).of(print, print.colours().get(station));
    assertThat(ink.grams()).isCloseTo(grams, within(0.000005));
  }

  private static void assertDraw(String batch, String run, int printG) {
    assertThat(batch(batch).uses())
        .filteredOn(use -> use.run().equals(run))
        .extracting(UseLine::printG, UseLine::chargeG)
        .containsExactly(tuple(printG, 80));
  }

  private static void assertComponents(String batch, Integer... grams) {
    assertThat(batch(batch).components()).extracting(ComponentLine::massG).containsExactly(grams);
  }

  private static Duration dries(String step) {
    ScreenLine screen =
        sheet.screens().stream().filter(s -> s.id().equals("pier-1")).findFirst().orElseThrow();
    StepLine line =
        screen.steps().stream().filter(s -> s.step().equals(step)).findFirst().orElseThrow();
    return Duration.between(line.from(), line.to());
  }

  private static BeltRun onBelt(String dryer, String run) {
    return belt(dryer).runs().stream().filter(on -> on.run().equals(run)).findFirst().orElseThrow();
  }

  /** The stretch in which the run is alone in the tunnel and prints. */
  private static BeltList.Period alone(String dryer, String run) {
    return belt(dryer).periods().stream()
        .filter(period -> period.line().runs().equals(List.of(run)))
        .filter(period -> !period.line().from().isBefore(run(run).printStart()))
        .findFirst()
        .orElseThrow();
  }

  private static BeltList.DryerDay belt(String dryer) {
    return BeltList.of(new PlanIndex(shop, orders, sheet), DAY).dryers().stream()
        .filter(day -> day.dryer().equals(dryer))
        .findFirst()
        .orElseThrow();
  }

  private static RunLine run(String id) {
    return sheet.runs().stream().filter(run -> run.id().equals(id)).findFirst().orElseThrow();
  }

  private static BatchLine batch(String id) {
    return sheet.batches().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }

  private static OffsetDateTime at(String time) {
    return DAY.atTime(LocalTime.parse(time)).atZone(ZONE).toOffsetDateTime();
  }
}
