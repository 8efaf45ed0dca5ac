package org.potlife.planning;

import java.util.List;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/** What one search works with: the problem, the evaluator, and the lines as plain arrays. */
final class SearchDesk {

  private static final int ASK_EVERY = 64;

  private final Problem problem;
  private final SequenceEvaluator evaluator;
  private final int[][] sequences;
  private final int[] lengths;
  private final Runnable everySoOften;
  private int sinceAsked;

  SearchDesk(Problem problem, boolean verify, Runnable everySoOften) {
    this.problem = problem;
    this.everySoOften = everySoOften;
    evaluator = new SequenceEvaluator(problem, verify);
    sequences = new int[problem.presses().length][problem.movable()];
    lengths = new int[problem.presses().length];
  }

  Problem problem() {
    return problem;
  }

  SequenceEvaluator evaluator() {
    return evaluator;
  }

  HardMediumSoftLongScore score(List<PressLine> lines) {
    if (++sinceAsked >= ASK_EVERY) {
      sinceAsked = 0;
      everySoOften.run();
    }
    for (PressLine line : lines) {
      List<RunCard> runs = line.runs();
      int n = runs.size();
      int[] sequence = sequences[line.press()];
      for (int i = 0; i < n; i++) {
        sequence[i] = runs.get(i).index();
      }
      lengths[line.press()] = n;
    }
    return score(evaluator.evaluate(sequences, lengths));
  }

  static HardMediumSoftLongScore score(Outcome outcome) {
    return HardMediumSoftLongScore.of(
        -outcome.unplaced(), -outcome.weightedLateMinutes(), -outcome.costMilli());
  }
}
