package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.potlife.plan.Plans;
import org.potlife.room.KnownScreens;
import org.potlife.sheet.PlanSheet;

/**
 * The sheet of the plan in force, for those who only look something up on it. A sheet never changes
 * once it stands, so it is kept until another plan comes into force.
 */
@ApplicationScoped
class SheetInForce implements KnownScreens {

  private record Kept(String plan, Optional<PlanSheet> sheet) {}

  private final Plans plans;
  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Map<String, Kept> byPlant = new ConcurrentHashMap<>();

  @Inject
  SheetInForce(Plans plans, EntityManager entities, PlanMapping mapping) {
    this.plans = plans;
    this.entities = entities;
    this.mapping = mapping;
  }

  @Override
  @Transactional
  public Optional<PlanSheet> findSheet(String plant) {
    Optional<String> inForce = plans.findCurrentId(plant);
    if (inForce.isEmpty()) {
      return Optional.empty();
    }
    Kept kept = byPlant.get(plant);
    if (kept == null || !kept.plan().equals(inForce.get())) {
      kept = new Kept(inForce.get(), mapping.sheet(entities.find(PlanEntity.class, inForce.get())));
      byPlant.put(plant, kept);
    }
    return kept.sheet();
  }
}
