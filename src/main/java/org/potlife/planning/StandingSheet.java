package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UseLine;

/**
 * A published plan as the floor has it.
 *
 * @param past a horizon that begins before its runs
 * @param standing runs that have begun, by id
 * @param changed of these, which go on otherwise than published
 * @param replanned runs that cannot stay
 */
record StandingSheet(
    Horizon past, Map<String, RunLine> standing, Set<String> changed, Set<String> replanned) {

  PlanSheet of(PlanSheet sheet) {
    Map<String, RunLine> published = new HashMap<>();
    List<RunLine> runs = new ArrayList<>();
    for (RunLine line : sheet.runs()) {
      published.put(line.id(), line);
      if (!replanned.contains(line.id())) {
        runs.add(standing.getOrDefault(line.id(), line));
      }
    }
    List<BatchLine> batches =
        sheet.batches().stream()
            .map(
                batch ->
                    batch.uses().stream().anyMatch(use -> changed.contains(use.run()))
                        ? batch.used(
                            batch.runs(),
                            batch.uses().stream().map(use -> moved(use, published)).toList())
                        : batch)
            .toList();
    return new PlanSheet(
        sheet.plannedAt(),
        sheet.day(),
        sheet.timeZone(),
        sheet.horizonEnd(),
        sheet.score(),
        runs,
        batches,
        sheet.screens(),
        sheet.belts(),
        sheet.late(),
        sheet.unplaced(),
        sheet.frozen());
  }

  /** A run that goes on otherwise draws its ink in the same proportion of its time. */
  private UseLine moved(UseLine use, Map<String, RunLine> published) {
    if (!changed.contains(use.run())) {
      return use;
    }
    RunLine before = published.get(use.run());
    RunLine after = standing.get(use.run());
    return new UseLine(
        use.run(),
        moved(use.from(), before, after),
        moved(use.to(), before, after),
        use.printG(),
        use.chargeG());
  }

  private OffsetDateTime moved(OffsetDateTime at, RunLine before, RunLine after) {
    int from = past.seconds(before.firstPieceAt());
    int length = Math.max(1, past.seconds(before.printEnd()) - from);
    int first = past.seconds(after.firstPieceAt());
    long newLength = past.seconds(after.printEnd()) - first;
    long share = Math.max(0, Math.min(length, past.seconds(at) - from));
    return past.time((int) (first + share * newLength / length));
  }
}
