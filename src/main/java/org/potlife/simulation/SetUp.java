package org.potlife.simulation;

/**
 * Length of a set-up by what is on the press (R2). The counts for a pair of runs are worked out
 * when asked for and packed into an int: with a thousand runs a table of all pairs is slower to
 * read than a few stations are to compare.
 */
final class SetUp {

  /** Marks a change whose seconds were measured and are given with the problem. */
  private static final int MEASURED = 1 << 31;

  private final int[][] screens;
  private final int[][] inks;
  private final double[] lightness;
  private final int[][] measuredS;

  SetUp(Problem problem) {
    int n = problem.runs().length;
    measuredS = problem.measuredSetUpS();
    screens = new int[n][];
    inks = new int[n][];
    for (int run = 0; run < n; run++) {
      screens[run] = problem.runs()[run].screens();
      inks[run] = problem.runs()[run].inks();
    }
    lightness = new double[problem.inks().length];
    for (int ink = 0; ink < lightness.length; ink++) {
      lightness[ink] = problem.inks()[ink].lightness();
    }
  }

  /** Staffed seconds of set-up; 0 when the same screens stay. */
  int seconds(int before, int next, PressSpec press) {
    return before < 0 ? onEmpty(next, press) : seconds(change(before, next), press);
  }

  /** A bound that no set-up on a press passes, staffed seconds. */
  int longest(PressSpec press) {
    int longest = 0;
    if (measuredS != null) {
      for (int[] row : measuredS) {
        for (int seconds : row) {
          longest = Math.max(longest, seconds);
        }
      }
      return longest;
    }
    for (int[] of : screens) {
      longest = Math.max(longest, of.length);
    }
    int each =
        press.perScreenS() + press.tearDownS() + Math.max(press.toDarkerS(), press.toLighterS());
    return press.changeoverS() + each * longest + press.firstPieceS();
  }

  /** Whether set-ups are a table and do not follow from screens and inks. */
  boolean isMeasured() {
    return measuredS != null;
  }

  /** Staffed seconds of set-up on an empty press. */
  int onEmpty(int next, PressSpec press) {
    if (measuredS != null) {
      return measuredS[0][next];
    }
    return press.changeoverS() + press.perScreenS() * screens[next].length + press.firstPieceS();
  }

  /** Screens to mount on an empty press. */
  int stations(int next) {
    return screens[next].length;
  }

  /** What changes from one run to the next; the methods below read it. */
  int change(int before, int next) {
    if (measuredS != null) {
      int seconds = measuredS[before + 1][next];
      return seconds == 0 ? 0 : seconds | MEASURED;
    }
    int[] needed = screens[next];
    int[] had = screens[before];
    int[] from = inks[before];
    int[] to = inks[next];
    int same = 0;
    int darker = 0;
    int lighter = 0;
    for (int station = 0; station < Math.min(had.length, needed.length); station++) {
      if (had[station] == needed[station]) {
        same++;
      }
      if (from[station] != to[station]) {
        if (lightness[to[station]] < lightness[from[station]]) {
          darker++;
        } else {
          lighter++;
        }
      }
    }
    return (needed.length - same) | (had.length - same) << 8 | darker << 16 | lighter << 24;
  }

  /** Staffed seconds of set-up for a change. */
  static int seconds(int change, PressSpec press) {
    if (none(change)) {
      return 0;
    }
    if (change < 0) {
      return change & ~MEASURED;
    }
    return press.changeoverS()
        + press.perScreenS() * mounted(change)
        + press.tearDownS() * (change >> 8 & 0xff)
        + press.toDarkerS() * (change >> 16 & 0xff)
        + press.toLighterS() * (change >>> 24)
        + press.firstPieceS();
  }

  /** Screens to mount for a change. */
  static int mounted(int change) {
    return change < 0 ? 0 : change & 0xff;
  }

  /** Whether the screens stay as they are, so that no set-up is needed. */
  static boolean none(int change) {
    return change >= 0 && (change & 0xffff) == 0;
  }
}
