package org.potlife.planning;

import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/** Lets tests of other packages dispatch and search on the engine's problem alone. */
public final class BareSearch {

  /** Sequences by press and what they come to. */
  public record Found(int[][] sequences, int[] lengths, Outcome outcome) {}

  private BareSearch() {}

  /** The engine's problem for a request. */
  public static Problem problem(PlanRequest request) {
    return new ProblemMapper(request).map().problem();
  }

  /** Dispatched by earliest due date. */
  public static Found earliestDueDate(Problem problem) {
    return found(new Dispatch(problem).earliestDueDate());
  }

  /** The best of the dispatch rules. */
  public static Found dispatched(Problem problem) {
    return found(new Dispatch(problem).best());
  }

  /**
   * Searches on from a start. The number of evaluations bounds it, so that a machine under load
   * finds the same plan.
   */
  public static Found improved(Problem problem, Found start, long seed, long evaluations) {
    return improved(problem, start, seed, evaluations, false);
  }

  /** The same with every check that the solver and the evaluator have. */
  public static Found asserted(Problem problem, Found start, long seed, long evaluations) {
    return improved(problem, start, seed, evaluations, true);
  }

  private static Found improved(
      Problem problem, Found start, long seed, long evaluations, boolean asserted) {
    Search search = new Search(problem, asserted);
    TerminationConfig end = new TerminationConfig().withScoreCalculationCountLimit(evaluations);
    SolverConfig config =
        search
            .config(start.outcome(), seed, end)
            .withEnvironmentMode(
                asserted ? EnvironmentMode.FULL_ASSERT : EnvironmentMode.REPRODUCIBLE);
    Dispatch.Plan first = new Dispatch.Plan(start.sequences(), start.lengths(), start.outcome());
    return found(search.improve(first, config, () -> false, outcome -> {}));
  }

  private static Found found(Dispatch.Plan plan) {
    return new Found(plan.sequences(), plan.lengths(), plan.outcome());
  }
}
