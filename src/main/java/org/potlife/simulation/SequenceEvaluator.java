package org.potlife.simulation;

import java.util.Arrays;

/**
 * Evaluates sequences that differ little from one another. It keeps checkpoints of a base and
 * simulates from the last checkpoint before the first difference until the presses have come to the
 * same state as the base's again. From there on only the screen room goes on, step by step of the
 * base; should it hand over a set of screens so that a run begins at another time, the simulation
 * goes on from there.
 *
 * <p>With {@code verify} every result is compared with a simulation from the start.
 */
public final class SequenceEvaluator implements RunTimes {

  /** Closer together cost more to keep than they save; found by trial. */
  private static final int STEPS_PER_CHECKPOINT = 16;

  private final Problem problem;
  private final int stepsPerCheckpoint;
  private final Simulation simulation;
  private final Simulation reference;
  private final ScreenPipeline screens;
  private final Course course;
  private final Reunion reunion;
  private final Remaining remaining;
  private final ShopState working;
  private final ShopState baseEnd;
  private final ShopState[] checkpoints;
  private final int[][] base;
  private final int[] baseLengths;

  /** What the candidate has cost more than the base where they came together. */
  private final long[] moreCost = new long[CostKind.values().length];

  private int moreUnplaced;

  /** By set, when it was free in the base where they came together, s. */
  private final int[] together;

  private int mixersSince;
  private int[][] sequences;
  private int[] lengths;
  private boolean adopting;
  private boolean started;
  private boolean baseWentBack;
  private int unplaced;
  private long weightedLateMinutes;
  private long costMilli;
  private long evaluations;

  public SequenceEvaluator(Problem problem, boolean verify) {
    this(problem, verify, STEPS_PER_CHECKPOINT);
  }

  /**
   * @param stepsPerCheckpoint steps from one checkpoint to the next; less for problems of few runs
   */
  public SequenceEvaluator(Problem problem, boolean verify, int stepsPerCheckpoint) {
    this.stepsPerCheckpoint = stepsPerCheckpoint;
    this.problem = problem;
    SetUp setUps = new SetUp(problem);
    simulation = new Simulation(problem, setUps);
    reference = verify ? new Simulation(problem, setUps) : null;
    screens = new ScreenPipeline(problem);
    course = new Course(problem);
    reunion = new Reunion(problem, course);
    working = new ShopState(problem);
    baseEnd = new ShopState(problem);
    together = new int[problem.sets().length];
    int presses = problem.presses().length;
    int runs = problem.movable();
    remaining = new Remaining(presses);
    checkpoints = new ShopState[runs / stepsPerCheckpoint + 1];
    for (int i = 0; i < checkpoints.length; i++) {
      checkpoints[i] = new ShopState(problem);
    }
    base = new int[presses][runs];
    baseLengths = new int[presses];
  }

  /**
   * From here on sets of screens are ready at these times, whatever the sequences, and the screen
   * room is left out, which is most of the work. There is no base any more.
   *
   * @param readyAt by set, s; of a set that was never wanted, anything below 0
   */
  public void giveScreens(int[] readyAt) {
    checkpoints[0].screens.give(readyAt);
    if (reference != null) {
      reference.giveScreens(readyAt);
    }
    started = false;
  }

  /** By set, when it is ready in the base, s; below 0 if it was never wanted. */
  public int[] screensReady() {
    return course.setReady.clone();
  }

  /** Whether a run of the base had to wait for the making of its screens. */
  public boolean waitsForScreens(int run) {
    int set = problem.runs()[run].screenSet();
    int step = course.stepOf[run];
    return set >= 0 && step < course.steps() && course.setReady[set] > course.unscreened[step];
  }

  /** What these sequences come to. */
  public Outcome evaluate(int[][] newSequences, int[] newLengths) {
    return evaluate(newSequences, newLengths, false);
  }

  /** The same, and these sequences become the base. */
  public Outcome evaluateAsBase(int[][] newSequences, int[] newLengths) {
    return evaluate(newSequences, newLengths, true);
  }

  private Outcome evaluate(int[][] newSequences, int[] newLengths, boolean asBase) {
    evaluations++;
    sequences = newSequences;
    lengths = newLengths;
    int first = started ? firstDifference() : 0;
    if (first == Integer.MAX_VALUE) {
      take(baseEnd, stuckIn(baseEnd));
    } else if (asBase || !started) {
      adopt(first);
    } else {
      run(first);
    }
    if (reference != null) {
      compare();
    }
    return new Outcome(unplaced, weightedLateMinutes, costMilli);
  }

  private void compare() {
    Outcome full = reference.run(sequences, lengths, null);
    if (full.unplaced() != unplaced
        || full.weightedLateMinutes() != weightedLateMinutes
        || full.costMilli() != costMilli) {
      throw new IllegalStateException(
          "incremental (%d, %d, %d) differs from full simulation %s"
              .formatted(unplaced, weightedLateMinutes, costMilli, full));
    }
  }

  private void take(ShopState end, int stuck) {
    unplaced = end.unplaced + stuck;
    weightedLateMinutes = end.weightedLateMinutes;
    costMilli = end.costMilli();
  }

  private int stuckIn(ShopState end) {
    int stuck = 0;
    for (int press = 0; press < lengths.length; press++) {
      stuck += lengths[press] - end.position[press];
    }
    return stuck;
  }

  /** Step of the base before which nothing changes; MAX_VALUE when nothing differs. */
  private int firstDifference() {
    int first = Integer.MAX_VALUE;
    for (int press = 0; press < base.length; press++) {
      int at =
          Arrays.mismatch(base[press], 0, baseLengths[press], sequences[press], 0, lengths[press]);
      if (at >= 0) {
        first = Math.min(first, at == 0 ? 0 : course.stepOf[base[press][at - 1]] + 1);
      }
    }
    return first;
  }

  private void adopt(int first) {
    adopting = true;
    run(first);
    adopting = false;
    for (int press = 0; press < base.length; press++) {
      System.arraycopy(sequences[press], 0, base[press], 0, lengths[press]);
    }
    System.arraycopy(lengths, 0, baseLengths, 0, lengths.length);
    baseEnd.copyFrom(working);
    started = true;
  }

  private void run(int first) {
    if (!started || baseWentBack || !runFrom(first, course.steps())) {
      runFrom(0, 0);
    }
    if (adopting) {
      baseWentBack = simulation.wentBack();
    }
    take(working, stuckIn(working));
  }

  /**
   * @param steps of the base; 0 to do without it
   * @return false where the order of time does not hold that checkpoints rely on
   */
  private boolean runFrom(int first, int steps) {
    // where the base has ended there is no checkpoint any more
    int checkpoint = Math.min(first, Math.max(0, steps - 1)) / stepsPerCheckpoint;
    int step = checkpoint * stepsPerCheckpoint;
    working.copyFrom(checkpoints[checkpoint]);
    remaining.compare(base, baseLengths, sequences, lengths);
    simulation.follow(working, sequences, lengths);
    int press;
    int before = 0;
    while ((press = simulation.next()) >= 0) {
      if (step % stepsPerCheckpoint == 0 && step > 0 && (step > first || step >= steps)) {
        ShopState other = checkpoints[step / stepsPerCheckpoint];
        int now = simulation.now();
        boolean same =
            step < steps
                && remaining.same(working.position, other.position)
                && reunion.of(working, other, remaining.byPress(), step, now);
        if (same) {
          leave(other, course.mixersSince[step]);
        }
        if (adopting) {
          // others may send another run to the press that has just had its turn
          other.copyFrom(working, Math.min(now, working.pressFree[before]));
        }
        if (same) {
          step = walk(step);
          if (step == steps) {
            break;
          }
          press = simulation.next();
        }
      }
      int run = simulation.step(press, null);
      if (simulation.wentBack() && steps > 0) {
        return false;
      }
      if (adopting) {
        course.record(step, run, press, simulation.placement(), working);
      }
      before = press;
      step++;
    }
    if (adopting) {
      course.end(step, working);
    }
    return true;
  }

  /**
   * Goes on with the steps of the base as long as screens are ready when they are wanted there;
   * tells the step before which that ends.
   */
  private int walk(int from) {
    int steps = course.steps();
    for (int step = from; step < steps; step++) {
      if (adopting && step > from && step % stepsPerCheckpoint == 0) {
        follow(checkpoints[step / stepsPerCheckpoint]);
      }
      RunSpec run = problem.runs()[course.run[step]];
      int set = run.screenSet();
      if (set >= 0) {
        if (!inTime(step, set)) {
          catchUp(step);
          return step;
        }
        if (course.released[step] >= 0) {
          screens.giveBack(working.screens, set, course.released[step]);
        }
      }
      if (course.off[step] >= 0) {
        working.finish(problem, run.order(), course.off[step]);
      }
    }
    arrive(baseEnd);
    return steps;
  }

  private boolean inTime(int step, int set) {
    int ready = screens.readyAt(working.screens, set, null);
    int before = course.setReady[set];
    int unscreened = course.unscreened[step];
    if (ready == before || (ready <= unscreened && before <= unscreened)) {
      return true;
    }
    StaffedTime staffed = problem.presses()[course.press[step]].staffed();
    return staffed.next(Math.max(ready, unscreened)) == staffed.next(Math.max(before, unscreened));
  }

  /** From here on the base leads. */
  private void leave(ShopState there, int mixers) {
    mixersSince = mixers;
    System.arraycopy(there.setFree, 0, together, 0, together.length);
    for (int kind = 0; kind < moreCost.length; kind++) {
      moreCost[kind] = working.costMilli[kind] - there.costMilli[kind];
    }
    moreUnplaced = working.unplaced - there.unplaced;
  }

  /** A checkpoint of the base becomes one of the candidate. */
  private void follow(ShopState checkpoint) {
    checkpoint.screens.copyFrom(working.screens);
    checkpoint.addUp(checkpoint, moreCost, moreUnplaced);
    checkpoint.copyOrdersFrom(working);
    checkpoint.copyPastFrom(working, together, mixersSince);
    remaining.shift(checkpoint.position, checkpoint.position);
  }

  /** The candidate stands where the base stood. */
  private void arrive(ShopState there) {
    working.addUp(there, moreCost, moreUnplaced);
    remaining.shift(there.position, working.position);
  }

  /** Presses, belts and inks follow to a step of the base; screens and orders are there already. */
  private void catchUp(int to) {
    int checkpoint = to / stepsPerCheckpoint;
    ShopState there = checkpoints[checkpoint];
    working.catchUpWith(there, together, mixersSince);
    if (adopting) {
      working.copyCountsFrom(there);
    } else {
      arrive(there);
    }
    simulation.follow(working, sequences, lengths);
    simulation.placement().returnFrames(false);
    for (int step = checkpoint * stepsPerCheckpoint; step < to; step++) {
      simulation.step(course.press[step], null);
    }
    simulation.placement().returnFrames(true);
  }

  @Override
  public int endOf(int run) {
    return course.endOf[run];
  }

  @Override
  public int startOf(int run) {
    return course.startOf[run];
  }

  /** Evaluations so far. */
  public long evaluations() {
    return evaluations;
  }
}
