package org.potlife.simulation;

/**
 * Simulates the shop for given sequences: of all presses the one that can take its next run first
 * goes first; ties go to the press that comes first. What is placed stays, so a plan is feasible by
 * construction.
 */
public final class Simulation {

  private static final int NOTHING = Integer.MAX_VALUE;

  private final Problem problem;
  private final ShopState state;
  private final ShopState empty;
  private final Placement placement;
  private final int[] lotOf;
  private final int[] stageOf;
  private final int[] garmentsFrom;

  /** By press, when it can take its next run, s, and the garments of that run. */
  private final int[] nextAt;

  private final int[] nextLot;
  private ShopState at;
  private int[][] sequences;
  private int[] lengths;
  private int now;
  private boolean wentBack;

  public Simulation(Problem problem) {
    this(problem, new SetUp(problem));
  }

  Simulation(Problem problem, SetUp setUps) {
    this.problem = problem;
    state = new ShopState(problem);
    empty = new ShopState(problem);
    placement = new Placement(problem, setUps);
    int runs = problem.movable();
    lotOf = new int[runs];
    stageOf = new int[runs];
    garmentsFrom = new int[runs];
    for (int run = 0; run < runs; run++) {
      lotOf[run] = problem.runs()[run].garmentLot();
      stageOf[run] = problem.runs()[run].stage();
      garmentsFrom[run] = problem.runs()[run].garmentsFrom();
    }
    nextAt = new int[problem.presses().length];
    nextLot = new int[nextAt.length];
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
    follow(state, sequences, lengths);
    int press;
    while ((press = next()) >= 0) {
      step(press, trace);
    }
    return state.outcome(stuck(trace));
  }

  /** From here on sets of screens are ready at these times, s, and the screen room is left out. */
  public void giveScreens(int[] readyAt) {
    empty.screens.give(readyAt);
  }

  /** Cost of one kind in the last run of the simulation, 1/1000 of the plant currency. */
  public long costMilli(CostKind kind) {
    return state.cost(kind);
  }

  /** Goes on from a state, for these sequences. */
  void follow(ShopState from, int[][] newSequences, int[] newLengths) {
    begin(from, newSequences, newLengths);
    for (int press = 0; press < nextAt.length; press++) {
      lookAhead(press);
    }
  }

  /** The same for some presses only. */
  void follow(ShopState from, int[][] newSequences, int[] newLengths, boolean[] wanted) {
    begin(from, newSequences, newLengths);
    for (int press = 0; press < nextAt.length; press++) {
      if (wanted[press]) {
        lookAhead(press);
      } else {
        nextAt[press] = NOTHING;
        nextLot[press] = -1;
      }
    }
  }

  private void begin(ShopState from, int[][] newSequences, int[] newLengths) {
    at = from;
    sequences = newSequences;
    lengths = newLengths;
    wentBack = false;
  }

  /** Garments were moved elsewhere: presses that wait for them look again. */
  void lookAheadFor(int lot) {
    for (int press = 0; press < nextAt.length; press++) {
      if (nextLot[press] == lot) {
        lookAhead(press);
      }
    }
  }

  /** Looks at what a press takes next. */
  void lookAhead(int press) {
    int position = at.position[press];
    if (position >= lengths[press]) {
      nextAt[press] = NOTHING;
      nextLot[press] = -1;
      return;
    }
    int run = sequences[press][position];
    int lot = lotOf[run];
    nextLot[press] = lot;
    boolean turn = stageOf[run] < 0 || stageOf[run] == at.lotStage[lot];
    nextAt[press] =
        turn
            ? Math.max(at.pressFree[press], Math.max(garmentsFrom[run], at.lotFree[lot]))
            : NOTHING;
  }

  /** The press whose next run comes first, or -1 when nothing more can be placed. */
  int next() {
    int best = -1;
    now = NOTHING;
    for (int press = 0; press < nextAt.length; press++) {
      if (nextAt[press] < now) {
        now = nextAt[press];
        best = press;
      }
    }
    return best;
  }

  /** When {@link #next} can take its run, s: no first piece to come is earlier. */
  int now() {
    return now;
  }

  /** Places the next run of a press and tells which one it was. */
  int step(int press, Trace trace) {
    int run = sequences[press][at.position[press]];
    at.position[press]++;
    int turn = nextAt[press];
    boolean placed = placement.place(at, run, press, trace);
    wentBack |= !placed && turn > at.pressFree[press];
    int lot = lotOf[run];
    for (int other = 0; other < nextAt.length; other++) {
      if (other == press || nextLot[other] == lot) {
        lookAhead(other);
      }
    }
    return run;
  }

  /**
   * Whether a run waited for its garments and then got no place, so that its press may take the
   * next one at an earlier moment: only then is {@link #now} no bound for what is to come.
   */
  boolean wentBack() {
    return wentBack;
  }

  /** What became of the last run. */
  Placement placement() {
    return placement;
  }

  /** Runs that cannot even be tried, because a print that must come first has no place. */
  int stuck(Trace trace) {
    int stuck = 0;
    for (int press = 0; press < nextAt.length; press++) {
      for (int i = at.position[press]; i < lengths[press]; i++) {
        stuck++;
        if (trace != null) {
          trace.refuse(sequences[press][i], press, Refusal.EARLIER_PRINT);
        }
      }
    }
    return stuck;
  }
}
