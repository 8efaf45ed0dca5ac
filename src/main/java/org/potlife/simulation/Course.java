package org.potlife.simulation;

/**
 * How the base of a {@link SequenceEvaluator} went, step by step: what is needed to go on with it
 * from a moment at which others have come to the same state.
 */
final class Course {

  /** By step. */
  final int[] run;

  final int[] press;

  /** When it could have begun but for the making of its screens, s. */
  final int[] unscreened;

  /** When it is off the belt, s; -1 if it has no place. */
  final int[] off;

  /** When it released the frames of its screens for good, s; -1 if it did not. */
  final int[] released;

  /** When its press was free, s. */
  final int[] pressFree;

  /** The mixers' time before this has no influence on this step or any later one, s. */
  final int[] mixersSince;

  /** By run, its step; the number of steps where it was not even tried. */
  final int[] stepOf;

  /** By run, when it is printed, s. */
  final int[] endOf;

  /** By run, when its set-up begins, s. */
  final int[] startOf;

  /** By set, when it is ready, s. */
  final int[] setReady;

  /** By ink, the last step that uses it; -1 if none. */
  final int[] lastUse;

  private final RunSpec[] runs;
  private final int[] looked;
  private int steps;

  Course(Problem problem) {
    int n = problem.movable();
    runs = problem.runs();
    run = new int[n];
    press = new int[n];
    unscreened = new int[n];
    off = new int[n];
    released = new int[n];
    pressFree = new int[n];
    mixersSince = new int[n + 1];
    looked = new int[n];
    stepOf = new int[n];
    endOf = new int[runs.length];
    startOf = new int[runs.length];
    setReady = new int[problem.sets().length];
    lastUse = new int[problem.inks().length];
  }

  int steps() {
    return steps;
  }

  void record(int step, int placed, int onPress, Placement placement, ShopState state) {
    run[step] = placed;
    press[step] = onPress;
    unscreened[step] = placement.unscreened();
    off[step] = placement.off();
    released[step] = placement.released();
    pressFree[step] = placement.before();
    looked[step] = state.mixers.lookedSince();
    endOf[placed] = state.pressFree[onPress];
    startOf[placed] = placement.start();
  }

  /** All steps are recorded. */
  void end(int number, ShopState last) {
    steps = number;
    java.util.Arrays.fill(stepOf, steps);
    java.util.Arrays.fill(lastUse, -1);
    for (int step = 0; step < steps; step++) {
      stepOf[run[step]] = step;
      for (RunSpec.InkNeed need : runs[run[step]].needs()) {
        lastUse[need.ink()] = step;
      }
    }
    mixersSince[steps] = StaffedTime.NEVER;
    for (int step = steps - 1; step >= 0; step--) {
      mixersSince[step] = Math.min(mixersSince[step + 1], looked[step]);
    }
    System.arraycopy(last.screens.setReady, 0, setReady, 0, setReady.length);
  }
}
