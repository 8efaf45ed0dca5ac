package org.potlife.plan.internal;

import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteRemove;
import com.github.kagkarlsson.scheduler.task.CompletionHandler.OnCompleteReschedule;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.sql.DataSource;
import org.jboss.logging.Logger;
import org.jboss.logging.MDC;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.internal.PlantLock.Purpose;
import org.potlife.plan.internal.SolveMeter.Outcome;
import org.potlife.plan.internal.SolveStore.Begun;
import org.potlife.plan.list.ChangeList;
import org.potlife.planning.Planner;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Following;
import org.potlife.shop.Following.Publish;

/** Solves one plan, from "solving" to "draft" or "failed". */
@ApplicationScoped
class SolveJob {

  private static final Logger LOG = Logger.getLogger(SolveJob.class);
  private static final Duration UNTIL_NEXT_TRY = Duration.ofSeconds(1);

  private final SolveStore store;
  private final AutoPublication publication;
  private final Planner planner;
  private final PlanCheck check;
  private final SolveMeter meter;
  private final DataSource dataSource;

  @Inject
  SolveJob(
      SolveStore store,
      AutoPublication publication,
      Planner planner,
      PlanCheck check,
      SolveMeter meter,
      DataSource dataSource) {
    this.store = store;
    this.publication = publication;
    this.planner = planner;
    this.check = check;
    this.meter = meter;
    this.dataSource = dataSource;
  }

  /**
   * Solves the plan, unless another plan of the plant is being solved: then its turn comes later.
   *
   * @param closing whether the service is about to end; an unfinished search is then begun anew
   *     after the next start
   */
  CompletionHandler<Void> run(String plan, BooleanSupplier closing) throws SQLException {
    Optional<String> plant = store.findPlantOfSolving(plan);
    if (plant.isEmpty()) {
      return new OnCompleteRemove<>();
    }
    MDC.put("plant", plant.get());
    MDC.put("plan", plan);
    try {
      Optional<PlantLock> lock = PlantLock.tryFor(dataSource, plant.get(), Purpose.PLAN);
      if (lock.isEmpty()) {
        return new OnCompleteReschedule<>(FixedDelay.of(UNTIL_NEXT_TRY));
      }
      try {
        return solve(plant.get(), plan, closing);
      } finally {
        lock.get().close();
      }
    } finally {
      MDC.remove("plant");
      MDC.remove("plan");
    }
  }

  private CompletionHandler<Void> solve(String plant, String plan, BooleanSupplier closing) {
    Optional<PlanSheet> found = Optional.empty();
    while (true) {
      Optional<Begun> begun = store.begin(plan);
      if (begun.isEmpty()) {
        return new OnCompleteRemove<>();
      }
      LOG.infof(
          "Solving for %s with %d orders, %d s",
          begun.get().request().day(),
          begun.get().request().orders().size(),
          begun.get().request().solveSeconds());
      JobWatch watch = new JobWatch(plan, store, closing);
      SolveMeter.Running running = meter.start();
      PlanSheet sheet;
      AuditReport audit;
      Optional<ChangeList> changes;
      try {
        sheet = planner.solve(begun.get().request(), found, watch);
        watch.flush();
        if (closing.getAsBoolean() && !watch.stopped()) {
          running.end(Outcome.INTERRUPTED);
          LOG.info("Left for the next start");
          return new OnCompleteReschedule<>(FixedDelay.of(Duration.ZERO));
        }
        audit = check.check(begun.get().basis(), sheet, begun.get().request().published());
        changes = changes(begun.get(), sheet);
      } catch (RuntimeException e) {
        running.end(Outcome.FAILED);
        LOG.error("No plan came out", e);
        store.fail(plan, "The search failed: " + e);
        return new OnCompleteRemove<>();
      }
      if (store.finish(plan, sheet, audit, changes.map(ChangeList::stability).orElse(null))) {
        running.end(watch.stopped() ? Outcome.STOPPED : Outcome.DONE);
        tell(sheet, audit);
        decide(plant, plan, begun.get(), changes, audit);
        return new OnCompleteRemove<>();
      }
      running.end(Outcome.INTERRUPTED);
      LOG.info("The plant has changed: begun anew, from the best plan so far");
      found = Optional.of(sheet);
    }
  }

  private static Optional<ChangeList> changes(Begun begun, PlanSheet sheet) {
    return begun
        .request()
        .published()
        .map(
            before ->
                ChangeList.of(
                    begun.basis().index(sheet), begun.basis().published(), Optional.of(before)));
  }

  private static void tell(PlanSheet sheet, AuditReport audit) {
    LOG.infof(
        "Solved: %d runs, %d without a place, %d weighted late minutes, %d rules broken",
        sheet.runs().size(),
        sheet.score().unplaced(),
        sheet.score().weightedLateMinutes(),
        audit.findings().size());
  }

  /** Publishes the plan if it is to be published by itself, else notes why it waits. */
  private void decide(
      String plant, String plan, Begun begun, Optional<ChangeList> changes, AuditReport audit) {
    Following following = begun.basis().shop().settings().following();
    boolean byRule =
        begun.origin() == PlanOrigin.EVENTS
            && following.publish() == Publish.WHEN_NO_PROMISE_GETS_WORSE
            && changes.isPresent();
    if (!byRule && !begun.publishWhenSound()) {
      return;
    }
    Optional<String> objection =
        byRule ? PublicationRule.objection(changes.get(), audit, following) : Optional.empty();
    if (objection.isEmpty()) {
      objection = publication.publish(plant, plan, begun.basis().published());
    }
    if (objection.isPresent()) {
      LOG.infof("Waits for the planner: %s", objection.get());
      store.hold(plan, objection.get());
    } else {
      LOG.info("Published");
    }
  }
}
