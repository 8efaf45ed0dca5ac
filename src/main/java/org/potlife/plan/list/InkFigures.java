package org.potlife.plan.list;

import java.util.List;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;

/**
 * Activated ink of a plan.
 *
 * @param activatedG ink with agent, the agent's mass included, g
 * @param lostG the part of it that no garment gets and that cannot go back to stock: reserve,
 *     rounding and what stays on the screens, g
 */
public record InkFigures(long activatedG, long lostG) {

  /** The figures of a plan. */
  public static InkFigures of(PlanSheet sheet) {
    List<BatchLine> activated = sheet.batches().stream().filter(b -> b.agentG() > 0).toList();
    return new InkFigures(
        activated.stream().mapToLong(b -> b.massG() + b.agentG()).sum(),
        activated.stream()
            .mapToLong(b -> b.reserveG() + b.uses().stream().mapToLong(UseLine::chargeG).sum())
            .sum());
  }
}
