package org.potlife.simulation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The garments and sets of screens that more than one run wants, and the runs that want them: all
 * that presses of different dryers have to do with one another when the rooms are left out.
 */
final class SharedGoods {

  private static final int RUN_BITS = 20;
  private static final int PRESS_BITS = 12;

  private final Problem problem;
  private final int[][] runsOfLot;
  private final int[][] runsOfSet;
  private final boolean[] shares;

  /** Runs that share something, in the order of their turns in the base. */
  private final long[] turns;

  private int count;

  SharedGoods(Problem problem) {
    this.problem = problem;
    int[] lotOf = new int[problem.movable()];
    int[] setOf = new int[problem.movable()];
    for (int run = 0; run < lotOf.length; run++) {
      lotOf[run] = problem.runs()[run].garmentLot();
      setOf[run] = problem.runs()[run].screenSet();
    }
    runsOfLot = group(lotOf, problem.lots());
    runsOfSet = group(setOf, problem.sets().length);
    shares = new boolean[lotOf.length];
    for (int run = 0; run < shares.length; run++) {
      shares[run] = isSharedLot(lotOf[run]) || isSharedSet(setOf[run]);
    }
    turns = new long[(int) IntStream.range(0, shares.length).filter(run -> shares[run]).count()];
  }

  private static int[][] group(int[] of, int groups) {
    int[] counts = new int[groups];
    for (int group : of) {
      if (group >= 0) {
        counts[group]++;
      }
    }
    int[][] members = new int[groups][];
    for (int group = 0; group < groups; group++) {
      members[group] = new int[counts[group]];
    }
    for (int i = of.length - 1; i >= 0; i--) {
      if (of[i] >= 0) {
        members[of[i]][--counts[of[i]]] = i;
      }
    }
    return members;
  }

  /** Whether another run wants the garments or the screens of this one. */
  boolean shares(int run) {
    return shares[run];
  }

  boolean isSharedLot(int lot) {
    return runsOfLot[lot].length > 1;
  }

  int[] runsOfLot(int lot) {
    return runsOfLot[lot];
  }

  boolean isSharedSet(int set) {
    return set >= 0 && runsOfSet[set].length > 1;
  }

  /** The runs that share something, in the order of their turns from here on. */
  void order(RunRecords base) {
    count = 0;
    for (int run = 0; run < shares.length; run++) {
      if (shares[run] && base.isThere(run)) {
        turns[count++] =
            ((long) base.turn(run) << (RUN_BITS + PRESS_BITS))
                | (long) base.press(run) << RUN_BITS
                | run;
      }
    }
    Arrays.sort(turns, 0, count);
  }

  /** How many runs share something and have their turn in the base. */
  int count() {
    return count;
  }

  /** How many runs share something. */
  int most() {
    return turns.length;
  }

  /** The run of one of the turns. */
  int run(int at) {
    return (int) turns[at] & ((1 << RUN_BITS) - 1);
  }

  /** Brings all that is shared to what it is before anything has had its turn. */
  void begin(ShopState state) {
    TakenOver first = problem.takenOver();
    for (int lot = 0; lot < runsOfLot.length; lot++) {
      if (runsOfLot[lot].length > 1) {
        state.lotFree[lot] = first.lotFree()[lot];
        state.lotStage[lot] = first.lotStage()[lot];
      }
    }
    for (int set = 0; set < runsOfSet.length; set++) {
      if (runsOfSet[set].length > 1) {
        state.setFree[set] = first.setFree()[set];
        state.setPress[set] = first.setPress()[set];
      }
    }
  }

  /** A run has not been placed yet: nor has what it alone has to do with. */
  void reset(int run, ShopState state) {
    TakenOver first = problem.takenOver();
    int lot = problem.runs()[run].garmentLot();
    if (!isSharedLot(lot)) {
      state.lotFree[lot] = first.lotFree()[lot];
      state.lotStage[lot] = first.lotStage()[lot];
    }
    int set = problem.runs()[run].screenSet();
    if (set >= 0 && !isSharedSet(set)) {
      state.setFree[set] = first.setFree()[set];
      state.setPress[set] = first.setPress()[set];
    }
  }

  /**
   * Whether a run of the base would go otherwise now, since what it shares has come to another
   * state: not if it is there before its press is free, then as now.
   */
  boolean isTouched(RunRecords base, int run, ShopState state) {
    RunSpec spec = problem.runs()[run];
    int lot = spec.garmentLot();
    if (isSharedLot(lot)
        && ((spec.stage() >= 0 && state.lotStage[lot] != spec.stage())
            || differs(base.lotWas(run), state.lotFree[lot], base.before(run)))) {
      return true;
    }
    int set = spec.screenSet();
    return isSharedSet(set)
        && (base.setPressWas(run) != state.setPress[set]
            || differs(base.setWas(run), state.setFree[set], base.before(run)));
  }

  private static boolean differs(int then, int now, int pressFree) {
    return then != now && Math.max(then, now) > pressFree;
  }
}
