package org.potlife.simulation;

/**
 * Length of a set-up by what is on the press (R2). The counts for each pair of runs are worked out
 * once and packed into an int, since the search asks for them all the time.
 */
final class SetUp {

  private final int n;
  private final int[] pairs;
  private final int[] stations;
  private final int[][] measuredS;

  SetUp(Problem problem) {
    RunSpec[] runs = problem.runs();
    n = runs.length;
    measuredS = problem.measuredSetUpS();
    pairs = new int[n * n];
    stations = new int[n];
    for (int before = 0; before < n; before++) {
      stations[before] = runs[before].screens().length;
      for (int next = 0; next < n; next++) {
        pairs[before * n + next] = pack(runs[before], runs[next], problem.inks());
      }
    }
  }

  private static int pack(RunSpec before, RunSpec next, InkSpec[] inks) {
    int had = before.screens().length;
    int needs = next.screens().length;
    int same = 0;
    int darker = 0;
    int lighter = 0;
    for (int station = 0; station < Math.min(had, needs); station++) {
      if (before.screens()[station] == next.screens()[station]) {
        same++;
      }
      int from = before.inks()[station];
      int to = next.inks()[station];
      if (from != to) {
        if (inks[to].lightness() < inks[from].lightness()) {
          darker++;
        } else {
          lighter++;
        }
      }
    }
    return (needs - same) | (had - same) << 8 | darker << 16 | lighter << 24;
  }

  /** Staffed seconds of set-up; 0 when the same screens stay. */
  int seconds(int before, int next, PressSpec press) {
    if (measuredS != null) {
      return measuredS[before + 1][next];
    }
    if (before < 0) {
      return press.changeoverS() + press.perScreenS() * stations[next] + press.firstPieceS();
    }
    int counts = pairs[before * n + next];
    int mounted = counts & 0xff;
    int removed = counts >> 8 & 0xff;
    if (mounted == 0 && removed == 0) {
      return 0;
    }
    return press.changeoverS()
        + press.perScreenS() * mounted
        + press.tearDownS() * removed
        + press.toDarkerS() * (counts >> 16 & 0xff)
        + press.toLighterS() * (counts >>> 24)
        + press.firstPieceS();
  }

  /** Screens to mount. */
  int mounted(int before, int next) {
    return before < 0 ? stations[next] : pairs[before * n + next] & 0xff;
  }

  /** Whether the screens stay as they are, so that no set-up is needed. */
  boolean none(int before, int next) {
    if (measuredS != null) {
      return before >= 0 && measuredS[before + 1][next] == 0;
    }
    return before >= 0 && (pairs[before * n + next] & 0xffff) == 0;
  }
}
