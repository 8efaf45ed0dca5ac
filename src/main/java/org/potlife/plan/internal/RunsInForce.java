package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.potlife.floor.KnownRuns;
import org.potlife.plan.Plans;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;

/** Runs of the plan in force. */
@ApplicationScoped
class RunsInForce implements KnownRuns {

  private final ReadInForce<Map<String, RunLine>> inForce;

  @Inject
  RunsInForce(Plans plans, EntityManager entities, PlanMapping mapping) {
    inForce = new ReadInForce<>(plans, entities, e -> mapping.sheet(e).map(RunsInForce::byId));
  }

  private static Map<String, RunLine> byId(PlanSheet sheet) {
    Map<String, RunLine> runs = new HashMap<>();
    sheet.runs().forEach(run -> runs.put(run.id(), run));
    return runs;
  }

  @Override
  @Transactional
  public Optional<RunLine> findRun(String plant, String run) {
    return inForce.find(plant).map(runs -> runs.get(run));
  }
}
