package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.plan.Stability;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/**
 * What a plan changes on the one before, for a planner who must decide whether to publish it. Runs
 * that had begun before the planning cannot move and are left out.
 *
 * @param against id of the plan before; null when there was none
 * @param stability how far it is from the plan before, in figures
 * @param moved runs that move, by their new start
 * @param added ids of runs that the plan before did not have
 * @param gone ids of runs that have no place or are no longer wanted
 * @param promises orders whose finish or lateness changes, the worst first
 * @param cost what it costs against the plan before; null when there was none
 * @param inkLost ink already activated that it would leave over
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ChangeList(
    String against,
    @JsonUnwrapped Stability stability,
    List<Move> moved,
    List<String> added,
    List<String> gone,
    List<PromiseChange> promises,
    CostChange cost,
    List<InkLoss> inkLost) {

  /**
   * A run that moves.
   *
   * @param shiftMinutes later than before, minutes; negative when earlier
   * @param why what it waits for now, longest first; empty when nothing holds it
   * @param text the move in a sentence
   */
  public record Move(
      String run,
      String name,
      String fromPress,
      OffsetDateTime fromStart,
      String toPress,
      OffsetDateTime toStart,
      long shiftMinutes,
      List<String> why,
      String text) {}

  /**
   * The changes of a plan.
   *
   * @param against id of the plan before, or null
   * @param before the plan before
   */
  public static ChangeList of(PlanIndex plan, String against, Optional<PlanSheet> before) {
    PlanSheet now = plan.sheet();
    Map<String, RunLine> old = new HashMap<>();
    before.ifPresent(
        sheet ->
            sheet.runs().stream()
                .filter(run -> !run.setUpStart().isBefore(now.plannedAt()))
                .forEach(run -> old.put(run.id(), run)));
    List<Move> moved = new ArrayList<>();
    List<String> added = new ArrayList<>();
    for (RunLine run : now.runs()) {
      RunLine was = old.remove(run.id());
      if (was == null) {
        if (!run.setUpStart().isBefore(now.plannedAt()) && !hadRun(before, run)) {
          added.add(run.id());
        }
      } else if (Stability.moved(was, run)) {
        moved.add(move(plan, was, run));
      }
    }
    moved.sort(Comparator.comparing(move -> move.toStart().toInstant()));
    return new ChangeList(
        against,
        before.map(sheet -> Stability.of(sheet, now)).orElse(Stability.NOTHING),
        moved,
        added.stream().sorted().toList(),
        old.keySet().stream().sorted().toList(),
        before.map(sheet -> PromiseChange.between(sheet, now)).orElse(List.of()),
        before
            .map(sheet -> CostChange.between(sheet.score(), now.score(), plan.shop().currency()))
            .orElse(null),
        before.map(sheet -> InkLoss.between(plan, sheet)).orElse(List.of()));
  }

  private static boolean hadRun(Optional<PlanSheet> before, RunLine run) {
    return before.stream()
        .flatMap(sheet -> sheet.runs().stream())
        .anyMatch(other -> other.id().equals(run.id()));
  }

  private static long minutes(OffsetDateTime from, OffsetDateTime to) {
    return Math.round(Duration.between(from, to).toSeconds() / 60.0);
  }

  private static Move move(PlanIndex plan, RunLine was, RunLine run) {
    long shift = minutes(was.setUpStart(), run.setUpStart());
    return new Move(
        run.id(),
        plan.runName(run.id()),
        was.press(),
        was.setUpStart(),
        run.press(),
        run.setUpStart(),
        shift,
        run.waits().stream()
            .sorted(Comparator.comparingLong(WaitLine::minutes).reversed())
            .map(wait -> WaitWords.of(plan, wait))
            .distinct()
            .toList(),
        "%s moves from %s, %s, to %s, %s%s."
            .formatted(
                plan.runName(run.id()),
                was.press(),
                Spoken.time(was.setUpStart()),
                run.press(),
                Spoken.time(run.setUpStart()),
                shifted(shift)));
  }

  private static String shifted(long minutes) {
    if (minutes == 0) {
      return "";
    }
    return ", " + Spoken.minutes(Math.abs(minutes)) + (minutes > 0 ? " later" : " earlier");
  }
}
