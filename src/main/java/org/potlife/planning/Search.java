package org.potlife.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;

/**
 * Improves a first plan by {@link Annealing}, as a phase of OptaPlanner's solver, on the engine's
 * problem alone: it needs no shop and no orders, so that published instances can be searched too.
 */
final class Search {

  private final Problem problem;
  private final boolean verify;
  private final int searches;

  /**
   * @param verify whether each evaluation is compared with a simulation from the start, and the
   *     solver checks itself
   * @param searches how many search side by side
   */
  Search(Problem problem, boolean verify, int searches) {
    this.problem = problem;
    this.verify = verify;
    this.searches = searches;
  }

  /**
   * The best plan found within the budget; never worse than the first.
   *
   * @param budgets a budget for each that searches, asked for on its thread
   * @param improved told of each better outcome, one at a time, on any thread
   */
  Dispatch.Plan improve(
      Dispatch.Plan first, long seed, Supplier<Budget> budgets, Consumer<Outcome> improved) {
    SideBySide team = new SideBySide(problem, verify, searches);
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(Schedule.class)
            .withEntityClasses(PressLine.class)
            .withEasyScoreCalculatorClass(ScheduleScore.class)
            .withEnvironmentMode(
                verify ? EnvironmentMode.FULL_ASSERT : EnvironmentMode.REPRODUCIBLE)
            .withRandomSeed(seed)
            .withPhases(
                new CustomPhaseConfig()
                    .withCustomPhaseCommandList(
                        List.of(
                            new AnnealingPhase(
                                plan -> team.improve(plan, seed, budgets, improved)))));
    Schedule start = schedule(first, new SearchDesk(problem));
    return plan(SolverFactory.<Schedule>create(config).buildSolver().solve(start));
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

  static Outcome outcome(HardMediumSoftLongScore score) {
    return new Outcome((int) -score.hardScore(), -score.mediumScore(), -score.softScore());
  }

  static Dispatch.Plan plan(Schedule schedule) {
    int[][] sequences = new int[schedule.lines().size()][schedule.cards().size()];
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
