package org.potlife.web.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.LateList;
import org.potlife.plan.list.PlanDrawing;
import org.potlife.sheet.PlanSheet.PlanScore;

/**
 * What lies on the planner's desk.
 *
 * @param plan the plan that is shown; null when the plant has none
 * @param recent the plant's latest plans, the newest first
 * @param currency of all costs
 * @param dayToPlan the day that a new plan is most likely for
 * @param longestSolveSeconds upper bound for one search, seconds
 * @param day the day to open the drawing at
 * @param drawing the plan as it is drawn; null before it stands
 * @param late what it cannot keep; null before it stands
 * @param changes what it changes on the plan before; null when there was none
 * @param before what the plan before is worth; null when there was none
 */
public record PlanDesk(
    PlanSummary plan,
    List<PlanSummary> recent,
    String currency,
    LocalDate dayToPlan,
    int longestSolveSeconds,
    LocalDate day,
    PlanDrawing drawing,
    LateList late,
    ChangeList changes,
    PlanScore before) {

  private static final List<String> PARTS =
      List.of(
          "ask",
          "marks",
          "notices",
          "say",
          "times",
          "plan/about",
          "plan/curve",
          "plan/drawing",
          "plan/instruct",
          "plan/instructions",
          "plan/layout",
          "plan/solve",
          "plan/tiles");

  /**
   * Scripts that the page's own one needs, so that a browser need not read it first to ask for
   * them.
   */
  public List<String> parts() {
    return PARTS;
  }

  /** Whether the plan may be published. */
  public boolean draft() {
    return plan != null && plan.state() == PlanState.DRAFT;
  }

  public boolean solving() {
    return plan != null && plan.state() == PlanState.SOLVING;
  }

  /** Whether there is something to draw. */
  public boolean standing() {
    return drawing != null;
  }

  /** The runs by press and time. */
  public List<PlanDrawing.Run> rows() {
    return drawing.runs().stream()
        .sorted(
            Comparator.comparing(PlanDrawing.Run::press)
                .thenComparing(run -> run.setUpStart().toInstant()))
        .toList();
  }

  /** Runs by the names that people use. */
  public String names(List<String> ids) {
    return String.join("; ", ids.stream().map(this::name).toList());
  }

  private String name(String id) {
    return drawing.runs().stream()
        .filter(run -> run.id().equals(id))
        .findFirst()
        .map(PlanDrawing.Run::name)
        .orElse(id);
  }

  /** What would help a late order. */
  public String remedy(LateList.Late late) {
    return Remedy.ofLate(late.line().cause());
  }

  /** What would help a print without a place. */
  public String remedy(LateList.Unplaced unplaced) {
    return Remedy.ofUnplaced(unplaced.line().rule());
  }
}
