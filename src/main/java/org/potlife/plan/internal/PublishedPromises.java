package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.potlife.order.Promise;
import org.potlife.order.PromiseLookup;
import org.potlife.plan.Plans;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * Promises from the plan in force. A sheet never changes once it stands, so what is read from it is
 * kept until another plan comes into force.
 */
@ApplicationScoped
class PublishedPromises implements PromiseLookup {

  private record Kept(String plan, Map<String, Promise> byOrder) {}

  private final Plans plans;
  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Map<String, Kept> byPlant = new ConcurrentHashMap<>();

  @Inject
  PublishedPromises(Plans plans, EntityManager entities, PlanMapping mapping) {
    this.plans = plans;
    this.entities = entities;
    this.mapping = mapping;
  }

  @Override
  @Transactional
  public Optional<Promise> findPromise(String plant, String reference) {
    Optional<String> inForce = plans.findCurrentId(plant);
    if (inForce.isEmpty()) {
      return Optional.empty();
    }
    Kept kept = byPlant.get(plant);
    if (kept == null || !kept.plan().equals(inForce.get())) {
      kept = new Kept(inForce.get(), read(inForce.get()));
      byPlant.put(plant, kept);
    }
    return Optional.ofNullable(kept.byOrder().get(reference));
  }

  private Map<String, Promise> read(String plan) {
    return mapping
        .sheet(entities.find(PlanEntity.class, plan))
        .map(PublishedPromises::promises)
        .orElse(Map.of());
  }

  /** The promise of every order on the sheet. */
  static Map<String, Promise> promises(PlanSheet sheet) {
    Map<String, Promise> promises = new HashMap<>();
    for (RunLine run : sheet.runs()) {
      promises.merge(
          run.order(), new Promise(run.offBelt(), 0, null), PublishedPromises::laterFinish);
    }
    for (LateLine late : sheet.late()) {
      promises.put(late.order(), new Promise(late.plannedFinish(), late.minutes(), late.cause()));
    }
    // an order with a print that has no place is not finished at all
    for (UnplacedLine unplaced : sheet.unplaced()) {
      promises.put(
          unplaced.order(),
          new Promise(
              null, 0, unplaced.rule() + ": " + unplaced.design() + ": " + unplaced.cause()));
    }
    return promises;
  }

  private static Promise laterFinish(Promise one, Promise other) {
    Comparator<OffsetDateTime> inTime = Comparator.comparing(OffsetDateTime::toInstant);
    return inTime.compare(one.plannedFinish(), other.plannedFinish()) >= 0 ? one : other;
  }
}
