package org.potlife.simulation;

/**
 * Simulates the shop for given sequences: of all presses the one that can take its next run first
 * goes first; ties go to the press that comes first. What is placed stays, so a plan is feasible by
 * construction.
 */
public final class Simulation {

  private final Problem problem;
  private final ShopState state;
  private final ShopState empty;
  private final Placement placement;

  public Simulation(Problem problem) {
    this(problem, new SetUp(problem));
  }

  Simulation(Problem problem, SetUp setUps) {
    this.problem = problem;
    state = new ShopState(problem);
    empty = new ShopState(problem);
    placement = new Placement(problem, setUps);
  }

  /**
   * Simulates from the start.
   *
   * @param sequences by press, runs in order
   * @param lengths by press, how many entries of the sequence count
   * @param trace records what happens, or null
   */
  public Outcome run(int[][] sequences, int[] lengths, Trace trace) {
    state.copyFrom(empty);
    if (trace != null) {
      trace.begin(problem.takenOver());
    }
    int press;
    while ((press = next(state, sequences, lengths)) >= 0) {
      step(state, sequences, press, trace);
    }
    return close(state, sequences, lengths, trace);
  }

  /** Cost of one kind in the last run of the simulation, 1/1000 of the plant currency. */
  public long costMilli(CostKind kind) {
    return state.cost(kind);
  }

  /** The press whose next run comes first, or -1 when nothing more can be placed. */
  int next(ShopState at, int[][] sequences, int[] lengths) {
    int best = -1;
    int bestTime = Integer.MAX_VALUE;
    for (int press = 0; press < sequences.length; press++) {
      int position = at.position[press];
      if (position < lengths[press]) {
        RunSpec run = problem.runs()[sequences[press][position]];
        int lot = run.garmentLot();
        if (run.stage() < 0 || run.stage() == at.lotStage[lot]) {
          int garments = Math.max(run.garmentsFrom(), at.lotFree[lot]);
          int time = Math.max(at.pressFree[press], garments);
          if (time < bestTime) {
            bestTime = time;
            best = press;
          }
        }
      }
    }
    return best;
  }

  int step(ShopState at, int[][] sequences, int press, Trace trace) {
    int run = sequences[press][at.position[press]];
    at.position[press]++;
    placement.place(at, run, press, trace);
    return run;
  }

  /** Counts what could not even be tried, because a print that must come first has no place. */
  Outcome close(ShopState at, int[][] sequences, int[] lengths, Trace trace) {
    Outcome outcome = at.outcome();
    int stuck = 0;
    for (int press = 0; press < sequences.length; press++) {
      for (int i = at.position[press]; i < lengths[press]; i++) {
        stuck++;
        if (trace != null) {
          trace.refuse(sequences[press][i], press, Refusal.EARLIER_PRINT);
        }
      }
    }
    return stuck == 0
        ? outcome
        : new Outcome(
            outcome.unplaced() + stuck, outcome.weightedLateMinutes(), outcome.costMilli());
  }
}
