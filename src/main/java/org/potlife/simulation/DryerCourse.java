package org.potlife.simulation;

/**
 * How the presses of one dryer went in the base of a {@link DryerEvaluator}, step by step, with a
 * checkpoint before each step to go on from.
 */
final class DryerCourse {

  final int dryer;

  /** The presses that feed it. */
  final int[] presses;

  /** By step. */
  final int[] run;

  /** Number of steps. */
  int steps;

  private final Checkpoint[] checkpoints;

  /** What a checkpoint keeps, as it is after the last step. */
  private final long[] cost = new long[CostKind.values().length];

  DryerCourse(Problem problem, int dryer, int[] presses) {
    this.dryer = dryer;
    this.presses = presses;
    run = new int[problem.movable()];
    checkpoints = new Checkpoint[problem.movable() + 1];
    for (int i = 0; i < checkpoints.length; i++) {
      checkpoints[i] = new Checkpoint(presses.length, problem.dryers()[dryer].maxSpeed());
    }
  }

  private static final class Checkpoint {

    final int[] free;
    final int[] last;
    final int[] position;
    final BeltBook belt;
    final long[] cost = new long[CostKind.values().length];
    int since;

    Checkpoint(int presses, int maxSpeed) {
      free = new int[presses];
      last = new int[presses];
      position = new int[presses];
      belt = new BeltBook(maxSpeed);
    }
  }

  /** The step with whose checkpoint to go on: where the base has ended there is none any more. */
  int checkpointFor(int step) {
    return Math.min(step, Math.max(0, steps - 1));
  }

  /** Brings a state to what it is at a checkpoint. */
  void load(int step, ShopState state) {
    Checkpoint from = checkpoints[step];
    for (int i = 0; i < presses.length; i++) {
      state.pressFree[presses[i]] = from.free[i];
      state.pressLast[presses[i]] = from.last[i];
      state.position[presses[i]] = from.position[i];
    }
    state.belts[dryer].copyFrom(from.belt, Integer.MIN_VALUE / 2);
  }

  /** Adds to a state what this dryer came to in the end. */
  void addUp(ShopState state) {
    for (int kind = 0; kind < cost.length; kind++) {
      state.costMilli[kind] += cost[kind];
    }
  }

  /** Takes from a state what this dryer came to from a checkpoint on. */
  void takeBack(int step, ShopState state) {
    long[] before = checkpoints[step].cost;
    for (int kind = 0; kind < cost.length; kind++) {
      state.costMilli[kind] -= cost[kind] - before[kind];
    }
  }

  /** Adds to a state what this dryer came to from a checkpoint on. */
  void addRest(int step, ShopState state) {
    long[] before = checkpoints[step].cost;
    for (int kind = 0; kind < cost.length; kind++) {
      state.costMilli[kind] += cost[kind] - before[kind];
    }
  }

  /** Whether presses that still have runs, and the belt, are as at a checkpoint. */
  boolean isAt(int step, ShopState state, int[] lengths, int[] baseLengths) {
    Checkpoint then = checkpoints[step];
    for (int i = 0; i < presses.length; i++) {
      int press = presses[i];
      int left = lengths[press] - state.position[press];
      if (left != baseLengths[press] - then.position[i]
          || (left > 0
              && (state.pressFree[press] != then.free[i]
                  || state.pressLast[press] != then.last[i]))) {
        return false;
      }
    }
    return state.belts[dryer].sameSince(then.belt, then.since);
  }

  /**
   * Keeps a state as the checkpoint of a step.
   *
   * @param since no first piece to come is earlier, s
   */
  void keep(int step, ShopState state, int since, long[] costSoFar) {
    Checkpoint to = checkpoints[step];
    for (int i = 0; i < presses.length; i++) {
      to.free[i] = state.pressFree[presses[i]];
      to.last[i] = state.pressLast[presses[i]];
      to.position[i] = state.position[presses[i]];
    }
    to.belt.copyFrom(state.belts[dryer], since);
    to.since = since;
    System.arraycopy(costSoFar, 0, to.cost, 0, cost.length);
  }

  /** What it came to up to a checkpoint. */
  void copyCost(int step, long[] to) {
    System.arraycopy(checkpoints[step].cost, 0, to, 0, to.length);
  }

  /** Whoever goes on from a checkpoint may have no first piece before this, s. */
  int since(int step) {
    return checkpoints[step].since;
  }

  /** All its steps are made. */
  void end(int number, long[] costInAll) {
    steps = number;
    System.arraycopy(costInAll, 0, cost, 0, cost.length);
  }
}
