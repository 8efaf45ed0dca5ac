package org.potlife.plan.list;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.ink.Component;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;

/** What the ink room should look at twice before it weighs or hands out a batch. */
final class BatchWarnings {

  private final PlanIndex plan;
  private final BatchLine batch;
  private final List<String> lines = new ArrayList<>();

  private BatchWarnings(PlanIndex plan, BatchLine batch) {
    this.plan = plan;
    this.batch = batch;
  }

  static List<String> of(PlanIndex plan, BatchLine batch) {
    BatchWarnings warnings = new BatchWarnings(plan, batch);
    Optional<Ink> ink = plan.findInk(batch.ink());
    ink.ifPresent(warnings::smallComponents);
    ink.flatMap(known -> plan.shop().findInkSystem(known.system()))
        .ifPresent(warnings::agentOutsideLimits);
    warnings.closeToUseBy();
    return List.copyOf(warnings.lines);
  }

  /** A share below one step of the scale is rounded to nothing or to too much. */
  private void smallComponents(Ink ink) {
    int stepG = plan.shop().inkRoom().scaleStepG();
    for (Component component : ink.recipe()) {
      double shareG = batch.massG() * component.percent() / 100;
      if (shareG < stepG && names(component)) {
        lines.add(
            "%s: %.1f g is below the scale's step of %d g. Weigh it on a finer scale."
                .formatted(component.name(), shareG, stepG));
      }
    }
  }

  private boolean names(Component component) {
    return batch.components().stream().anyMatch(line -> line.name().equals(component.name()));
  }

  private void agentOutsideLimits(InkSystem system) {
    double percent = 100.0 * batch.agentG() / Math.max(1, batch.massG());
    if (system.activated()
        && (percent < system.agentMinPercent() || percent > system.agentMaxPercent())) {
      lines.add(
          "agent: %d g are %.1f %%, outside %.1f to %.1f %%: no step of the scale lies between."
              .formatted(
                  batch.agentG(), percent, system.agentMinPercent(), system.agentMaxPercent()));
    }
  }

  private void closeToUseBy() {
    if (batch.useBy() == null) {
      return;
    }
    int leastMinutes = plan.shop().inkRoom().useByWarningMinutes();
    for (UseLine use : batch.uses()) {
      long minutes = Duration.between(use.to(), batch.useBy()).toMinutes();
      if (minutes < leastMinutes) {
        lines.add(
            "%s takes the last of it %s before it must be gone. If the press stops, discard."
                .formatted(
                    plan.runName(use.run()),
                    minutes == 0 ? "less than a minute" : minutes + " min"));
      }
    }
  }
}
