package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.planning.Planned.search;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.overtime;
import static org.potlife.testing.SmallShop.shop;

import java.time.DayOfWeek;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.Timeout.ThreadMode;
import org.potlife.ink.Process;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** What the ink room makes when. */
class InkRoomDayTest {

  private static SmallOrder crest(String reference) {
    return order(reference).print("crest", "front").discharge().colour("brick");
  }

  @Test
  void inkThatWouldBeDeadAtTheFirstStrokeIsNotMadeBeforeTheInkRoomCloses() {
    SmallShop shop =
        shop()
            .system("discharge", s -> s.potLifeMinutes(60))
            .inkRoom(i -> i.shifts(daily("06:00-14:00")));
    Planned plan = plan(shop, crest("A-1").inHouse("18:00"));
    assertThat(plan.run("A-1").firstPieceAt()).isAfter(at(1, "06:00"));
    assertThat(plan.batch("brick").mixFrom()).isEqualTo(at(1, "06:00"));
  }

  @Test
  void anInkThatTakesNoMinutesIsABatchAllTheSame() {
    Planned plan =
        plan(
            shop().inkRoom(i -> i.minutes(0, 0)),
            order("A-1").print("logo", "front").colour("white"));
    assertThat(plan.batch("white").runs()).containsExactly("A-1:logo:front:1");
  }

  @Test
  void noMinutesAreNoReasonToMixOutOfHours() {
    SmallShop shop = shop().inkRoom(i -> i.minutes(0, 0).shifts(daily("06:00-09:00")));
    Planned plan = plan(shop, crest("A-1").inHouse("11:00"));
    assertThat(plan.batch("brick").activatedAt()).isEqualTo(at("09:00"));
  }

  @Test
  void twoPeopleMixTheTwoInksOfARunAtOnce() {
    SmallShop shop = shop().ink("navy", i -> i).inkRoom(i -> i.mixers(2));
    Planned plan = plan(shop, crest("A-1").colour("navy"));
    assertThat(plan.batch("navy").mixFrom()).isEqualTo(plan.batch("brick").mixFrom());
    assertThat(plan.batch("navy").mixer()).isNotEqualTo(plan.batch("brick").mixer());
  }

  @Test
  void theInkThatStandsLongerIsActivatedFirstAndTheOtherAsLateAsItMay() {
    SmallShop shop =
        shop()
            .system("patient", s -> s.process(Process.DISCHARGE).standMinutes(45))
            .ink("navy", i -> i.system("patient"));
    Planned plan = plan(shop, crest("A-1").colour("navy").inHouse("10:00"));
    assertThat(plan.run("A-1").firstPieceAt()).isEqualTo(at("10:00"));
    assertThat(plan.batch("navy").activatedAt()).isEqualTo(at("09:15"));
    assertThat(plan.batch("brick").activatedAt()).isEqualTo(at("09:45"));
  }

  @Test
  void whoeverFollowsOnWithoutAGapGoesOnMixing() {
    SmallShop shop =
        shop()
            .inkRoom(
                i -> i.shifts(daily("06:00-09:40"), overtime(DayOfWeek.TUESDAY, "09:40-12:00")));
    Planned plan = plan(shop, crest("A-1").inHouse("10:00"));
    assertThat(plan.batch("brick").activateFrom()).isEqualTo(at("09:41"));
    assertThat(plan.batch("brick").activatedAt()).isEqualTo(at("09:45"));
  }

  @Test
  void eachInkHasAContainerOfItsOwnForItsScreens() {
    SmallShop shop =
        shop().ink("navy", i -> i).inkRoom(i -> i.containerG(500).screenChargeG(200).reserveG(0));
    Planned plan = plan(shop, crest("A-1").colour("navy").quantity(20));
    assertThat(plan.batch("brick").massG()).isLessThanOrEqualTo(500);
    assertThat(plan.sheet().unplaced()).isEmpty();
  }

  @Test
  void aContainerFilledByItsReserveServesNoRunAndThePlanSaysSo() {
    SmallShop shop = shop().inkRoom(i -> i.containerG(500).screenChargeG(0).reserveG(490));
    assertThat(plan(shop, crest("A-1")).unplaced().rule()).isEqualTo("R12");
  }

  @Test
  void aRunLongerThanAPotLifeTakesSeveralBatches() {
    SmallShop shop = shop().system("discharge", s -> s.potLifeMinutes(60).standMinutes(10));
    Planned plan = plan(shop, crest("A-1").quantity(900));
    // two and a half hours, of each batch at most 50 minutes
    assertThat(plan.batches("brick")).hasSizeGreaterThanOrEqualTo(3);
    assertThat(plan.run("A-1").batches()).hasSameSizeAs(plan.batches("brick"));
  }

  @Test
  void theInkRoomThatOpensLateDelaysTheFirstDischargePrint() {
    SmallShop shop = shop().inkRoom(i -> i.shifts(daily("09:00-17:00")));
    Planned plan = plan(shop, crest("A-1"));
    // 8 min mixing, 4 min activating, 15 min stand
    assertThat(plan.run("A-1").firstPieceAt()).isEqualTo(at("09:27"));
    assertThat(plan.run("A-1").waits()).extracting("cause").containsExactly("closed", "ink-room");
  }

  // one press and few runs: a search that never ends would be noticed here
  @Test
  @Timeout(value = 1, unit = TimeUnit.MINUTES, threadMode = ThreadMode.SEPARATE_THREAD)
  void darkClothIsPrintedBeforeLightClothWithTheSameActivatedInk() {
    Planned plan = search(shop(), crest("A-1").cloth("sky", 80), crest("A-2").cloth("navy", 20));
    assertThat(plan.run("A-2").setUpStart()).isBefore(plan.run("A-1").setUpStart());
  }
}
