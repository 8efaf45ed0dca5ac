package org.potlife.closeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.closeout.CloseOut.CarriedOver;
import org.potlife.closeout.CloseOut.InkLoss;
import org.potlife.closeout.CloseOut.Promises;
import org.potlife.closeout.CloseOut.RunResult;
import org.potlife.floor.DayRun;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.ink.InkLedger;
import org.potlife.room.InkContainer;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Shop;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** A day's figures, reckoned by hand. */
class DayFiguresTest {

  /** Staffed for seven hours. */
  private static final Shop SHOP = shop().shifts(SmallShop.daily("06:00-13:00")).build();

  private static RunLine line(String order, String start, String end, int quantity, int rate) {
    return new RunLine(
        order + ":logo:front:1",
        order,
        "",
        "logo",
        "front",
        "water-based",
        1,
        1,
        "P1",
        "D1",
        quantity,
        0,
        at(start),
        at(start),
        at(start),
        at(end),
        at(end).plusMinutes(3),
        at(end).plusMinutes(8),
        30,
        1,
        rate,
        "press",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static DayRun ran(
      RunLine line, String start, String print, String end, int good, int spoiled, boolean ended) {
    return new DayRun(
        new RunReport(
            line.id(),
            line.order(),
            line.design(),
            line.position(),
            1,
            "P1",
            line.quantity(),
            at(start),
            at(start),
            at(print),
            at(end),
            good,
            spoiled,
            ended ? at(end) : null),
        line);
  }

  private static DayFigures figures(FloorReport hours, List<DayRun> told, RunLine... planned) {
    return new DayFigures(SHOP, DAY, hours, told, List.of(planned));
  }

  /**
   * "Images", August 2018, p. 33: of 420 min 270 were set-up and 150 printing, 1000 pieces at a
   * planned 400/h: availability 0.357, set-up rate 0.643, effectiveness 1.00.
   */
  @Test
  void thePublishedExampleComesOutAsPublished() {
    RunLine line = line("A-1", "06:00", "13:00", 1000, 400);
    PressFigures press =
        figures(FloorReport.NOTHING, List.of(ran(line, "06:00", "10:30", "13:00", 1000, 0, true)))
            .presses()
            .get(0);
    assertThat(press.plannedBusyMinutes()).isEqualTo(420);
    assertThat(press.setUpMinutes()).isEqualTo(270);
    assertThat(press.productionMinutes()).isEqualTo(150);
    assertThat(press.availability()).isEqualTo(0.357, within(0.0005));
    assertThat(press.setUpRate()).isEqualTo(0.643, within(0.0005));
    assertThat(press.effectiveness()).isEqualTo(1.0, within(1e-9));
    assertThat(press.allocation()).isEqualTo(1.0);
    assertThat(press.utilisation()).isEqualTo(150.0 / 420, within(1e-9));
    assertThat(press.oeeIndex()).isEqualTo(150.0 / 420, within(1e-9));
  }

  @Test
  void whatIsSpoiledLowersTheQuality() {
    RunLine line = line("A-1", "06:00", "08:00", 300, 200);
    PressFigures press =
        figures(FloorReport.NOTHING, List.of(ran(line, "06:00", "06:30", "08:00", 270, 30, true)))
            .presses()
            .get(0);
    assertThat(press.qualityRatio()).isEqualTo(0.9, within(1e-9));
    assertThat(press.scrapRatio()).isEqualTo(0.1, within(1e-9));
    assertThat(press.throughputPerHour()).isEqualTo(150, within(1e-9));
  }

  @Test
  void aPressThatIsDownIsBusyAndDoesNotProduce() {
    RunLine line = line("A-1", "06:00", "09:00", 300, 200);
    Downtime down = new Downtime("P1", null, at("07:00"), at("08:00"), null);
    PressFigures press =
        figures(
                new FloorReport(List.of(), List.of(down), List.of()),
                List.of(ran(line, "06:00", "06:30", "09:00", 300, 0, true)))
            .presses()
            .get(0);
    assertThat(press.downMinutes()).isEqualTo(60);
    assertThat(press.busyMinutes()).isEqualTo(180);
    assertThat(press.productionMinutes()).isEqualTo(90);
  }

  @Test
  void aPressWithoutARunHasNoRatiosOverNothing() {
    PressFigures press = DayFigures.total(figures(FloorReport.NOTHING, List.of()).presses());
    assertThat(press.allocation()).isZero();
    assertThat(press.qualityRatio()).isNull();
    assertThat(press.oeeIndex()).isNull();
  }

  @Test
  void planAndActualStandSideBySide() {
    RunLine done = line("A-1", "06:00", "08:00", 300, 200);
    RunLine running = line("A-2", "08:00", "10:00", 300, 200);
    RunLine silent = line("A-3", "10:00", "11:00", 100, 200);
    DayFigures day =
        figures(
            FloorReport.NOTHING,
            List.of(
                ran(done, "06:10", "06:30", "08:15", 300, 0, true),
                ran(running, "08:15", "08:45", "09:15", 90, 10, false)),
            done,
            running,
            silent);
    assertThat(day.runs())
        .extracting(RunResult::state, RunResult::startMinutesLate, RunResult::endMinutesLate)
        .containsExactly(
            tuple("ended", 10L, 15L), tuple("running", 15L, null), tuple("not-told", null, null));
    assertThat(day.runs().get(1).ratePerHour()).isEqualTo(200, within(1e-9));
    assertThat(day.carryOver())
        .extracting(CarriedOver::order, CarriedOver::pieces)
        .containsExactly(tuple("A-2", 200), tuple("A-3", 100));
  }

  @Test
  void onTimeInFullIsCountedPerOrder() {
    List<RunReport> told =
        List.of(
            ran(line("A-1", "06:00", "08:00", 100, 200), "06:00", "06:30", "08:00", 100, 0, true)
                .told(),
            ran(line("A-2", "06:00", "08:00", 100, 200), "06:00", "06:30", "08:00", 80, 5, true)
                .told(),
            ran(line("A-3", "08:00", "10:00", 100, 200), "08:00", "08:30", "11:58", 100, 0, true)
                .told());
    Promises promises =
        KeptPromises.of(
            List.of(due("A-1"), due("A-2"), due("A-3"), due("A-4")),
            new FloorReport(told, List.of(), List.of()),
            3,
            Duration.ofMinutes(3));
    assertThat(promises.due()).isEqualTo(4);
    assertThat(promises.onTimeInFull()).isEqualTo(1);
    assertThat(promises.share()).isEqualTo(0.25);
    assertThat(promises.missed())
        .extracting(CloseOut.Missed::order, CloseOut.Missed::why)
        .containsExactly(
            tuple("A-2", "not in full"),
            tuple("A-3", "late"),
            tuple("A-4", "nothing of it is told to be done"));
  }

  private static org.potlife.order.Order due(String reference) {
    return SmallOrder.order(reference)
        .quantity(100)
        .due("12:00")
        .print("logo", "front")
        .colour("white")
        .build();
  }

  @Test
  void inkIsLostInGramsAndMoney() {
    Instant from = DAY.atStartOfDay(SmallShop.ZONE).toInstant();
    Instant to = DAY.plusDays(1).atStartOfDay(SmallShop.ZONE).toInstant();
    InkLedger discarded = new InkLedger(1000, 1000, 60, 0, 700, 80, 0, 250, 30);
    InkLedger left = new InkLedger(500, 500, 30, 0, 400, 0, 0, 0, 0);
    InkLoss loss =
        LostInk.of(
            List.of(
                batch("b1", at("09:00"), at("11:00"), discarded),
                batch("b2", at("10:00"), null, left),
                batch("b3", at("23:00"), null, left),
                batch("b4", at(-1, "10:00"), at(-1, "12:00"), discarded)),
            SHOP,
            from,
            to,
            at("14:00").toInstant());
    assertThat(loss.inks())
        .extracting(
            InkLoss.OfInk::discardedG, InkLoss.OfInk::unaccountedG, InkLoss.OfInk::pastPotLifeG)
        .containsExactly(tuple(250, 30, 130));
    double perKg = SHOP.findInk("brick").orElseThrow().costPerKg();
    assertThat(loss.lostG()).isEqualTo(410);
    assertThat(loss.cost()).isEqualTo(0.41 * perKg, within(0.005));
  }

  private static InkContainer batch(
      String name, OffsetDateTime useBy, OffsetDateTime gone, InkLedger grams) {
    return new InkContainer(
        name,
        "brick",
        false,
        false,
        null,
        useBy.minusHours(6).toInstant(),
        null,
        null,
        useBy.toInstant(),
        gone == null ? null : gone.toInstant(),
        grams,
        List.of());
  }
}
