package org.potlife.plan.internal;

import jakarta.persistence.EntityManager;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.potlife.plan.Plans;
import org.potlife.sheet.PlanSheet;

/**
 * What is read from the sheet of the plan in force, by plant. A sheet never changes once it stands,
 * so it is kept until another plan comes into force.
 */
final class SheetInForce<T> {

  private record Kept<T>(String plan, Optional<T> read) {}

  private final Plans plans;
  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Function<PlanSheet, T> reading;
  private final Map<String, Kept<T>> byPlant = new ConcurrentHashMap<>();

  SheetInForce(
      Plans plans, EntityManager entities, PlanMapping mapping, Function<PlanSheet, T> reading) {
    this.plans = plans;
    this.entities = entities;
    this.mapping = mapping;
    this.reading = reading;
  }

  /** Empty when no plan is in force. Called within a transaction. */
  Optional<T> find(String plant) {
    Optional<String> inForce = plans.findCurrentId(plant);
    if (inForce.isEmpty()) {
      return Optional.empty();
    }
    Kept<T> kept = byPlant.get(plant);
    if (kept == null || !kept.plan().equals(inForce.get())) {
      PlanEntity plan = entities.find(PlanEntity.class, inForce.get());
      kept = new Kept<>(inForce.get(), mapping.sheet(plan).map(reading));
      byPlant.put(plant, kept);
    }
    return kept.read();
  }
}
