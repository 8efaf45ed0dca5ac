package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.potlife.planning.Planned.audited;
import static org.potlife.testing.SmallShop.at;

import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.planning.BareSearch.Found;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.simulation.Problem;
import org.potlife.testing.SmallShop;

/** The demo plant's plan, made in the afternoon for the next day. */
class DemoPlanTest {

  private static final long EVALUATIONS = 5_000;

  private static PlanRequest request;
  private static PlanSheet plan;

  @BeforeAll
  static void makeThePlanWhichPassesTheAudit() {
    request =
        new PlanRequest(
            DemoPlant.shop(),
            DemoPlant.orders(SmallShop.DAY),
            SmallShop.DAY,
            at(-1, "14:00").toInstant(),
            Optional.empty(),
            2,
            7);
    plan = audited(request, SolveWatch.none()).sheet();
  }

  @Test
  void itIsNoWorseThanDispatchingByDueDate() {
    PlanSheet byDueDate = new SearchPlanner().earliestDueDate(request);
    assertThat(plan.score().unplaced()).isLessThanOrEqualTo(byDueDate.score().unplaced());
    assertThat(plan.score().weightedLateMinutes())
        .isLessThanOrEqualTo(byDueDate.score().weightedLateMinutes());
  }

  /** By number of evaluations, so that a machine under load finds the same. */
  @Test
  void aShortSearchMakesItFarLessLateThanTheBestDispatchRule() {
    Problem problem = BareSearch.problem(request);
    Found dispatched = BareSearch.dispatched(problem);
    Found found = BareSearch.improved(problem, dispatched, 7, EVALUATIONS);
    assertThat(found.outcome().unplaced()).isLessThanOrEqualTo(dispatched.outcome().unplaced());
    assertThat(found.outcome().weightedLateMinutes())
        .isLessThan(dispatched.outcome().weightedLateMinutes() / 4);
  }

  @Test
  void theTwoOrdersThatCannotBePrintedAreListedWithTheirCauses() {
    assertThat(plan.unplaced())
        .extracting(UnplacedLine::order, UnplacedLine::rule, UnplacedLine::cause)
        .containsExactlyInAnyOrder(
            tuple("DS-2101", "R18", "the trial print on this cloth has not passed yet"),
            tuple(
                "LL-2100",
                "R19",
                "the cloth does not discharge: 0 % cotton, discharge needs 80 %"));
  }

  @Test
  void theOrderPromisedForTheMorningIsLateAndThePlanSaysWhy() {
    LateLine late =
        plan.late().stream()
            .filter(line -> line.order().equals("KO-2099"))
            .findFirst()
            .orElseThrow();
    assertThat(late.minutes()).isPositive();
    assertThat(late.cause()).isNotBlank();
  }
}
