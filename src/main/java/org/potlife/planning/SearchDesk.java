package org.potlife.planning;

import java.util.List;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.Simulation;

/** What the solver scores lines with. */
final class SearchDesk {

  private final Simulation simulation;
  private final int[][] sequences;
  private final int[] lengths;

  SearchDesk(Problem problem) {
    simulation = new Simulation(problem);
    sequences = new int[problem.presses().length][problem.movable()];
    lengths = new int[problem.presses().length];
  }

  HardMediumSoftLongScore score(List<PressLine> lines) {
    for (PressLine line : lines) {
      List<RunCard> runs = line.runs();
      for (int i = 0; i < runs.size(); i++) {
        sequences[line.press()][i] = runs.get(i).index();
      }
      lengths[line.press()] = runs.size();
    }
    Outcome outcome = simulation.run(sequences, lengths, null);
    return HardMediumSoftLongScore.of(
        -outcome.unplaced(), -outcome.weightedLateMinutes(), -outcome.costMilli());
  }
}
