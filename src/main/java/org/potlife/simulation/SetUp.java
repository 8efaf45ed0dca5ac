package org.potlife.simulation;

import java.util.Arrays;

/**
 * Length of a set-up by what is on the press (R2). The counts for a pair of runs are worked out
 * when asked for and packed into an int: with a thousand runs a table of all pairs is slower to
 * read than a few stations are to compare.
 */
final class SetUp {

  /** Marks a change whose seconds were measured and are given with the problem. */
  private static final int MEASURED = 1 << 31;

  /** Of a station's ink the number, without how light it is. */
  private static final int INK_BITS = 16;

  private final int[][] measuredS;

  /** Ints that a run takes in {@link #stations}. */
  private final int stride;

  /** By run, one after the other: how many stations it has, and of each its screen and its ink. */
  private final int[] stations;

  SetUp(Problem problem) {
    RunSpec[] runs = problem.runs();
    measuredS = problem.measuredSetUpS();
    stride = 1 + 2 * Arrays.stream(runs).mapToInt(run -> run.screens().length).max().orElse(0);
    stations = new int[runs.length * stride];
    double[] shades =
        Arrays.stream(problem.inks()).mapToDouble(InkSpec::lightness).sorted().distinct().toArray();
    for (int run = 0; run < runs.length; run++) {
      int at = run * stride;
      stations[at] = runs[run].screens().length;
      for (int station = 0; station < stations[at]; station++) {
        int ink = runs[run].inks()[station];
        int shade = Arrays.binarySearch(shades, problem.inks()[ink].lightness());
        stations[at + 1 + 2 * station] = runs[run].screens()[station];
        stations[at + 2 + 2 * station] = shade << INK_BITS | ink;
      }
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
    for (int at = 0; at < stations.length; at += stride) {
      longest = Math.max(longest, stations[at]);
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
    return press.changeoverS() + press.perScreenS() * stations(next) + press.firstPieceS();
  }

  /** Screens to mount on an empty press. */
  int stations(int next) {
    return stations[next * stride];
  }

  /** What changes from one run to the next; the methods below read it. */
  int change(int before, int next) {
    if (measuredS != null) {
      int seconds = measuredS[before + 1][next];
      return seconds == 0 ? 0 : seconds | MEASURED;
    }
    int had = before * stride;
    int needed = next * stride;
    int common = Math.min(stations[had], stations[needed]);
    int same = 0;
    int darker = 0;
    int lighter = 0;
    for (int station = 1; station < 2 * common; station += 2) {
      if (stations[had + station] == stations[needed + station]) {
        same++;
      }
      int from = stations[had + station + 1];
      int to = stations[needed + station + 1];
      if (from != to) {
        if (to >> INK_BITS < from >> INK_BITS) {
          darker++;
        } else {
          lighter++;
        }
      }
    }
    return (stations[needed] - same) | (stations[had] - same) << 8 | darker << 16 | lighter << 24;
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
