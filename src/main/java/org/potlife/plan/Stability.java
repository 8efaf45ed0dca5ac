package org.potlife.plan;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/**
 * How far a plan is from the one before, over the runs that both have and that had not begun when
 * it was made.
 *
 * @param runs number of these
 * @param runsMoved those that start at another time or on another press
 * @param movedPercent their share, percent
 * @param pressChanges those that change the press
 * @param swappedOrders neighbours on a press that stood the other way round on it
 * @param meanWeightedShiftMinutes mean of the shift of the start, each divided by the root of one
 *     plus the hours until the old start, minutes (after Rangsaritratsamee et al. 2004)
 */
public record Stability(
    int runs,
    int runsMoved,
    double movedPercent,
    int pressChanges,
    int swappedOrders,
    double meanWeightedShiftMinutes) {

  /** Nothing to compare. */
  public static final Stability NOTHING = new Stability(0, 0, 0, 0, 0, 0);

  /** A plan against the one before. */
  public static Stability of(PlanSheet before, PlanSheet now) {
    Map<String, RunLine> old = new HashMap<>();
    before.runs().stream()
        .filter(run -> !run.setUpStart().isBefore(now.plannedAt()))
        .forEach(run -> old.put(run.id(), run));
    List<RunLine> both = now.runs().stream().filter(run -> old.containsKey(run.id())).toList();
    int moved = 0;
    int pressChanges = 0;
    double weighted = 0;
    for (RunLine run : both) {
      RunLine was = old.get(run.id());
      moved += moved(was, run) ? 1 : 0;
      pressChanges += run.press().equals(was.press()) ? 0 : 1;
      weighted += weightedShiftMinutes(was, run, now.plannedAt());
    }
    int runs = both.size();
    return new Stability(
        runs,
        moved,
        runs == 0 ? 0 : Math.round(1000.0 * moved / runs) / 10.0,
        pressChanges,
        swapped(old, now),
        runs == 0 ? 0 : Math.round(10 * weighted / runs) / 10.0);
  }

  /** Whether a run starts at another time or on another press. */
  public static boolean moved(RunLine was, RunLine run) {
    return !run.press().equals(was.press()) || !run.setUpStart().isEqual(was.setUpStart());
  }

  private static double weightedShiftMinutes(RunLine was, RunLine run, OffsetDateTime plannedAt) {
    double minutes = Math.abs(seconds(was.setUpStart(), run.setUpStart())) / 60.0;
    double hoursUntil = seconds(plannedAt, was.setUpStart()) / 3600.0;
    return minutes / Math.sqrt(1 + hoursUntil);
  }

  private static long seconds(OffsetDateTime from, OffsetDateTime to) {
    return Duration.between(from, to).toSeconds();
  }

  private static int swapped(Map<String, RunLine> old, PlanSheet now) {
    int swapped = 0;
    Map<String, RunLine> lastOnPress = new HashMap<>();
    List<RunLine> inOrder =
        now.runs().stream()
            .sorted(
                Comparator.comparing((RunLine run) -> run.setUpStart().toInstant())
                    .thenComparing(run -> run.printEnd().toInstant()))
            .toList();
    for (RunLine run : inOrder) {
      RunLine last = lastOnPress.put(run.press(), run);
      RunLine was = old.get(run.id());
      RunLine lastWas = last == null ? null : old.get(last.id());
      if (was != null
          && lastWas != null
          && was.press().equals(run.press())
          && lastWas.press().equals(run.press())
          && was.setUpStart().isBefore(lastWas.setUpStart())) {
        swapped++;
      }
    }
    return swapped;
  }
}
