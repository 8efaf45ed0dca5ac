package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.potlife.ink.InkReport;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;

/** The audit knows what the ink room had told: a plan that does not keep to it is found out. */
class ShelfAndMarksTest {

  private static final OffsetDateTime NOVEMBER = OffsetDateTime.parse("2026-11-02T09:00:00+01:00");

  private static List<String> rules(PlanSheet sheet, InkReport told) {
    return Audit.of(
            SmallShop.shop(), SmallShop.orders(), sheet, Optional.empty(), RoomState.NOTHING, told)
        .findings()
        .stream()
        .map(Finding::rule)
        .distinct()
        .toList();
  }

  private static InkReport shelf(int massG, boolean lightOnly) {
    StockInk black = new StockInk("B-1", "black", massG, NOVEMBER, lightOnly, null);
    return new InkReport(List.of(), List.of(black), List.of());
  }

  /** The good plan with its black ink from a container on the shelf. */
  private static PlanSheet fromTheShelf(int massG) {
    return blackBatch(
        massG,
        made ->
            new BatchLine(
                "B-1",
                "black",
                "water-based",
                massG,
                List.of(),
                0,
                0,
                0,
                NOVEMBER,
                NOVEMBER,
                NOVEMBER,
                NOVEMBER,
                null,
                0,
                massG - 374,
                made.runs(),
                made.uses(),
                BatchLine.STOCK,
                null));
  }

  private static PlanSheet blackBatch(int massG, UnaryOperator<BatchLine> change) {
    PlanSheet sheet = GoodPlan.sheet();
    PlanSheet other = Edit.with(sheet, "batches", Edit.at(sheet.batches(), 0, change::apply));
    String name = other.batches().get(0).id();
    return Edit.with(
        other,
        "runs",
        other.runs().stream()
            .map(
                run ->
                    run.batches().contains("b-black")
                        ? Edit.with(run, "batches", List.of(name))
                        : run)
            .toList());
  }

  @Test
  void aContainerFromTheShelfIsGoodInk() {
    assertThat(rules(fromTheShelf(500), shelf(500, false))).isEmpty();
  }

  @Test
  void aContainerThatIsNotThereOrHoldsLessIsFound() {
    assertThat(rules(fromTheShelf(500), InkReport.NOTHING)).containsExactly("R13");
    assertThat(rules(fromTheShelf(500), shelf(300, false))).containsExactly("R13");
  }

  @Test
  void mixingWhileTheShelfIsFullIsFound() {
    assertThat(rules(GoodPlan.sheet(), shelf(500, false))).containsExactly("R13");
    assertThat(rules(GoodPlan.sheet(), shelf(90, false))).as("as good as empty").isEmpty();
  }

  @Test
  void leftoversThatOnceHadAgentOnDarkClothAreFound() {
    double darkest =
        SmallShop.orders().stream().mapToDouble(o -> o.garments().lightness()).min().orElseThrow();
    assertThat(darkest).isLessThan(60);
    assertThat(rules(fromTheShelf(500), shelf(500, true))).containsExactly("R13");
  }

  @Test
  void aBatchThatIsGoneStillServingIsFound() {
    MarkedBatch gone = new MarkedBatch("b-sun", null, true, 0);
    InkReport told = new InkReport(List.of(gone), List.of(), List.of());
    assertThat(rules(GoodPlan.sheet(), told)).containsExactly("R13");
  }

  @Test
  void anotherVersionOfTheRecipeIsFound() {
    InkReport told = new InkReport(List.of(), List.of(), List.of(), Map.of("sun", 3));
    assertThat(rules(GoodPlan.sheet(), told)).containsExactly("R9");
  }
}
