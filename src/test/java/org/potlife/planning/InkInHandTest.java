package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.ink.InkReport;
import org.potlife.ink.LearnedGrams;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** What stands on the shelf and what was told of the batches changes the plan. */
class InkInHandTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static SmallOrder crest(String reference) {
    return order(reference).print("crest", "front").discharge().colour("brick");
  }

  private static StockInk white(String container, int massG, OffsetDateTime since) {
    return new StockInk(container, "white", massG, since, false, null);
  }

  private static InkReport stock(StockInk... containers) {
    return new InkReport(List.of(), List.of(containers), List.of());
  }

  private static InkReport marked(MarkedBatch... batches) {
    return new InkReport(List.of(batches), List.of(), List.of());
  }

  @Test
  void aContainerOnTheShelfIsUsedBeforeAnythingIsMixed() {
    Planned plan = plan(stock(white("W-1", 15_000, at(-3, "09:00"))), shop(), logo("A-1"));
    BatchLine container = plan.batch("white");
    assertThat(container.id()).isEqualTo("W-1");
    assertThat(container.fromStock()).isTrue();
    assertThat(container.components()).isEmpty();
    assertThat(container.runs()).containsExactly("A-1:logo:front:1");
    assertThat(plan.run("A-1").batches()).containsExactly("W-1");
  }

  @Test
  void theOldestContainerComesFirstAndTheRestIsMixed() {
    Planned alone = plan(shop(), logo("A-1").quantity(900));
    int neededG = alone.batch("white").massG() - alone.batch("white").reserveG();
    Planned plan =
        plan(
            stock(white("old", 300, at(-9, "09:00")), white("young", neededG / 2, at(-2, "09:00"))),
            shop(),
            logo("A-1").quantity(900));
    assertThat(plan.run("A-1").batches()).startsWith("old", "young").hasSize(3);
    int drawnG =
        plan.batches("white").stream().mapToInt(batch -> batch.massG() - batch.reserveG()).sum();
    assertThat(drawnG).isEqualTo(neededG);
  }

  @Test
  void whatOnceHadAgentIsNeverDrawnForDarkCloth() {
    StockInk leftover = new StockInk("L-1", "white", 15_000, at(-1, "17:00"), true, "cream-1130-1");
    Planned dark = plan(stock(leftover), shop(), logo("A-1").cloth("navy", 15));
    assertThat(dark.batch("white").fromStock()).isFalse();
    Planned light = plan(stock(leftover), shop(), logo("A-1").cloth("sky", 85));
    assertThat(light.batch("white").id()).isEqualTo("L-1");
  }

  @Test
  void aDischargeInkIsNeverTakenFromTheShelf() {
    StockInk wrong = new StockInk("X-1", "brick", 15_000, at(-1, "09:00"), false, null);
    Planned plan = plan(stock(wrong), shop(), crest("A-1"));
    assertThat(plan.batch("brick").fromStock()).isFalse();
  }

  @Test
  void theNextPlanStillKnowsWhatAFrozenRunDrawsFromTheShelf() {
    StockInk shelf = white("W-1", 15_000, at(-3, "09:00"));
    Planned first = plan(stock(shelf), shop(), logo("A-1"), logo("A-2"));
    Planned next = first.again(at("06:30"), stock(shelf));
    assertThat(next.batch("white").id()).isEqualTo("W-1");
    assertThat(next.batch("white").uses()).hasSize(2);
  }

  @Test
  void aDiscardedBatchIsMadeAnewForRunsThatAreNotBegun() {
    Planned first = plan(shop(), crest("A-1").inHouse("10:00"));
    String id = first.batch("brick").id();
    Planned next = first.again(at("09:40"), marked(new MarkedBatch(id, at("09:37"), true, 0)));
    assertThat(next.batch("brick").id()).isNotEqualTo(id);
    assertThat(next.run("A-1").firstPieceAt()).isAfterOrEqualTo(at("10:07"));
  }

  @Test
  void theClockCountsFromTheRealActivation() {
    Planned first = plan(shop(), crest("A-1").inHouse("10:00"));
    BatchLine planned = first.batch("brick");
    OffsetDateTime really = planned.activatedAt().minusMinutes(20);
    Planned next =
        first.again(at("09:40"), marked(new MarkedBatch(planned.id(), really, false, 1000)));
    BatchLine now = next.batch("brick");
    assertThat(now.activatedAt()).isEqualTo(really);
    assertThat(now.useBy()).isEqualTo(planned.useBy().minusMinutes(20));
    assertThat(next.run("A-1").setUpStart()).isEqualTo(first.run("A-1").setUpStart());
  }

  @Test
  void inkThatWasActivatedTooEarlyServesNoRunThatItDoesNotOutlive() {
    SmallShop shop = shop().system("discharge", s -> s.potLifeMinutes(60));
    Planned first = plan(shop, crest("A-1").inHouse("10:00"));
    String early = first.batch("brick").id();
    Planned next =
        first.again(at("09:30"), marked(new MarkedBatch(early, at("08:50"), false, 1000)));
    assertThat(next.run("A-1").batches()).hasSize(1).doesNotContain(early);
    assertThat(next.batches("brick"))
        .as("the early one stays on the list until it must be gone")
        .extracting(BatchLine::id)
        .contains(early);
  }

  @Test
  void whatClosedRunsTookStandsInThePlaceOfTheEstimate() {
    Order built = crest("A-1").build();
    Print print = built.prints().get(0);
    var colour = print.colours().get(0);
    LearnedGrams learned =
        new LearnedGrams(
            "crest",
            "front",
            "brick",
            colour.meshPerCm(),
            colour.threadUm(),
            print.widthMm(),
            print.heightMm(),
            colour.coveragePercent(),
            print.passes(),
            5.0,
            3);
    Planned plan =
        plan(new InkReport(List.of(), List.of(), List.of(learned)), shop(), crest("A-1"));
    int printedG = plan.batch("brick").uses().get(0).printG();
    // 5 g a piece and 10 % loss
    assertThat(printedG).isEqualTo((int) Math.ceil(plan.run("A-1").quantity() * 5.0 * 1.1 - 1e-6));
  }
}
