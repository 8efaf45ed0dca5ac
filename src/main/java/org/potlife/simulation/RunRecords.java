package org.potlife.simulation;

/** How the runs of a plan went, each in a row of its own, since what is noted is read together. */
final class RunRecords implements RunTimes {

  private static final int TURN = 0;
  private static final int PRESS = 1;
  private static final int STEP = 2;
  private static final int BEFORE = 3;
  private static final int START = 4;
  private static final int END = 5;
  private static final int OFF = 6;
  private static final int LOT_AFTER = 7;
  private static final int SET_AFTER = 8;
  private static final int LOT_WAS = 9;
  private static final int SET_WAS = 10;
  private static final int SET_PRESS_WAS = 11;
  private static final int COLUMNS = 12;

  private final int[] rows;

  RunRecords(int runs) {
    rows = new int[runs * COLUMNS];
    for (int run = 0; run < runs; run++) {
      leaveOut(run);
    }
  }

  /** A run is in no line. */
  void leaveOut(int run) {
    rows[run * COLUMNS + STEP] = -1;
    rows[run * COLUMNS + OFF] = -1;
  }

  /** Whether a run is in some line. */
  boolean isThere(int run) {
    return rows[run * COLUMNS + STEP] >= 0;
  }

  /** What is shared, as it is before a run has its turn. */
  void noteBefore(int run, RunSpec spec, ShopState state) {
    int at = run * COLUMNS;
    int set = spec.screenSet();
    rows[at + LOT_WAS] = state.lotFree[spec.garmentLot()];
    rows[at + SET_WAS] = set < 0 ? 0 : state.setFree[set];
    rows[at + SET_PRESS_WAS] = set < 0 ? -1 : state.setPress[set];
  }

  /** How a run went that has just had its turn. */
  void note(
      int run, RunSpec spec, int turn, int press, int step, Placement placement, ShopState state) {
    int at = run * COLUMNS;
    rows[at + TURN] = turn;
    rows[at + PRESS] = press;
    rows[at + STEP] = step;
    rows[at + BEFORE] = placement.before();
    rows[at + START] = placement.start();
    rows[at + END] = state.pressFree[press];
    rows[at + OFF] = placement.off();
    rows[at + LOT_AFTER] = state.lotFree[spec.garmentLot()];
    rows[at + SET_AFTER] = spec.screenSet() < 0 ? 0 : state.setFree[spec.screenSet()];
  }

  void copyFrom(RunRecords other, int run) {
    System.arraycopy(other.rows, run * COLUMNS, rows, run * COLUMNS, COLUMNS);
  }

  /** Takes over what was shared before a run had its turn. */
  void copyBeforeFrom(RunRecords other, int run) {
    int at = run * COLUMNS + LOT_WAS;
    System.arraycopy(other.rows, at, rows, at, COLUMNS - LOT_WAS);
  }

  /** Garments and screens become what they are after a run. */
  void apply(int run, Problem problem, ShopState state) {
    RunSpec spec = problem.runs()[run];
    int at = run * COLUMNS;
    state.lotFree[spec.garmentLot()] = rows[at + LOT_AFTER];
    state.lotStage[spec.garmentLot()]++;
    int set = spec.screenSet();
    if (set >= 0) {
      state.setFree[set] = Math.max(state.setFree[set], rows[at + SET_AFTER]);
      state.setPress[set] = rows[at + PRESS];
    }
  }

  int turn(int run) {
    return rows[run * COLUMNS + TURN];
  }

  int press(int run) {
    return rows[run * COLUMNS + PRESS];
  }

  /** Its place among the steps of its dryer. */
  int step(int run) {
    return rows[run * COLUMNS + STEP];
  }

  /** When its press was free, s. */
  int before(int run) {
    return rows[run * COLUMNS + BEFORE];
  }

  /** When it is off the belt, s; -1 if it is in no line. */
  int off(int run) {
    return rows[run * COLUMNS + OFF];
  }

  int lotWas(int run) {
    return rows[run * COLUMNS + LOT_WAS];
  }

  int setWas(int run) {
    return rows[run * COLUMNS + SET_WAS];
  }

  int setPressWas(int run) {
    return rows[run * COLUMNS + SET_PRESS_WAS];
  }

  @Override
  public int startOf(int run) {
    return rows[run * COLUMNS + START];
  }

  @Override
  public int endOf(int run) {
    return rows[run * COLUMNS + END];
  }
}
