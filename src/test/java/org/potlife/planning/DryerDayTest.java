package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.shop;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.potlife.ink.Process;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.testing.SmallShop;

/** What the dryers allow. */
class DryerDayTest {

  @Test
  void trialPiecesAreOnTheBeltInTheirMinutesAndNotInTheBreakBetween() {
    // the first piece would be printed from 06:15 to 06:21, the break starts at 06:18
    SmallShop shop =
        shop().press("P1", p -> p.trialPieces(20).shifts(daily("06:00-14:00", "06:18-06:48")));
    Planned plan = plan(shop, order("A-1").print("logo", "front").colour("white"));
    BeltLine first = plan.sheet().belts().get(0);
    assertThat(first.from()).isEqualTo(at("06:15"));
    // 200 pieces an hour of the 426 that go
    assertThat(first.areaPercent()).isEqualTo(47);
    BeltLine pause = plan.sheet().belts().get(1);
    assertThat(pause.from()).isEqualTo(at("06:18"));
    assertThat(pause.areaPercent()).isZero();
  }

  @Test
  void aDischargePrintBesideAFastProductSlowsTheBelt() {
    SmallShop shop =
        shop()
            .press("P2", p -> p)
            .system("water-based", s -> s.dwellS(45))
            .dryer("D1", d -> d.beltWidthMm(2400));
    Planned plan =
        plan(
            shop,
            order("A-1").quantity(700).print("logo", "front").colour("white"),
            order("A-2").quantity(100).print("crest", "front").discharge().colour("brick"));
    BeltLine alone = belt(plan, "A-1:logo:front:1");
    BeltLine together = belt(plan, "A-1:logo:front:1", "A-2:crest:front:1");
    assertThat(alone.speedMPerMin()).isCloseTo(2 * together.speedMPerMin(), within(0.001));
    assertThat(together.dwellS()).isEqualTo(90);
  }

  private static BeltLine belt(Planned plan, String... runs) {
    return plan.sheet().belts().stream()
        .filter(line -> Set.copyOf(line.runs()).equals(Set.of(runs)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPressThatOutrunsItsDryerPrintsSlowerAndThePlanSaysSo() {
    SmallShop shop = shop().dryer("D1", d -> d.lengthMm(2000, 3000));
    RunLine run = plan(shop, order("A-1").print("logo", "front").colour("white")).run("A-1");
    assertThat(run.limitedBy()).isEqualTo("dryer");
    assertThat(run.ratePerHour()).isBetween(200, 220);
  }

  @Test
  void wetClothIsHeldBackByTheHeatOfTheDryer() {
    SmallShop shop = shop().dryer("D1", d -> d.usableHeatKw(6));
    Planned plan = plan(shop, order("A-1").print("logo", "front").colour("white"));
    assertThat(plan.run("A-1").limitedBy()).isEqualTo("dryer");
    assertThat(plan.sheet().belts()).extracting(BeltLine::bound).contains("heat");
  }

  @Test
  void aSlowProductDoesNotSlowTheBeltFromItsBreakOn() {
    // its set-up without first piece ends at 06:15, where the break begins; P1 prints until 06:20
    SmallShop shop =
        shop()
            .press(
                "P1", p -> p.processes(Process.DISCHARGE).changeoverMinutes(0).firstPieceMinutes(0))
            .press(
                "P2",
                p ->
                    p.processes(Process.WATER_BASED)
                        .minRatePerHour(1)
                        .firstPieceMinutes(0)
                        .shifts(daily("06:00-14:00", "06:15-06:45")))
            .system("water-based", s -> s.dwellS(400))
            .kept("crest", "brick")
            .kept("logo", "white")
            .inkRoom(i -> i.shifts(daily("00:00-00:00")));
    Planned plan =
        plan(
            shop,
            order("A-1").quantity(90).print("crest", "front").discharge().colour("brick"),
            order("A-2").quantity(20).print("logo", "front").colour("white"));
    assertThat(plan.run("A-2").firstPieceAt()).isAfterOrEqualTo(plan.run("A-1").printEnd());
  }
}
