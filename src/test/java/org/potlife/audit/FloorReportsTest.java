package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.audit.GoodPlan.CREST;
import static org.potlife.audit.GoodPlan.LIST;
import static org.potlife.audit.GoodPlan.STARS;
import static org.potlife.audit.GoodPlan.WAVE_1;
import static org.potlife.audit.GoodPlan.WAVE_2;
import static org.potlife.audit.GoodPlan.tue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.ink.InkReport;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Shop;

/** The audit knows what the press crew had told: a plan that does not keep to it is found out. */
class FloorReportsTest {

  private final PlanSheet published = GoodPlan.sheet();

  /** Planned anew at 07:05 of the day, when STARS and CREST have begun; all else is frozen. */
  private final PlanSheet replanned =
      Edit.with(
          published,
          "plannedAt",
          tue("07:05:00"),
          "frozen",
          List.of(STARS, CREST, LIST, WAVE_1, WAVE_2));

  private static Shop shop() {
    Shop shop = SmallShop.shop();
    return Edit.with(shop, "settings", Edit.with(shop.settings(), "freezeMinutes", 1440));
  }

  private List<String> rules(PlanSheet sheet, FloorReport told) {
    return Audit.of(
            told.standing(shop()),
            SmallShop.orders(),
            sheet,
            Optional.of(published),
            RoomState.NOTHING,
            InkReport.NOTHING,
            told)
        .findings()
        .stream()
        .map(Finding::rule)
        .distinct()
        .toList();
  }

  private RunLine run(String id) {
    return published.runs().stream().filter(run -> run.id().equals(id)).findFirst().orElseThrow();
  }

  private RunReport told(
      String id,
      OffsetDateTime started,
      OffsetDateTime counted,
      int good,
      int spoiled,
      boolean end) {
    RunLine run = run(id);
    return new RunReport(
        id,
        run.order(),
        run.design(),
        run.position(),
        run.lot(),
        run.press(),
        run.quantity(),
        started == null ? counted : started,
        started,
        null,
        counted,
        good,
        spoiled,
        end ? counted : null);
  }

  private static FloorReport report(RunReport... runs) {
    return new FloorReport(List.of(runs), List.of(), List.of());
  }

  @Test
  void aStartThatIsToldAsPublishedChangesNothing() {
    FloorReport told = report(told(STARS, run(STARS).setUpStart(), null, 0, 0, false));
    assertThat(rules(replanned, told)).isEmpty();
  }

  @Test
  void aRunThatGoesOnAsPublishedThoughItsCountIsBehindIsFound() {
    FloorReport told = report(told(STARS, run(STARS).setUpStart(), tue("06:51:00"), 100, 3, false));
    assertThat(rules(replanned, told)).contains("R22");
  }

  @Test
  void aLateStartThatThePlanDoesNotKnowIsFound() {
    FloorReport told = report(told(CREST, tue("07:04:00"), null, 0, 0, false));
    assertThat(rules(replanned, told)).contains("R22");
  }

  @Test
  void aRunLeftOnAPressThatIsDownIsFound() {
    FloorReport told =
        new FloorReport(
            List.of(),
            List.of(new Downtime("P2", null, tue("07:20:00"), tue("12:00:00"), null)),
            List.of());
    assertThat(rules(replanned, told)).contains("R22", "R3");
  }

  @Test
  void aRunThatShouldHaveBegunWhereTheCrewTellsIsFound() {
    PlanSheet later = Edit.with(replanned, "plannedAt", tue("07:30:00"));
    FloorReport told = report(told(WAVE_2, tue("06:50:00"), null, 0, 0, false));
    assertThat(rules(later, told)).contains("R22");
  }

  @Test
  void piecesThatAreMissingWithoutBeingListedAreFound() {
    RunLine stars = run(STARS);
    FloorReport told = report(told(STARS, stars.setUpStart(), stars.printEnd(), 200, 109, true));
    PlanSheet later = Edit.with(replanned, "plannedAt", tue("07:20:00"));
    assertThat(rules(later, told)).contains("R20");
  }
}
