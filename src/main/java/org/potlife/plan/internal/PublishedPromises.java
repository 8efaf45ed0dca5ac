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
import org.potlife.order.Promise;
import org.potlife.order.PromiseLookup;
import org.potlife.plan.Plans;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/** Promises from the plan in force. */
@ApplicationScoped
class PublishedPromises implements PromiseLookup {

  private final ReadInForce<Map<String, Promise>> inForce;

  @Inject
  PublishedPromises(Plans plans, EntityManager entities, PlanMapping mapping) {
    inForce =
        new ReadInForce<>(plans, entities, e -> mapping.sheet(e).map(PublishedPromises::promises));
  }

  @Override
  @Transactional
  public Optional<Promise> findPromise(String plant, String reference) {
    return inForce.find(plant).map(promises -> promises.get(reference));
  }

  @Override
  @Transactional
  public Map<String, Promise> listPromises(String plant) {
    return Map.copyOf(inForce.find(plant).orElse(Map.of()));
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
