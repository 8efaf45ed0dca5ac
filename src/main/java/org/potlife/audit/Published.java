package org.potlife.audit;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;

/** The plan in force, by name; lines without a name or time are as if they were not there. */
final class Published {

  private final Map<String, RunLine> runs;
  private final Map<String, BatchLine> batches;
  private final Map<String, ScreenLine> screens;
  private final Set<String> frozenBefore;
  private final long plannedAt;

  Published(PlanSheet sheet) {
    runs = byName(sheet.runs(), RunLine::id);
    runs.values().removeIf(run -> run.setUpStart() == null);
    batches = byName(sheet.batches(), BatchLine::id);
    screens = byName(sheet.screens(), ScreenLine::id);
    plannedAt = sheet.plannedAt() == null ? Long.MIN_VALUE : sheet.plannedAt().toEpochSecond();
    frozenBefore = Set.copyOf(Completeness.there(sheet.frozen()));
  }

  private static <T> Map<String, T> byName(List<T> lines, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    for (T line : lines == null ? List.<T>of() : lines) {
      if (line != null && name.apply(line) != null) {
        map.putIfAbsent(name.apply(line), line);
      }
    }
    return map;
  }

  /** Runs of open orders that start before the end of the freeze window. */
  List<RunLine> frozen(OffsetDateTime freezeEnd, Set<String> openOrders) {
    return runs.values().stream()
        .filter(run -> run.setUpStart().isBefore(freezeEnd) && openOrders.contains(run.order()))
        .toList();
  }

  /** When it was planned, epoch seconds. */
  long plannedAt() {
    return plannedAt;
  }

  List<ScreenLine> screens() {
    return List.copyOf(screens.values());
  }

  Optional<RunLine> run(String id) {
    return Optional.ofNullable(runs.get(id));
  }

  Optional<ScreenLine> screen(String id) {
    return Optional.ofNullable(screens.get(id));
  }

  Optional<BatchLine> batch(String id) {
    return Optional.ofNullable(batches.get(id));
  }

  /** When the first work on a screen begins, epoch seconds. */
  static Optional<Long> begunAt(ScreenLine screen) {
    return Completeness.there(screen.steps()).stream()
        .filter(step -> step.from() != null)
        .map(step -> step.from().toEpochSecond())
        .min(Comparator.naturalOrder());
  }

  List<RunLine> runs() {
    return List.copyOf(runs.values());
  }

  List<BatchLine> batches() {
    return List.copyOf(batches.values());
  }

  /**
   * The screens that were on the press when this run was to be set up, by station; empty list on a
   * bare press, nothing when the sheet does not tell: a run that was frozen then already may have
   * come after one that is gone.
   */
  Optional<List<ScreenKey>> screensBefore(String id) {
    RunLine run = runs.get(id);
    if (run == null || frozenBefore.contains(id)) {
      return Optional.empty();
    }
    Optional<RunLine> before =
        runs.values().stream()
            .filter(other -> !other.id().equals(id) && Objects.equals(other.press(), run.press()))
            .filter(other -> other.setUpStart().isBefore(run.setUpStart()))
            .max(Comparator.comparing(other -> other.setUpStart().toInstant()));
    return before.isEmpty() || wentElsewhere(before.get(), run)
        ? Optional.of(List.of())
        : keys(before.get());
  }

  /** Whether the screens that both runs need were on another press between them. */
  private boolean wentElsewhere(RunLine before, RunLine run) {
    Optional<List<ScreenKey>> wanted = keys(run);
    return wanted.isPresent()
        && wanted.equals(keys(before))
        && runs.values().stream()
            .filter(other -> wanted.equals(keys(other)))
            .filter(other -> !Objects.equals(other.press(), run.press()))
            .anyMatch(
                other ->
                    other.setUpStart().isAfter(before.setUpStart())
                        && other.setUpStart().isBefore(run.setUpStart()));
  }

  private Optional<List<ScreenKey>> keys(RunLine run) {
    List<ScreenKey> keys = new ArrayList<>();
    for (String id : run.screens() == null ? List.<String>of() : run.screens()) {
      ScreenLine screen = screens.get(id);
      if (screen == null) {
        return Optional.empty();
      }
      keys.add(ScreenKey.of(screen));
    }
    return Optional.of(keys);
  }
}
