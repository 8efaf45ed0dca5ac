package org.potlife.planning;

import jakarta.enterprise.context.ApplicationScoped;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.potlife.sheet.PlanSheet;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Plans by search: starts from the best dispatch rule or the running plan and improves it by
 * simulated annealing over time-near moves, with OptaPlanner as the frame. Keeps the best whenever
 * it is stopped.
 */
@ApplicationScoped
public class SearchPlanner implements Planner {

  @Override
  public PlanSheet solve(PlanRequest request, SolveWatch watch) {
    long begun = System.nanoTime();
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan first = first(mapped.problem());
    watch.improved(progress(begun, first.outcome(), mapped));
    Dispatch.Plan best = first;
    if (request.solveSeconds() > 0 && mapped.problem().movable() > 1) {
      best = search(mapped, first, begun, watch);
    }
    return new SheetWriter(mapped).write(best.sequences(), best.lengths());
  }

  /** The best dispatch rule, or the running plan where that is better. */
  private static Dispatch.Plan first(Problem problem) {
    Dispatch.Plan dispatched = new Dispatch(problem).best();
    return RunningPlan.of(problem)
        .filter(running -> running.outcome().compareTo(dispatched.outcome()) < 0)
        .orElse(dispatched);
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

  private static Dispatch.Plan search(
      MappedProblem mapped, Dispatch.Plan first, long begun, SolveWatch watch) {
    PlanRequest request = mapped.request();
    Search search = new Search(mapped.problem(), false);
    SolverConfig config =
        search.config(
            first.outcome(),
            request.seed(),
            new TerminationConfig().withSecondsSpentLimit((long) request.solveSeconds()));
    return search.improve(
        first,
        config,
        watch::stopRequested,
        outcome -> watch.improved(progress(begun, outcome, mapped)));
  }
}
