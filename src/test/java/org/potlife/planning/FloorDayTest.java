package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.Staffing;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** The day does not go to plan: what the press crew tells, and the plan that follows. */
class FloorDayTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static SmallOrder crest(String reference) {
    return order(reference).print("crest", "front").discharge().colour("brick");
  }

  private static Planned twoOrders() {
    return plan(shop(), logo("A-1").quantity(400).due("12:00"), crest("A-2").due("18:00"));
  }

  private static int plannedBy(RunLine run, OffsetDateTime at) {
    long seconds = at.toEpochSecond() - run.printStart().toEpochSecond();
    return run.trialPieces() + (int) (run.ratePerHour() * seconds / 3600);
  }

  @Test
  void aSlowRunPushesWhatIsBehindIt() {
    Planned before = twoOrders();
    RunLine slow = before.run("A-1");
    OffsetDateTime counted = slow.printStart().plusMinutes(30);
    int half = plannedBy(slow, counted) / 2;

    Planned after =
        before.again(
            counted.plusMinutes(1),
            Told.of(slow).started(slow.setUpStart()).counted(counted, half, 0).alone());

    assertThat(after.run("A-1").printEnd()).isAfter(slow.printEnd().plusMinutes(20));
    assertThat(after.run("A-1").ratePerHour()).isLessThan(slow.ratePerHour() * 6 / 10);
    assertThat(after.run("A-2").setUpStart()).isAfterOrEqualTo(after.run("A-1").printEnd());
    assertThat(after.sheet().frozen()).contains(slow.id());
  }

  @Test
  void aRunThatIsDoneEarlyFreesThePress() {
    Planned before = twoOrders();
    RunLine run = before.run("A-1");
    OffsetDateTime done = run.printEnd().minusMinutes(20);

    Planned after =
        before.again(
            done.plusMinutes(1),
            Told.of(run).started(run.setUpStart()).ended(done, run.quantity(), 0).alone());

    assertThat(after.run("A-1").printEnd()).isEqualTo(done);
    assertThat(after.run("A-2").setUpStart())
        .isAfter(done)
        .isBefore(before.run("A-2").setUpStart());
  }

  @Test
  void aRunThatIsNotToldToBeDoneIsNotOver() {
    Planned before = twoOrders();
    RunLine run = before.run("A-1");
    OffsetDateTime now = run.printEnd().plusMinutes(15);

    Planned after = before.again(now, Told.of(run).started(run.setUpStart()).alone());

    assertThat(after.run("A-1").printEnd()).isEqualTo(now);
    assertThat(after.run("A-2").setUpStart()).isAfterOrEqualTo(now);
  }

  @Test
  void aRunThatStartsLateEndsLate() {
    Planned before = twoOrders();
    RunLine run = before.run("A-1");
    OffsetDateTime late = run.setUpStart().plusMinutes(25);

    Planned after = before.again(late.plusMinutes(2), Told.of(run).started(late).alone());

    assertThat(after.run("A-1").setUpStart()).isEqualTo(late);
    assertThat(after.run("A-1").printStart()).isEqualTo(run.printStart().plusMinutes(25));
    assertThat(after.run("A-1").printEnd()).isAfterOrEqualTo(run.printEnd().plusMinutes(24));
  }

  @Test
  void withoutAWordARunGoesAsPublished() {
    Planned before = twoOrders();
    RunLine run = before.run("A-1");
    assertThat(before.again(run.printStart().plusMinutes(5)).run("A-1")).isEqualTo(run);
  }

  @Test
  void whereTheCrewTellsARunOfWhichNothingIsToldHasNotBegun() {
    Planned before = twoOrders();
    RunLine first = before.run("A-1");
    RunLine second = before.run("A-2");
    OffsetDateTime now = second.setUpStart().plusMinutes(10);

    Planned after =
        before.again(
            now,
            Told.of(first)
                .started(first.setUpStart())
                .ended(first.printEnd(), first.quantity(), 0)
                .alone());

    assertThat(after.run("A-2").setUpStart()).isAfterOrEqualTo(now);
    assertThat(after.sheet().frozen()).containsExactly(first.id());
  }

  @Test
  void aRunCaughtInAPressThatIsDownGoesOnWhenItIsUp() {
    Planned before = twoOrders();
    RunLine run = before.run("A-1");
    OffsetDateTime down = run.printStart().plusMinutes(10);
    OffsetDateTime up = down.plusMinutes(90);

    Planned after = before.again(down.plusMinutes(5), Told.pressDown("P1", down, up));

    assertThat(after.run("A-1").setUpStart()).isEqualTo(run.setUpStart());
    assertThat(after.run("A-1").printEnd()).isAfter(run.printEnd().plusMinutes(60));
    assertThat(after.run("A-1").rates())
        .noneMatch(rate -> rate.from().isBefore(up) && rate.to().isAfter(down));
  }

  @Test
  void aRunNotBegunLeavesThePressThatIsDown() {
    Planned before = plan(shop().press("P2", same -> same), logo("A-1").due("09:00"));
    RunLine run = before.run("A-1");
    OffsetDateTime now = run.setUpStart().minusMinutes(20);

    Planned after =
        before.again(now, Told.pressDown(run.press(), now.minusMinutes(1), at("23:59")));

    assertThat(after.run("A-1").press()).isNotEqualTo(run.press());
    assertThat(after.sheet().frozen()).isEmpty();
  }

  @Test
  void aDryerThatIsDownClosesThePressesThatFeedIt() {
    Planned before = plan(shop(), logo("A-1").due("09:00"));
    RunLine run = before.run("A-1");
    OffsetDateTime now = run.setUpStart().minusMinutes(20);
    OffsetDateTime up = now.plusHours(3);
    Downtime down = new Downtime(null, run.dryer(), now.minusMinutes(1), up, null);

    Planned after = before.again(now, new FloorReport(List.of(), List.of(down), List.of()));

    assertThat(after.run("A-1").setUpStart()).isAfterOrEqualTo(up);
  }

  @Test
  void anExtraShiftIsWorkedInAndAShiftThatIsNotStaffedIsNot() {
    SmallShop shop = shop().shifts(SmallShop.daily("06:00-14:00"));
    Planned before = plan(shop, logo("A-1").inHouse("15:00").due("18:00"));
    assertThat(before.run("A-1").firstPieceAt()).isAfter(at(1, "06:00"));

    FloorReport extra =
        new FloorReport(
            List.of(), List.of(), List.of(new Staffing("P1", at("14:00"), at("20:00"), true)));
    Planned after = before.again(at("08:00"), extra);
    assertThat(after.run("A-1").printEnd()).isBefore(at("20:00"));

    FloorReport closed =
        new FloorReport(
            List.of(), List.of(), List.of(new Staffing("P1", at("14:00"), at("20:00"), false)));
    assertThat(after.again(at("09:00"), closed).run("A-1").setUpStart()).isAfter(at(1, "05:59"));
  }

  @Test
  void whatARunLeavesUnprintedIsAFurtherLot() {
    Planned before = plan(shop(), logo("A-1").quantity(100).blanks(100));
    RunLine run = before.run("A-1");
    OffsetDateTime stopped = run.printStart().plusMinutes(8);

    Planned after =
        before.again(
            stopped.plusMinutes(1),
            Told.of(run).started(run.setUpStart()).ended(stopped, 58, 2).alone());

    assertThat(after.runs("A-1")).extracting(RunLine::lot).containsExactly(1, 2);
    assertThat(after.runs("A-1").get(1).quantity()).isEqualTo(40);
    assertThat(after.unplaced().rule()).isEqualTo("R20");
    assertThat(after.unplaced().cause()).startsWith("2 pieces are missing");
  }

  @Test
  void withBlanksToSpareTheFurtherLotHasItsAllowance() {
    Planned before = plan(shop(), logo("A-1").quantity(100).blanks(150));
    RunLine run = before.run("A-1");
    OffsetDateTime end = run.printStart().plusMinutes(20);

    Planned after =
        before.again(
            end.plusMinutes(1), Told.of(run).started(run.setUpStart()).ended(end, 60, 10).alone());

    int allowed = (int) Math.round(40 * (1 + shop().build().cloth().spoilagePercent() / 100));
    assertThat(after.runs("A-1").get(1).quantity()).isEqualTo(allowed);
    assertThat(after.sheet().unplaced()).isEmpty();
  }

  @Test
  void theNextPrintHasOnlyTheGarmentsThatAreGood() {
    Planned before =
        plan(
            shop(),
            order("A-1")
                .quantity(100)
                .blanks(100)
                .printsInListedOrder()
                .print("logo", "front")
                .colour("white")
                .print("stripe", "back")
                .colour("white"));
    RunLine run = before.run("A-1", "logo");
    OffsetDateTime end = run.printEnd();

    Planned after =
        before.again(
            end.plusMinutes(1), Told.of(run).started(run.setUpStart()).ended(end, 80, 20).alone());

    assertThat(after.run("A-1", "stripe").quantity()).isEqualTo(80);
    assertThat(after.unplaced().cause()).startsWith("20 pieces are missing");
  }

  @Test
  void garmentsThatComeLateTakeTheirRunOutOfTheFreezeWindow() {
    Planned before = plan(shop(), logo("A-1"));
    OffsetDateTime now = before.run("A-1").setUpStart().minusMinutes(30);

    Planned after = before.again(now, logo("A-1").inHouse("14:00"));

    assertThat(after.run("A-1").firstPieceAt()).isAfterOrEqualTo(at("14:00"));
  }

  @Test
  void aShortDeliveryIsPrintedAndTheRestIsListed() {
    Planned after = plan(shop(), logo("A-1").quantity(100).blanks(90));
    assertThat(after.run("A-1").quantity()).isEqualTo(90);
    assertThat(after.unplaced().cause()).startsWith("10 pieces are missing");
  }
}
