package org.potlife.plan.list;

import java.util.List;
import java.util.Optional;
import org.potlife.plan.list.ActivationList.Batch;

/**
 * All about one bucket of ink.
 *
 * @param fate what becomes of its grams, in the plan
 * @param cautions what to keep in mind; empty for ink without agent
 */
public record BatchSheet(Batch batch, Fate fate, List<String> cautions) {

  /**
   * The grams of a batch without agent; {@code printG + screensG + reserveG} is its mass.
   *
   * @param printG onto garments, handling loss included, g
   * @param screensG left on the screens, g
   * @param reserveG what no run asks for, g
   */
  public record Fate(int printG, int screensG, int reserveG) {}

  /** The sheet of a batch of this plan. */
  public static Optional<BatchSheet> find(PlanIndex plan, String batch) {
    return plan.findBatch(batch)
        .map(line -> new ActivationMapping(plan).batch(line))
        .map(
            found ->
                new BatchSheet(
                    found,
                    fate(found),
                    found.activated() || found.lightOnly() ? InkCautions.lines() : List.of()));
  }

  private static Fate fate(Batch batch) {
    return new Fate(
        batch.uses().stream().mapToInt(ActivationList.Use::printG).sum(),
        batch.uses().stream().mapToInt(ActivationList.Use::chargeG).sum(),
        batch.reserveG());
  }
}
