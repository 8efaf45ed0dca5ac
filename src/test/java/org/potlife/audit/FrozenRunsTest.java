package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.audit.GoodPlan.CREST;
import static org.potlife.audit.GoodPlan.LIST;
import static org.potlife.audit.GoodPlan.STARS;
import static org.potlife.audit.GoodPlan.WAVE_1;
import static org.potlife.audit.GoodPlan.WAVE_2;
import static org.potlife.audit.GoodPlan.mon;
import static org.potlife.audit.GoodPlan.tue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.PlanScore;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;

/** A new plan beside a published one: the freeze window reaches to Tuesday 07:30. */
class FrozenRunsTest {

  private final PlanSheet published = GoodPlan.sheet();
  private final Audited replanned =
      freeze(Audited.good(), 810).sheet("frozen", List.of(STARS, CREST)).published(published);

  private static Audited freeze(Audited plan, int minutes) {
    return plan.shop(
        s -> Edit.with(s, "settings", Edit.with(s.settings(), "freezeMinutes", minutes)));
  }

  private Audited publishedRun(String id, Object... change) {
    return replanned.published(
        Edit.with(
            published,
            "runs",
            Edit.each(
                published.runs(), (RunLine r) -> r.id().equals(id) ? Edit.with(r, change) : r)));
  }

  private Audited publishedBatch(String id, Object... change) {
    return replanned.published(
        Edit.with(
            published,
            "batches",
            Edit.each(
                published.batches(),
                (BatchLine b) -> b.id().equals(id) ? Edit.with(b, change) : b)));
  }

  private Audited publishedScreen(String id, Object... change) {
    return replanned.published(
        Edit.with(
            published,
            "screens",
            Edit.each(
                published.screens(),
                (ScreenLine s) -> s.id().equals(id) ? Edit.with(s, change) : s)));
  }

  @Test
  void runsInsideTheWindowThatStandAsPublishedAreFine() {
    assertThat(replanned.report().findings()).isEmpty();
  }

  @Test
  void theTextOfTheOffsetDoesNotMatterOnlyTheInstant() {
    var utc = published.runs().get(0).printEnd().withOffsetSameInstant(java.time.ZoneOffset.UTC);
    assertThat(publishedRun(CREST, "printEnd", utc).brokenRules()).isEmpty();
  }

  @Test
  void aRunInsideTheWindowMustBeCalledFrozen() {
    assertThat(replanned.sheet("frozen", List.of(STARS)).brokenRules()).containsExactly("R22");
  }

  @Test
  void aRunOutsideTheWindowMustNotBeCalledFrozen() {
    assertThat(replanned.sheet("frozen", List.of(STARS, CREST, LIST)).brokenRules())
        .containsExactly("R22");
  }

  @Test
  void aFrozenRunMustNotMove() {
    assertThat(publishedRun(CREST, "printEnd", tue("07:38:00")).brokenRules())
        .containsExactly("R22");
  }

  @Test
  void aRunOutsideTheWindowMayMove() {
    assertThat(publishedRun(WAVE_1, "printEnd", tue("08:50:00")).brokenRules()).isEmpty();
  }

  @Test
  void theScreensOfAFrozenRunStay() {
    assertThat(publishedScreen("crest-sun", "readyAt", mon("21:00:00")).brokenRules())
        .containsExactly("R22");
  }

  @Test
  void theBatchesOfAFrozenRunStay() {
    assertThat(publishedBatch("b-sun", "mixFrom", tue("06:40:00")).brokenRules())
        .containsExactly("R22");
    assertThat(publishedBatch("b-sun", "massG", 300).brokenRules()).containsExactly("R22");
  }

  @Test
  void aBatchThatAlsoServesLaterRunsMayChangeItsMassButNotWhatTheFrozenRunGets() {
    assertThat(publishedBatch("b-brick-1", "massG", 1500).brokenRules()).isEmpty();
    var uses = published.batches().get(2).uses();
    var other = Edit.at(uses, 0, use -> Edit.with(use, "printG", 90));
    assertThat(publishedBatch("b-brick-1", "uses", other).brokenRules()).containsExactly("R22");
  }

  @Test
  void aFrozenRunThatIsNotOnTheNewPlanIsFound() {
    Audited extra =
        replanned.published(
            Edit.with(
                published,
                "runs",
                Edit.plus(published.runs(), Edit.with(published.runs().get(3), "id", "gone"))));
    assertThat(extra.brokenRules()).containsExactly("R22");
  }

  @Test
  void whatRunsAlreadyLiesBeforeTheNewPlanningAndStays() {
    Audited inTheDay =
        freeze(Audited.good(), 1440)
            .sheet(
                "plannedAt", tue("07:05:00"), "frozen", List.of(STARS, CREST, LIST, WAVE_1, WAVE_2))
            .published(published);
    assertThat(inTheDay.report().findings()).isEmpty();
  }

  @Test
  void aFrozenRunIsMeasuredAgainstTheRunThatWasPublishedBeforeItAlthoughThatIsGone() {
    Audited afterShipping =
        freeze(Audited.good(), 1440)
            .batch(
                "b-black",
                b ->
                    Edit.with(
                        b,
                        "massG",
                        240,
                        "reserveG",
                        57,
                        "components",
                        List.of(
                            Edit.with(b.components().get(0), "massG", 220),
                            Edit.with(b.components().get(1), "massG", 20)),
                        "runs",
                        List.of(LIST),
                        "uses",
                        Edit.without(b.uses(), 0)))
            .published(published);
    PlanSheet now =
        Edit.with(
            afterShipping.sheet(),
            "plannedAt",
            tue("07:30:00"),
            "runs",
            Edit.without(published.runs(), 3),
            "screens",
            Edit.without(published.screens(), 4),
            "belts",
            Edit.without(published.belts(), 0),
            "late",
            List.of(),
            "score",
            new PlanScore(1, 0, 0, 0, Map.of()),
            "frozen",
            List.of(CREST, LIST, WAVE_1, WAVE_2));
    Audited shipped =
        new Audited(
            afterShipping.shop(),
            Edit.without(SmallShop.orders(), 2),
            now,
            afterShipping.published());
    assertThat(shipped.report().findings()).isEmpty();
  }
}
