package org.potlife.simulation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * When orders end in the base of a {@link DryerEvaluator}, and when they end where some of their
 * runs have their turn again.
 */
final class OrderEnds {

  private static final int FINISH = CostKind.FINISH.ordinal();
  private static final int THIN_SLACK = CostKind.THIN_SLACK.ordinal();

  private final Problem problem;
  private final RunRecords base;

  /** By order, when what was taken over is off the belt, s; -1 if nothing was. */
  private final int[] takenOver;

  private final int[][] runsOfOrder;
  private final int[] end;
  private long lateMinutes;
  private long thinSlack;

  /** The trial under way; runs are marked with it. */
  private int trial;

  /** By run, the trial in which it has its turn again, and in which it got a place. */
  private final int[] again;

  private final int[] placed;

  /** By run, when it is off the belt in the trial that placed it, s. */
  private final int[] off;

  OrderEnds(Problem problem, RunRecords base, ShopState empty) {
    this.problem = problem;
    this.base = base;
    int runs = problem.movable();
    takenOver = empty.orderEnd.clone();
    end = new int[takenOver.length];
    runsOfOrder = new int[end.length][];
    for (int order = 0; order < end.length; order++) {
      int wanted = order;
      runsOfOrder[order] =
          IntStream.range(0, runs).filter(run -> problem.runs()[run].order() == wanted).toArray();
    }
    again = new int[runs];
    placed = new int[runs];
    off = new int[runs];
  }

  /** Orders end in the base as they do in this state. */
  void adopt(ShopState state) {
    System.arraycopy(state.orderEnd, 0, end, 0, end.length);
    lateMinutes = state.weightedLateMinutes;
    thinSlack = state.costMilli[THIN_SLACK];
  }

  /** A new trial: orders end as in the base, and nothing has cost anything but for that. */
  void begin(ShopState state) {
    trial++;
    Arrays.fill(state.costMilli, 0);
    state.costMilli[THIN_SLACK] = thinSlack;
    state.weightedLateMinutes = lateMinutes;
    System.arraycopy(end, 0, state.orderEnd, 0, end.length);
  }

  /** A run has its turn again in this trial. */
  void again(int run) {
    again[run] = trial;
  }

  /** The order of a run that has its turn again ends without it. */
  void takeOut(int run, ShopState state) {
    int order = problem.runs()[run].order();
    int last = takenOver[order];
    for (int other : runsOfOrder[order]) {
      if (again[other] != trial) {
        last = Math.max(last, base.off(other));
      } else if (placed[other] == trial) {
        last = Math.max(last, off[other]);
      }
    }
    state.reopen(problem, order, last);
  }

  /** A run goes as in the base after all. */
  void asInBase(int run, ShopState state) {
    again[run] = 0;
    state.finish(problem, problem.runs()[run].order(), base.off(run));
  }

  /** A run has got its place and is off the belt at {@code offAt}, s. */
  void place(int run, int offAt) {
    placed[run] = trial;
    off[run] = offAt;
  }

  boolean isPlaced(int run) {
    return placed[run] == trial;
  }

  /** Books what the end of all costs. */
  void finish(ShopState state) {
    int last = 0;
    for (int at : state.orderEnd) {
      last = Math.max(last, at);
    }
    state.costMilli[FINISH] = 0;
    state.addHourly(CostKind.FINISH, problem.costs().finishPerHour(), last);
  }

  /** Whether a kind of cost follows from the ends of orders alone. */
  static boolean followsFromEnds(int kind) {
    return kind == FINISH || kind == THIN_SLACK;
  }
}
