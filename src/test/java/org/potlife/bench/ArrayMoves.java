package org.potlife.bench;

import java.util.Random;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.RunTimes;

/**
 * Moves of the search's kind on plain arrays, without the search: a run, or a short block, goes to
 * or swaps with a place of about its own time. Each can be taken back once.
 */
final class ArrayMoves {

  private final Problem problem;
  private final RunTimes evaluator;
  private final int[][] sequences;
  private final int[] lengths;
  private final Random random;
  private final int[][] saved = new int[2][];
  private final int[] savedLength = new int[2];
  private final int[] moved = new int[2];

  ArrayMoves(Problem problem, RunTimes evaluator, int[][] sequences, int[] lengths, Random random) {
    this.problem = problem;
    this.evaluator = evaluator;
    this.sequences = sequences;
    this.lengths = lengths;
    this.random = random;
    for (int i = 0; i < saved.length; i++) {
      saved[i] = new int[problem.movable()];
    }
  }

  /** Changes the sequences. */
  void move() {
    while (!tryOne()) {
      // another one
    }
  }

  /** Takes the last move back. */
  void undo() {
    for (int i = 0; i < moved.length; i++) {
      System.arraycopy(saved[i], 0, sequences[moved[i]], 0, savedLength[i]);
      lengths[moved[i]] = savedLength[i];
    }
  }

  private boolean tryOne() {
    int pick = random.nextInt(problem.movable());
    int line = 0;
    while (line < lengths.length && pick >= lengths[line]) {
      pick -= lengths[line];
      line++;
    }
    if (line == lengths.length) {
      return false;
    }
    int target = random.nextInt(lengths.length);
    int place = near(target, evaluator.endOf(sequences[line][pick]));
    int kind = random.nextInt(10);
    if (target == line) {
      place = Math.min(place, lengths[line] - 1);
      if (place == pick) {
        return false;
      }
      save(line, target);
      within(line, pick, place, kind);
      return true;
    }
    int block = kind < 8 ? 1 : 2 + random.nextInt(3);
    int other = kind < 5 || kind == 8 ? 0 : kind < 8 ? 1 : 1 + random.nextInt(block);
    int to = Math.min(pick + block, lengths[line]);
    int otherTo = Math.min(place + other, lengths[target]);
    if (!fits(line, pick, to, target) || !fits(target, place, otherTo, line)) {
      return false;
    }
    save(line, target);
    replace(line, pick, to, saved[1], place, otherTo);
    replace(target, place, otherTo, saved[0], pick, to);
    return true;
  }

  private boolean fits(int line, int from, int to, int press) {
    for (int i = from; i < to; i++) {
      RunSpec run = problem.runs()[sequences[line][i]];
      if (!run.presses()[press]) {
        return false;
      }
    }
    return true;
  }

  private int near(int target, int time) {
    int low = 0;
    int high = lengths[target];
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (evaluator.endOf(sequences[target][middle]) < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    int spread = 1 + (int) Math.abs(random.nextGaussian() * 4);
    int place = low + random.nextInt(2 * spread + 1) - spread - (random.nextInt(4) == 0 ? 3 : 0);
    return Math.max(0, Math.min(lengths[target], place));
  }

  private void save(int one, int other) {
    moved[0] = one;
    moved[1] = other;
    for (int i = 0; i < moved.length; i++) {
      System.arraycopy(sequences[moved[i]], 0, saved[i], 0, lengths[moved[i]]);
      savedLength[i] = lengths[moved[i]];
    }
  }

  private void within(int line, int from, int to, int kind) {
    int[] runs = sequences[line];
    int run = runs[from];
    if (kind >= 6) {
      runs[from] = runs[to];
    } else if (from < to) {
      System.arraycopy(runs, from + 1, runs, from, to - from);
    } else {
      System.arraycopy(runs, to, runs, to + 1, from - to);
    }
    runs[to] = run;
  }

  private void replace(int line, int from, int to, int[] by, int byFrom, int byTo) {
    int[] runs = sequences[line];
    int grown = byTo - byFrom - (to - from);
    System.arraycopy(runs, to, runs, to + grown, lengths[line] - to);
    System.arraycopy(by, byFrom, runs, from, byTo - byFrom);
    lengths[line] += grown;
  }
}
