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
import org.potlife.plan.Stability;
import org.potlife.plan.internal.PlantLock.Purpose;
import org.potlife.plan.internal.SolveMeter.Outcome;
import org.potlife.plan.internal.SolveStore.Begun;
import org.potlife.plan.list.ChangeList;
import org.potlife.planning.Planner;
import org.potlife.sheet.PlanSheet;

/** Solves one plan, from "solving" to "draft" or "failed", and on into force where it may. */
@ApplicationScoped
class SolveJob {

  private static final Logger LOG = Logger.getLogger(SolveJob.class);
  private static final Duration UNTIL_NEXT_TRY = Duration.ofSeconds(1);

  private final SolveStore store;
  private final DraftDecision decision;
  private final Planner planner;
  private final PlanCheck check;
  private final SolveMeter meter;
  private final DataSource dataSource;

  @Inject
  SolveJob(
      SolveStore store,
      DraftDecision decision,
      Planner planner,
      PlanCheck check,
      SolveMeter meter,
      DataSource dataSource) {
    this.store = store;
    this.decision = decision;
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
      // solved, but whoever solved it may have ended before it was decided on
      decision.decide(plan);
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
        return solve(plant.get(), plan, Optional.empty(), closing);
      } finally {
        lock.get().close();
      }
    } finally {
      MDC.remove("plant");
      MDC.remove("plan");
    }
  }

  /**
   * A plan with its audit and how far it is from the one in force.
   *
   * @param stability null without a plan in force
   */
  private record Made(PlanSheet sheet, AuditReport audit, Stability stability) {}

  /**
   * @param found the best plan of a search that begins anew
   */
  private CompletionHandler<Void> solve(
      String plant, String plan, Optional<PlanSheet> found, BooleanSupplier closing) {
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
    Made made;
    try {
      PlanSheet sheet = planner.solve(begun.get().request(), found, watch);
      watch.flush();
      if (closing.getAsBoolean() && !watch.stopped()) {
        running.end(Outcome.INTERRUPTED);
        LOG.info("Left for the next start");
        return new OnCompleteReschedule<>(FixedDelay.of(Duration.ZERO));
      }
      made = judged(begun.get(), sheet);
    } catch (RuntimeException e) {
      running.end(Outcome.FAILED);
      LOG.error("No plan came out", e);
      store.fail(plan, "The search failed: " + e);
      return new OnCompleteRemove<>();
    }
    if (!store.finish(begun.get(), made.sheet(), made.audit(), made.stability())) {
      running.end(Outcome.INTERRUPTED);
      LOG.info("The plant has changed: begun anew, from the best plan so far");
      return solve(plant, plan, Optional.of(made.sheet()), closing);
    }
    running.end(watch.stopped() ? Outcome.STOPPED : Outcome.DONE);
    tell(made);
    decision.decide(plan);
    return new OnCompleteRemove<>();
  }

  private Made judged(Begun begun, PlanSheet sheet) {
    Optional<PlanSheet> before = begun.request().published();
    return new Made(
        sheet,
        check.check(begun.basis(), sheet, before),
        before.isEmpty()
            ? null
            : ChangeList.of(begun.basis().index(sheet), begun.basis().published(), before)
                .stability());
  }

  private static void tell(Made made) {
    LOG.infof(
        "Solved: %d runs, %d without a place, %d weighted late minutes, %d rules broken",
        made.sheet().runs().size(),
        made.sheet().score().unplaced(),
        made.sheet().score().weightedLateMinutes(),
        made.audit().findings().size());
  }
}
