package org.potlife.planning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.potlife.sheet.PlanSheet;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Plans by search: starts from the best dispatch rule or the running plan and improves it by
 * simulated annealing, with OptaPlanner as the frame. Keeps the best whenever it is stopped.
 */
@ApplicationScoped
public class SearchPlanner implements Planner {

  private final int searches;

  /** Searches on one thread: the same request with the same number of changes, the same plan. */
  public SearchPlanner() {
    this(1);
  }

  /**
   * @param searches how many search side by side
   */
  @Inject
  public SearchPlanner(
      @ConfigProperty(name = "potlife.solver.searches", defaultValue = "1") int searches) {
    this.searches = Math.max(1, searches);
  }

  @Override
  public PlanSheet solve(PlanRequest request, SolveWatch watch) {
    return solve(request, Optional.empty(), watch);
  }

  @Override
  public PlanSheet solve(PlanRequest request, Optional<PlanSheet> found, SolveWatch watch) {
    long begun = System.nanoTime();
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan published = first(mapped.problem());
    Dispatch.Plan first =
        found
            .flatMap(sheet -> like(mapped, sheet))
            .filter(plan -> plan.outcome().compareTo(published.outcome()) < 0)
            .orElse(published);
    watch.improved(progress(begun, first.outcome(), mapped));
    Dispatch.Plan best = first;
    if (request.solveSeconds() > 0 && mapped.problem().movable() > 1) {
      best = search(mapped, first, begun, watch);
    }
    return new SheetWriter(mapped).write(best.sequences(), best.lengths());
  }

  /**
   * Beyond so many times the late minutes of the best dispatch rule, and so many weighted minutes
   * more, the running plan is given up as a start; our own choice.
   */
  private static final int FAR_LATER = 2;

  private static final int LATE_ENOUGH = 60;

  /**
   * The running plan, since a change of plan costs (R22), unless it leaves more without a place or
   * is far later than the best dispatch rule.
   */
  static Dispatch.Plan first(Problem problem) {
    Dispatch.Plan dispatched = new Dispatch(problem).best();
    return RunningPlan.of(problem, LineUp.published(problem))
        .filter(running -> staysInForce(running.outcome(), dispatched.outcome()))
        .orElse(dispatched);
  }

  private static boolean staysInForce(Outcome running, Outcome dispatched) {
    return running.unplaced() < dispatched.unplaced()
        || (running.unplaced() == dispatched.unplaced()
            && running.weightedLateMinutes()
                <= LATE_ENOUGH + FAR_LATER * dispatched.weightedLateMinutes());
  }

  private static Optional<Dispatch.Plan> like(MappedProblem mapped, PlanSheet sheet) {
    return RunningPlan.of(mapped.problem(), LineUp.of(mapped, sheet));
  }

  @Override
  public PlanSheet keeping(PlanRequest request, PlanSheet other) {
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan plan = like(mapped, other).orElseGet(() -> first(mapped.problem()));
    return new SheetWriter(mapped).write(plan.sequences(), plan.lengths());
  }

  @Override
  public PlanSheet earliestDueDate(PlanRequest request) {
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan plan = new Dispatch(mapped.problem()).earliestDueDate();
    return new SheetWriter(mapped).write(plan.sequences(), plan.lengths());
  }

  private static SolveWatch.Progress progress(long begun, Outcome outcome, MappedProblem mapped) {
    return new SolveWatch.Progress(
        (System.nanoTime() - begun) / 1_000_000,
        outcome.unplaced() + mapped.unplaced().size(),
        outcome.weightedLateMinutes(),
        outcome.costMilli() / 1000.0);
  }

  private Dispatch.Plan search(
      MappedProblem mapped, Dispatch.Plan first, long begun, SolveWatch watch) {
    PlanRequest request = mapped.request();
    return new Search(mapped.problem(), false, searches)
        .improve(
            first,
            request.seed(),
            () -> Budget.ofSeconds(request.solveSeconds(), watch::stopRequested),
            outcome -> watch.improved(progress(begun, outcome, mapped)));
  }
}
