package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.PlanSettings;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** A new plan starts from the published one; runs within an hour of their set-up are frozen. */
class ReplanTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static SmallOrder crest(String reference) {
    return order(reference).print("crest", "front").discharge().colour("brick");
  }

  @Test
  void frozenRunsStayWhenARushOrderComes() {
    Planned before = plan(shop(), logo("A-1").quantity(400), crest("A-2"));
    Planned after = before.again(at("05:30"), crest("R-1").priority(1).due("07:00"));
    assertThat(after.sheet().frozen())
        .isEqualTo(after.runs("A-1").stream().map(RunLine::id).toList());
    assertThat(after.runs("A-1")).isEqualTo(before.runs("A-1"));
    assertThat(after.run("R-1").setUpStart()).isBefore(after.run("A-2").setUpStart());
  }

  @Test
  void withoutNewsThePlanStaysAsItIs() {
    PlanRequest first = demo(Optional.empty());
    PlanSheet published = new SearchPlanner().solve(first, SolveWatch.none());
    PlanSheet again = new SearchPlanner().solve(demo(Optional.of(published)), SolveWatch.none());
    assertThat(again.score().cost()).containsEntry("change", 0.0);
    assertThat(again.runs())
        .extracting(RunLine::id, RunLine::press, RunLine::setUpStart)
        .containsExactlyElementsOf(
            published.runs().stream()
                .map(run -> tuple(run.id(), run.press(), run.setUpStart()))
                .toList());
  }

  private static PlanRequest demo(Optional<PlanSheet> published) {
    return new PlanRequest(
        DemoPlant.shop(),
        DemoPlant.orders(DAY),
        DAY,
        Instant.parse("2026-11-30T13:00:00Z"),
        published,
        0,
        7);
  }

  @Test
  void screensInProcessGoOnAsPublished() {
    Planned before = plan(shop(), logo("A-1").inHouse("12:00"));
    Planned after = before.again(at(-1, "18:30"));
    assertThat(after.screen("logo-1").steps()).isEqualTo(before.screen("logo-1").steps());
  }

  @Test
  void aSetOfWhichOneScreenIsInTheSinkIsTakenOverWhole() {
    Planned before = plan(shop(), logo("A-1").colour("brick").inHouse("12:00"));
    Planned after = before.again(at(-1, "18:02"));
    assertThat(after.sheet().screens())
        .extracting(ScreenLine::id)
        .containsExactly("logo-1", "logo-2");
    assertThat(after.screen("logo-2").steps().get(0).from()).isEqualTo(at(-1, "18:05"));
  }

  @Test
  void screensOfACancelledOrderLeaveThePlan() {
    Planned before = plan(shop(), logo("A-1"), crest("A-2"));
    Planned after = before.cancel("A-1").again(at(-1, "18:30"));
    assertThat(after.sheet().screens()).extracting(ScreenLine::design).containsExactly("crest");
  }

  @Test
  void aNewOrderOfTheSameDesignTakesTheScreensInProcess() {
    Planned before = plan(shop(), logo("A-1"));
    Planned after = before.cancel("A-1").again(at(-1, "18:30"), logo("A-2"));
    assertThat(after.screen("logo-1").runs()).containsExactly("A-2:logo:front:1");
    assertThat(after.screen("logo-1").steps().get(0).from()).isEqualTo(at(-1, "18:00"));
  }

  @Test
  void aStencilKeptForACancelledOrderServesTheNext() {
    SmallShop shop = shop().kept("logo", "white");
    Planned before = plan(shop, logo("A-1").colour("brick"));
    Planned after = before.cancel("A-1").again(at(-1, "18:02"), logo("A-2"));
    assertThat(after.run("A-2").screens()).containsExactly("K1");
  }

  @Test
  void inkThatIsMixedAlreadyServesTheRunAlsoWhenItIsNotFrozen() {
    SmallShop shop = shop().system("discharge", s -> s.standMinutes(120));
    Planned before = plan(shop, crest("A-1").inHouse("10:00"));
    Planned after = before.again(at("08:00"));
    assertThat(after.sheet().frozen()).isEmpty();
    assertThat(after.batch("brick")).isEqualTo(before.batch("brick"));
  }

  @Test
  void activatedInkOfACancelledOrderStaysOnThePlanUntilItMustBeGone() {
    Planned before = plan(shop(), crest("A-1"));
    Planned after = before.cancel("A-1").again(at("06:10"), logo("A-2"));
    assertThat(after.batch("brick").reserveG()).isEqualTo(after.batch("brick").massG());
    assertThat(after.batch("brick").useBy()).isAfter(at("18:00"));
  }

  @Test
  void plainInkOfACancelledOrderGoesBackToStock() {
    Planned before = plan(shop(), logo("A-1"));
    assertThat(before.cancel("A-1").again(at("06:20"), crest("A-2")).batches("white")).isEmpty();
  }

  @Test
  void aFrozenLotKeepsItsSizeAndTheRestIsALotOfItsOwn() {
    Planned before = plan(shop(), logo("A-1").quantity(100));
    Planned after = before.again(at("05:30"), logo("A-1").quantity(150));
    assertThat(after.runs("A-1")).extracting(RunLine::quantity).containsExactly(100, 50);
    assertThat(after.runs("A-1").get(0)).isEqualTo(before.run("A-1"));
  }

  @Test
  void aFrozenRunIsPrintedInFullWhenTheOrderShrinks() {
    Planned before = plan(shop(), logo("A-1").quantity(100));
    Planned after = before.again(at("05:30"), logo("A-1").quantity(60));
    assertThat(after.run("A-1").quantity()).isEqualTo(100);
  }

  @Test
  void aSlowProductWaitsUntilThePromisedGoodsAreOffTheBelt() {
    SmallShop shop =
        shop()
            .press("P1", p -> p.minRatePerHour(1))
            .press("P2", p -> p.minRatePerHour(1))
            .system("slow", s -> s.dwellS(600))
            .ink("gold", i -> i.system("slow").agentPercent(0))
            .kept("seal", "gold");
    Planned before = plan(shop, logo("A-1").quantity(100));
    Planned after = before.again(at("05:30"), order("A-2").print("seal", "front").colour("gold"));
    assertThat(after.run("A-1")).isEqualTo(before.run("A-1"));
    assertThat(after.run("A-2").firstPieceAt()).isAfterOrEqualTo(before.run("A-1").offBelt());
  }

  @Test
  void framesPromisedToAFrozenRunAreNotKeptByAnother() {
    SmallShop shop =
        shop().frames(43, 80, 1).settings(freezing(300)).screenRoom(s -> s.placesOfEachKind(1));
    Planned before = plan(shop, logo("A-1").due("08:00"), crest("A-2"));
    Planned after = before.again(at("05:30"), logo("A-3"));
    assertThat(after.run("A-2")).isEqualTo(before.run("A-2"));
    assertThat(after.run("A-3").screens()).isNotEqualTo(before.run("A-1").screens());
    assertThat(after.screen(after.run("A-3").screens().get(0)).steps().get(0).from())
        .isAfterOrEqualTo(after.run("A-2").printEnd());
  }

  private static PlanSettings freezing(int minutes) {
    return new PlanSettings(
        null, minutes, null, null, null, null, null, null, null, null, null, null, null, null,
        null);
  }
}
