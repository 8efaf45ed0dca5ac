package org.potlife.simulation;

import java.util.Arrays;

/**
 * Evaluates sequences that differ little from one another. It keeps checkpoints of a base and
 * simulates only from the last checkpoint before the first difference. Sequences that are evaluated
 * twice in a row become the base: a search does that when it accepts a step.
 *
 * <p>With {@code verify} every result is compared with a simulation from the start.
 */
public final class SequenceEvaluator {

  private static final int STEPS_PER_CHECKPOINT = 24;

  private final Simulation simulation;
  private final Simulation reference;
  private final Problem problem;
  private final ShopState working;
  private final ShopState[] checkpoints;
  private final int[][] base;
  private final int[] baseLengths;
  private final int[][] stepOf;
  private final int[][] last;
  private final int[] lastLengths;
  private final int[] endOf;
  private int baseSteps = -1;
  private Outcome baseOutcome;
  private Outcome lastOutcome;
  private long evaluations;

  public SequenceEvaluator(Problem problem, boolean verify) {
    this.problem = problem;
    SetUp setUps = new SetUp(problem);
    simulation = new Simulation(problem, setUps);
    reference = verify ? new Simulation(problem, setUps) : null;
    working = new ShopState(problem);
    int presses = problem.presses().length;
    int runs = problem.movable();
    checkpoints = new ShopState[runs / STEPS_PER_CHECKPOINT + 1];
    base = new int[presses][runs];
    baseLengths = new int[presses];
    stepOf = new int[presses][runs];
    last = new int[presses][runs];
    lastLengths = new int[presses];
    endOf = new int[problem.runs().length];
  }

  /** What these sequences come to. */
  public Outcome evaluate(int[][] sequences, int[] lengths) {
    evaluations++;
    Outcome outcome;
    if (baseSteps < 0) {
      outcome = adopt(sequences, lengths, 0);
    } else {
      int first = firstDifference(sequences, lengths);
      if (first == Integer.MAX_VALUE) {
        outcome = baseOutcome;
      } else if (lastOutcome != null && same(sequences, lengths)) {
        outcome = adopt(sequences, lengths, first);
      } else {
        outcome = simulateFrom(sequences, lengths, first);
      }
    }
    remember(sequences, lengths, outcome);
    if (reference != null) {
      Outcome full = reference.run(sequences, lengths, null);
      if (!full.equals(outcome)) {
        throw new IllegalStateException(
            "incremental " + outcome + " differs from full simulation " + full);
      }
    }
    return outcome;
  }

  /** Step of the base before which nothing changes; MAX_VALUE when nothing differs. */
  private int firstDifference(int[][] sequences, int[] lengths) {
    int first = Integer.MAX_VALUE;
    for (int press = 0; press < base.length; press++) {
      int at =
          Arrays.mismatch(base[press], 0, baseLengths[press], sequences[press], 0, lengths[press]);
      if (at >= 0) {
        first = Math.min(first, at == 0 ? 0 : stepOf[press][at - 1] + 1);
      }
    }
    return first;
  }

  private boolean same(int[][] sequences, int[] lengths) {
    for (int press = 0; press < last.length; press++) {
      if (!Arrays.equals(last[press], 0, lastLengths[press], sequences[press], 0, lengths[press])) {
        return false;
      }
    }
    return true;
  }

  private void remember(int[][] sequences, int[] lengths, Outcome outcome) {
    for (int press = 0; press < last.length; press++) {
      System.arraycopy(sequences[press], 0, last[press], 0, lengths[press]);
    }
    System.arraycopy(lengths, 0, lastLengths, 0, lengths.length);
    lastOutcome = outcome;
  }

  private Outcome simulateFrom(int[][] sequences, int[] lengths, int first) {
    working.copyFrom(checkpoints[Math.min(first, baseSteps) / STEPS_PER_CHECKPOINT]);
    int press;
    while ((press = simulation.next(working, sequences, lengths)) >= 0) {
      simulation.step(working, sequences, press, null);
    }
    return simulation.close(working, sequences, lengths, null);
  }

  private Outcome adopt(int[][] sequences, int[] lengths, int first) {
    int step;
    if (baseSteps < 0) {
      step = 0;
      checkpoints[0] = new ShopState(problem);
      working.copyFrom(checkpoints[0]);
    } else {
      int checkpoint = Math.min(first, baseSteps) / STEPS_PER_CHECKPOINT;
      step = checkpoint * STEPS_PER_CHECKPOINT;
      working.copyFrom(checkpoints[checkpoint]);
    }
    int press;
    while ((press = simulation.next(working, sequences, lengths)) >= 0) {
      stepOf[press][working.position[press]] = step;
      int run = simulation.step(working, sequences, press, null);
      endOf[run] = working.pressFree[press];
      step++;
      if (step % STEPS_PER_CHECKPOINT == 0) {
        int checkpoint = step / STEPS_PER_CHECKPOINT;
        if (checkpoints[checkpoint] == null) {
          checkpoints[checkpoint] = new ShopState(problem);
        }
        checkpoints[checkpoint].copyFrom(working);
      }
    }
    baseSteps = step;
    for (int i = 0; i < base.length; i++) {
      System.arraycopy(sequences[i], 0, base[i], 0, lengths[i]);
      for (int position = working.position[i]; position < lengths[i]; position++) {
        stepOf[i][position] = step;
      }
    }
    System.arraycopy(lengths, 0, baseLengths, 0, lengths.length);
    baseOutcome = simulation.close(working, sequences, lengths, null);
    return baseOutcome;
  }

  /** When a run of the base ends, s; roughly right while a search tries others. */
  public int endOf(int run) {
    return endOf[run];
  }

  /** Evaluations so far. */
  public long evaluations() {
    return evaluations;
  }
}
