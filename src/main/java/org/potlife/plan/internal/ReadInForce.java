package org.potlife.plan.internal;

import jakarta.persistence.EntityManager;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.potlife.plan.Plans;

/**
 * What is read from the plan in force, by plant. A plan never changes once it stands, so it is kept
 * until another comes into force.
 */
final class ReadInForce<T> {

  private record Kept<T>(String plan, Optional<T> read) {}

  private final Plans plans;
  private final EntityManager entities;
  private final Function<PlanEntity, Optional<T>> reading;
  private final Map<String, Kept<T>> byPlant = new ConcurrentHashMap<>();

  ReadInForce(Plans plans, EntityManager entities, Function<PlanEntity, Optional<T>> reading) {
    this.plans = plans;
    this.entities = entities;
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
      kept = new Kept<>(inForce.get(), reading.apply(plan));
      byPlant.put(plant, kept);
    }
    return kept.read();
  }
}
