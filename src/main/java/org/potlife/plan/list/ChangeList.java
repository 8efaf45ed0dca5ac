package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/**
 * What a plan changes on the one before, for a planner who must decide whether to publish it. Runs
 * that had begun before the planning cannot move and are left out.
 *
 * @param against id of the plan before; null when there was none
 * @param runs runs of the plan before that had not begun and are still wanted
 * @param movedPercent share of these that start at another time or on another press, percent
 * @param pressChanges how many of these change the press
 * @param meanWeightedShiftMinutes mean over these of the shift of the start, each divided by the
 *     root of one plus the hours until the old start, minutes (after Rangsaritratsamee et al. 2004)
 * @param moved runs that move, by their new start
 * @param added ids of runs that the plan before did not have
 * @param gone ids of runs that have no place or are no longer wanted
 * @param promises orders whose finish or lateness changes
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ChangeList(
    String against,
    int runs,
    double movedPercent,
    int pressChanges,
    double meanWeightedShiftMinutes,
    List<Move> moved,
    List<String> added,
    List<String> gone,
    List<Promised> promises) {

  /**
   * A run that moves.
   *
   * @param shiftMinutes later than before, minutes; negative when earlier
   * @param why what it waits for now, longest first; empty when nothing holds it
   */
  public record Move(
      String run,
      String name,
      String fromPress,
      OffsetDateTime fromStart,
      String toPress,
      OffsetDateTime toStart,
      long shiftMinutes,
      List<String> why) {}

  /**
   * An order whose promise changes.
   *
   * @param finishBefore last garment off the belt in the plan before
   * @param finish the same in this plan
   */
  public record Promised(
      String order,
      String customer,
      OffsetDateTime finishBefore,
      OffsetDateTime finish,
      long lateMinutesBefore,
      long lateMinutes) {}

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
    int stays = 0;
    int pressChanges = 0;
    double weighted = 0;
    for (RunLine run : now.runs()) {
      RunLine was = old.remove(run.id());
      if (was == null) {
        if (!run.setUpStart().isBefore(now.plannedAt()) && !hadRun(before, run)) {
          added.add(run.id());
        }
        continue;
      }
      stays++;
      pressChanges += run.press().equals(was.press()) ? 0 : 1;
      weighted += weightedShift(was, run, now.plannedAt());
      if (!run.press().equals(was.press()) || !run.setUpStart().isEqual(was.setUpStart())) {
        moved.add(move(plan, was, run));
      }
    }
    moved.sort(Comparator.comparing(move -> move.toStart().toInstant()));
    return new ChangeList(
        against,
        stays,
        stays == 0 ? 0 : Math.round(1000.0 * moved.size() / stays) / 10.0,
        pressChanges,
        stays == 0 ? 0 : Math.round(10 * weighted / stays) / 10.0,
        moved,
        added.stream().sorted().toList(),
        old.keySet().stream().sorted().toList(),
        before.map(sheet -> promises(sheet, now)).orElse(List.of()));
  }

  private static boolean hadRun(Optional<PlanSheet> before, RunLine run) {
    return before.stream()
        .flatMap(sheet -> sheet.runs().stream())
        .anyMatch(other -> other.id().equals(run.id()));
  }

  private static double weightedShift(RunLine was, RunLine run, OffsetDateTime plannedAt) {
    double minutes = Math.abs(minutes(was.setUpStart(), run.setUpStart()));
    double hoursUntil = Math.max(0, minutes(plannedAt, was.setUpStart()) / 60.0);
    return minutes / Math.sqrt(1 + hoursUntil);
  }

  private static long minutes(OffsetDateTime from, OffsetDateTime to) {
    return Math.round(Duration.between(from, to).toSeconds() / 60.0);
  }

  private static Move move(PlanIndex plan, RunLine was, RunLine run) {
    return new Move(
        run.id(),
        plan.runName(run.id()),
        was.press(),
        was.setUpStart(),
        run.press(),
        run.setUpStart(),
        minutes(was.setUpStart(), run.setUpStart()),
        run.waits().stream()
            .sorted(Comparator.comparingLong(WaitLine::minutes).reversed())
            .map(wait -> WaitWords.of(plan, wait))
            .distinct()
            .toList());
  }

  private static List<Promised> promises(PlanSheet before, PlanSheet now) {
    Map<String, Promised> then = promised(before);
    List<Promised> changed = new ArrayList<>();
    promised(now)
        .forEach(
            (order, promise) -> {
              Promised was = then.get(order);
              if (was != null
                  && (minutes(was.finish(), promise.finish()) != 0
                      || was.lateMinutes() != promise.lateMinutes())) {
                changed.add(
                    new Promised(
                        order,
                        promise.customer(),
                        was.finish(),
                        promise.finish(),
                        was.lateMinutes(),
                        promise.lateMinutes()));
              }
            });
    changed.sort(
        Comparator.comparingLong((Promised p) -> p.lateMinutesBefore() - p.lateMinutes())
            .thenComparing(Promised::order));
    return changed;
  }

  private static Map<String, Promised> promised(PlanSheet sheet) {
    Map<String, Long> late = new HashMap<>();
    for (LateLine line : sheet.late()) {
      late.put(line.order(), line.minutes());
    }
    Map<String, Promised> promised = new HashMap<>();
    for (RunLine run : sheet.runs()) {
      Promised own =
          new Promised(
              run.order(),
              run.customer(),
              null,
              run.offBelt(),
              0,
              late.getOrDefault(run.order(), 0L));
      promised.merge(run.order(), own, (a, b) -> a.finish().isBefore(b.finish()) ? b : a);
    }
    return promised;
  }
}
