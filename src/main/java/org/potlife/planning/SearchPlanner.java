package org.potlife.planning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.potlife.sheet.PlanSheet;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Plans by search: starts from the best dispatch rule and improves it by simulated annealing over
 * time-near moves, with OptaPlanner as the frame. Keeps the best whenever it is stopped.
 */
@ApplicationScoped
public class SearchPlanner implements Planner {

  /** Start temperature against the first plan's score; found by trial on the demo plant. */
  private static final double MEDIUM_TEMPERATURE = 0.002;

  private static final double SOFT_TEMPERATURE = 0.002;

  @Override
  public PlanSheet solve(PlanRequest request, SolveWatch watch) {
    long begun = System.nanoTime();
    MappedProblem mapped = new ProblemMapper(request).map();
    Dispatch.Plan first = new Dispatch(mapped.problem()).best();
    watch.improved(progress(begun, first.outcome(), mapped));
    Dispatch.Plan best = first;
    if (request.solveSeconds() > 0 && mapped.problem().movable() > 1) {
      best = search(mapped, first, begun, watch);
    }
    return new SheetWriter(mapped).write(best.sequences(), best.lengths());
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
    SolverConfig config = config(first.outcome(), request.seed(), request.solveSeconds());
    Solver<Schedule> solver = SolverFactory.<Schedule>create(config).buildSolver();
    SearchDesk desk =
        new SearchDesk(
            mapped.problem(),
            false,
            () -> {
              if (watch.stopRequested()) {
                solver.terminateEarly();
              }
            });
    AtomicReference<HardMediumSoftLongScore> told = new AtomicReference<>();
    solver.addEventListener(
        event -> {
          HardMediumSoftLongScore score = (HardMediumSoftLongScore) event.getNewBestScore();
          HardMediumSoftLongScore before = told.getAndSet(score);
          if (before == null || score.compareTo(before) > 0) {
            watch.improved(progress(begun, outcome(score), mapped));
          }
        });
    Schedule solved = solver.solve(schedule(first, mapped.problem(), desk));
    return plan(solved, mapped.problem());
  }

  static SolverConfig config(Outcome first, long seed, int solveSeconds) {
    long medium = Math.max(1, (long) (first.weightedLateMinutes() * MEDIUM_TEMPERATURE));
    long soft = Math.max(1, (long) (first.costMilli() * SOFT_TEMPERATURE));
    LocalSearchPhaseConfig search =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(TimeNearMoves.class))
            .withAcceptorConfig(
                new LocalSearchAcceptorConfig()
                    .withSimulatedAnnealingStartingTemperature(
                        HardMediumSoftLongScore.of(0, medium, soft).toString()))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withSolutionClass(Schedule.class)
        .withEntityClasses(PressLine.class)
        .withEasyScoreCalculatorClass(ScheduleScore.class)
        .withRandomSeed(seed)
        .withTerminationConfig(new TerminationConfig().withSecondsSpentLimit((long) solveSeconds))
        .withPhases(search);
  }

  static Schedule schedule(Dispatch.Plan plan, Problem problem, SearchDesk desk) {
    List<RunCard> cards = new ArrayList<>();
    for (int run = 0; run < problem.movable(); run++) {
      cards.add(new RunCard(run));
    }
    List<PressLine> lines = new ArrayList<>();
    for (int press = 0; press < problem.presses().length; press++) {
      PressLine line = new PressLine(press);
      for (int i = 0; i < plan.lengths()[press]; i++) {
        line.runs().add(cards.get(plan.sequences()[press][i]));
      }
      lines.add(line);
    }
    return new Schedule(lines, cards, desk);
  }

  private static Outcome outcome(HardMediumSoftLongScore score) {
    return new Outcome((int) -score.hardScore(), -score.mediumScore(), -score.softScore());
  }

  static Dispatch.Plan plan(Schedule schedule, Problem problem) {
    int[][] sequences = new int[problem.presses().length][problem.movable()];
    int[] lengths = new int[sequences.length];
    for (PressLine line : schedule.lines()) {
      int i = 0;
      for (RunCard card : line.runs()) {
        sequences[line.press()][i++] = card.index();
      }
      lengths[line.press()] = i;
    }
    return new Dispatch.Plan(sequences, lengths, outcome(schedule.score()));
  }
}
