package org.potlife.planning;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.LongSupplier;
import org.potlife.sheet.PlanSheet;
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

  /** The best of the published dispatch rules, which plans are held against. */
  public static Found byAtcs(Problem problem) {
    return found(AtcsRules.best(problem));
  }

  /** The sheet of that plan. */
  public static PlanSheet sheetByAtcs(PlanRequest request) {
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan plan = AtcsRules.best(mapped.problem());
    return new SheetWriter(mapped).write(plan.sequences(), plan.lengths());
  }

  /** The best of our dispatch rules. */
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

  /** What a search of a given time came to, and the way there. */
  public record Timed(Found found, long evaluations, List<Point> curve) {

    /** Best outcome after so many seconds. */
    public Outcome after(double seconds) {
      Outcome best = curve.get(0).outcome();
      for (Point point : curve) {
        best = point.seconds() <= seconds ? point.outcome() : best;
      }
      return best;
    }
  }

  /** A better plan was found. */
  public record Point(double seconds, Outcome outcome) {}

  /** How long searches may take, by which clock, and how many search side by side. */
  public record Allowed(double seconds, boolean cpu, int searches) {

    /** Nanoseconds since a thread first asked, or since now. */
    private LongSupplier clock() {
      if (!cpu) {
        long begun = System.nanoTime();
        return () -> System.nanoTime() - begun;
      }
      LongSupplier given = ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime;
      ThreadLocal<Long> begun = ThreadLocal.withInitial(given::getAsLong);
      return () -> {
        long first = begun.get();
        return given.getAsLong() - first;
      };
    }
  }

  /** Searches on from a start for a time. */
  public static Timed timed(Problem problem, Found start, long seed, Allowed allowed) {
    LongSupplier clock = allowed.clock();
    clock.getAsLong();
    List<Point> curve = new ArrayList<>();
    curve.add(new Point(0, start.outcome()));
    List<Budget> budgets = Collections.synchronizedList(new ArrayList<>());
    Dispatch.Plan plan =
        new Search(problem, false, allowed.searches())
            .improve(
                plan(start),
                seed,
                () -> {
                  Budget budget = Budget.ofSeconds(allowed.seconds(), clock, () -> false);
                  budgets.add(budget);
                  return budget;
                },
                outcome -> {
                  // of threads that are given unequal time each has a clock of its own
                  double last = curve.get(curve.size() - 1).seconds();
                  curve.add(new Point(Math.max(last, clock.getAsLong() / 1e9), outcome));
                });
    return new Timed(
        found(plan), budgets.stream().mapToLong(Budget::evaluations).sum(), List.copyOf(curve));
  }

  /** The running plan with new runs put in; what a replanning starts from. */
  public static Found started(Problem problem) {
    return found(SearchPlanner.first(problem));
  }

  private static Found improved(
      Problem problem, Found start, long seed, long evaluations, boolean asserted) {
    return found(
        new Search(problem, asserted, 1)
            .improve(plan(start), seed, () -> Budget.ofEvaluations(evaluations), outcome -> {}));
  }

  private static Dispatch.Plan plan(Found found) {
    return new Dispatch.Plan(found.sequences(), found.lengths(), found.outcome());
  }

  private static Found found(Dispatch.Plan plan) {
    return new Found(plan.sequences(), plan.lengths(), plan.outcome());
  }
}
