package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Improves a first plan by simulated annealing over time-near moves, on the engine's problem alone:
 * it needs no shop and no orders, so that published instances can be searched too.
 */
final class Search {

  /** Least start temperature against the first plan's score; found by trial on the demo plant. */
  private static final double TEMPERATURE = 0.002;

  /**
   * Start temperature against a run's share of that score. With few runs a single move changes much
   * of the score, and what suits a full day would be too cold to leave the first valley.
   */
  private static final double TEMPERATURE_BY_RUN = 0.14;

  private final Problem problem;
  private final boolean verify;

  /**
   * @param verify whether each evaluation is compared with a simulation from the start
   */
  Search(Problem problem, boolean verify) {
    this.problem = problem;
    this.verify = verify;
  }

  SolverConfig config(Outcome first, long seed, TerminationConfig termination) {
    double temperature = Math.max(TEMPERATURE, TEMPERATURE_BY_RUN / Math.max(1, problem.movable()));
    long medium = Math.max(1, (long) (first.weightedLateMinutes() * temperature));
    long soft = Math.max(1, (long) (first.costMilli() * temperature));
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
        .withTerminationConfig(termination)
        .withPhases(search);
  }

  /**
   * The best plan found; never worse than the first.
   *
   * @param stopRequested asked every few evaluations; the best so far is kept
   * @param improved told of each better outcome
   */
  Dispatch.Plan improve(
      Dispatch.Plan first,
      SolverConfig config,
      BooleanSupplier stopRequested,
      Consumer<Outcome> improved) {
    Solver<Schedule> solver = SolverFactory.<Schedule>create(config).buildSolver();
    SearchDesk desk =
        new SearchDesk(
            problem,
            verify,
            () -> {
              if (stopRequested.getAsBoolean()) {
                solver.terminateEarly();
              }
            });
    AtomicReference<HardMediumSoftLongScore> told = new AtomicReference<>();
    solver.addEventListener(
        event -> {
          HardMediumSoftLongScore score = (HardMediumSoftLongScore) event.getNewBestScore();
          HardMediumSoftLongScore before = told.getAndSet(score);
          if (before == null || score.compareTo(before) > 0) {
            improved.accept(outcome(score));
          }
        });
    return plan(solver.solve(schedule(first, desk)));
  }

  private Schedule schedule(Dispatch.Plan plan, SearchDesk desk) {
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

  private Dispatch.Plan plan(Schedule schedule) {
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
