package org.potlife.plan.list;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;

/**
 * Ink that was activated for the plan before and would be thrown away by this one: its clock runs
 * and nobody draws it.
 *
 * @param grams more than the plan before would have lost, g
 * @param useBy when it must be gone
 * @param runs names of the runs that would have drawn from it
 */
public record InkLoss(
    String batch, String ink, int grams, OffsetDateTime useBy, List<String> runs, String text) {

  /** The batches that were activated before the planning and lose more, by when they end. */
  static List<InkLoss> between(PlanIndex plan, PlanSheet before) {
    Map<String, BatchLine> old = new HashMap<>();
    before.batches().forEach(batch -> old.put(batch.id(), batch));
    List<InkLoss> losses = new ArrayList<>();
    for (BatchLine batch : plan.sheet().batches()) {
      BatchLine was = old.get(batch.id());
      boolean runsOut =
          batch.useBy() != null && !batch.activatedAt().isAfter(plan.sheet().plannedAt());
      if (was != null && runsOut && batch.reserveG() > was.reserveG()) {
        losses.add(loss(plan, was, batch));
      }
    }
    losses.sort(java.util.Comparator.comparing(loss -> loss.useBy().toInstant()));
    return losses;
  }

  private static InkLoss loss(PlanIndex plan, BatchLine was, BatchLine batch) {
    Set<String> still = batch.uses().stream().map(UseLine::run).collect(Collectors.toSet());
    List<String> runs =
        was.uses().stream()
            .map(UseLine::run)
            .filter(run -> !still.contains(run))
            .distinct()
            .map(plan::runName)
            .toList();
    int grams = batch.reserveG() - was.reserveG();
    return new InkLoss(
        batch.id(),
        batch.ink(),
        grams,
        batch.useBy(),
        runs,
        "%d g of %s in %s would be lost: it must be gone by %s%s."
            .formatted(
                grams,
                batch.ink(),
                batch.id(),
                Spoken.time(batch.useBy()),
                runs.isEmpty() ? "" : " and was for " + String.join("; ", runs)));
  }
}
