package org.potlife.audit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.ink.InkReport;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UseLine;

/** What the ink room had told when the plan was made, and what of the published plan it upsets. */
final class InkReports {

  private final Map<String, MarkedBatch> marked = new HashMap<>();
  private final List<StockInk> stock;
  private final Map<String, Integer> recipeVersions;
  private final boolean learned;

  InkReports(InkReport report) {
    report.marked().forEach(mark -> marked.put(mark.batch(), mark));
    learned = !report.learned().isEmpty();
    recipeVersions = report.recipeVersions();
    stock =
        report.stock().stream()
            .sorted(Comparator.comparing((StockInk ink) -> ink.since().toInstant()))
            .toList();
  }

  /** Whether closed runs have taught other grams per piece than the estimate. */
  boolean hasLearned() {
    return learned;
  }

  /** Version of the ink's recipe in force; null when nobody counts. */
  Integer recipeVersion(String ink) {
    return recipeVersions.get(ink);
  }

  boolean isMarked(String batch) {
    return marked.containsKey(batch);
  }

  boolean isGone(String batch) {
    return isMarked(batch) && marked.get(batch).gone();
  }

  /** When the clock of a batch really began, epoch seconds. */
  Optional<Long> activatedAt(String batch) {
    return Optional.ofNullable(marked.get(batch))
        .map(MarkedBatch::activatedAt)
        .map(time -> time.toEpochSecond());
  }

  Optional<StockInk> container(String name) {
    return stock.stream().filter(ink -> ink.container().equals(name)).findFirst();
  }

  /** Containers of an ink with something in them, the oldest first. */
  List<StockInk> containersOf(String ink) {
    return stock.stream().filter(c -> c.ink().equals(ink) && c.massG() > 0).toList();
  }

  /**
   * Runs of the published plan that were not begun and have lost ink: the batch is gone, or its
   * clock is another than was planned and does not cover what they draw.
   */
  List<String> withoutInk(List<RunLine> runs, List<BatchLine> batches, Instant plannedAt) {
    List<String> without = new ArrayList<>();
    for (RunLine run : runs) {
      if (run.setUpStart() == null || run.setUpStart().toInstant().isBefore(plannedAt)) {
        continue;
      }
      boolean lost =
          Completeness.there(run.batches()).stream()
              .flatMap(name -> batches.stream().filter(line -> name.equals(line.id())))
              .anyMatch(line -> isGone(line.id()) || !covers(line, run.id()));
      if (lost) {
        without.add(run.id());
      }
    }
    return without;
  }

  private boolean covers(BatchLine line, String run) {
    Optional<Long> began = activatedAt(line.id());
    if (began.isEmpty() || line.useBy() == null || line.activatedAt() == null) {
      return true;
    }
    long later = began.get() - line.activatedAt().toEpochSecond();
    for (UseLine use : Completeness.there(line.uses())) {
      boolean within =
          use.from() != null
              && use.to() != null
              && line.readyAt() != null
              && use.from().toEpochSecond() >= line.readyAt().toEpochSecond() + later
              && use.to().toEpochSecond() <= line.useBy().toEpochSecond() + later;
      if (run.equals(use.run()) && !within) {
        return false;
      }
    }
    return true;
  }
}
