package org.potlife.planning;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;

/**
 * Annealing as one step of the solver: takes the lines over as plain arrays, and gives the best
 * ones back. The solver's own local search was measured against it, see docs/decisions.
 */
final class AnnealingPhase implements CustomPhaseCommand<Schedule> {

  private final UnaryOperator<Dispatch.Plan> improvement;

  AnnealingPhase(UnaryOperator<Dispatch.Plan> improvement) {
    this.improvement = improvement;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<Schedule> director) {
    Schedule schedule = director.getWorkingSolution();
    Dispatch.Plan best = improvement.apply(Search.plan(schedule));
    for (PressLine line : schedule.lines()) {
      change(director, line, List.of());
    }
    for (PressLine line : schedule.lines()) {
      List<RunCard> runs =
          Arrays.stream(best.sequences()[line.press()], 0, best.lengths()[line.press()])
              .mapToObj(schedule.cards()::get)
              .toList();
      change(director, line, runs);
    }
    director.triggerVariableListeners();
  }

  private static void change(ScoreDirector<Schedule> director, PressLine line, List<RunCard> runs) {
    int before = line.runs().size();
    director.beforeListVariableChanged(line, PressLine.RUNS, 0, before);
    line.runs().clear();
    line.runs().addAll(runs);
    director.afterListVariableChanged(line, PressLine.RUNS, 0, runs.size());
  }
}
