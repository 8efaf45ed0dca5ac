package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.ink.Ink;
import org.potlife.plan.list.ActivationList.Batch;
import org.potlife.plan.list.ActivationList.Use;
import org.potlife.plan.list.ActivationList.Weighing;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.ComponentLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UseLine;

/** Batches of the sheet to the ink room's list. */
final class ActivationMapping {

  private static final Comparator<BatchLine> WORKING_ORDER =
      Comparator.comparing((BatchLine b) -> b.mixFrom().toInstant())
          .thenComparing(b -> b.activateFrom().toInstant())
          .thenComparingInt(BatchLine::mixer)
          .thenComparing(BatchLine::id);

  private final PlanIndex plan;

  ActivationMapping(PlanIndex plan) {
    this.plan = plan;
  }

  ActivationList list(LocalDate day) {
    List<Batch> batches =
        plan.sheet().batches().stream()
            .filter(b -> isWorkOf(day, b))
            .sorted(WORKING_ORDER)
            .map(this::batch)
            .toList();
    int agentG = batches.stream().mapToInt(Batch::agentG).sum();
    return new ActivationList(
        day,
        agentG,
        batches,
        CuttingComparison.of(plan, day),
        agentG > 0 || batches.stream().anyMatch(Batch::lightOnly)
            ? InkCautions.lines()
            : List.of());
  }

  /**
   * A batch mixed the evening before and activated in the morning is work of both days; a container
   * is fetched from the shelf on the days of its uses.
   */
  private boolean isWorkOf(LocalDate day, BatchLine batch) {
    if (batch.fromStock()) {
      return batch.uses().stream().anyMatch(use -> plan.dayOf(use.from()).equals(day));
    }
    return plan.dayOf(batch.mixFrom()).equals(day) || plan.dayOf(batch.activateFrom()).equals(day);
  }

  Batch batch(BatchLine b) {
    boolean activated = b.agentG() > 0;
    return new Batch(
        b.id(),
        plan.chip(b.ink()),
        plan.findInk(b.ink()).map(Ink::system).orElse(""),
        b.process(),
        b.massG(),
        b.agentG(),
        b.agentPercent(),
        b.retarderG(),
        b.massG() + b.agentG(),
        components(b.components()),
        b.mixFrom(),
        activated ? b.activateFrom() : null,
        activated ? b.activatedAt() : null,
        b.readyAt(),
        activated ? b.useBy() : null,
        b.mixer(),
        b.reserveG(),
        b.uses().stream().map(use -> use(b, use)).toList(),
        b.fromStock(),
        b.fromStock() && plan.isLightOnly(b.id()),
        b.recipeVersion(),
        BatchWarnings.of(plan, b));
  }

  private static List<Weighing> components(List<ComponentLine> components) {
    List<Weighing> weighed = new ArrayList<>(components.size());
    int scaleG = 0;
    for (ComponentLine c : components) {
      scaleG += c.massG();
      weighed.add(new Weighing(c.name(), c.role(), c.massG(), scaleG));
    }
    return List.copyOf(weighed);
  }

  private Use use(BatchLine batch, UseLine use) {
    RunLine run = plan.getRun(use.run());
    return new Use(
        run.id(),
        run.press(),
        run.order(),
        run.customer(),
        run.design(),
        run.position(),
        plan.garments(run.order()),
        run.quantity(),
        use.from(),
        use.to(),
        use.printG() + use.chargeG(),
        use.printG(),
        use.chargeG(),
        plan.shop().inkRoom().lossPercent(),
        PerPiece.of(plan, run, batch.ink()));
  }
}
