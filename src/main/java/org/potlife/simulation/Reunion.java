package org.potlife.simulation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Tells whether two states lead to the same future when the same runs remain on each press: not
 * whether they are the same, since what is over does not come back. The screen room is left out: it
 * works so far ahead that it hardly ever comes to the same state again.
 *
 * <p>First come the comparisons that fail most often.
 */
final class Reunion {

  private static final int SLOTS = ShopState.BATCHES_PER_INK;

  private final Problem problem;
  private final Course course;
  private final int[][] runsOfSet;

  Reunion(Problem problem, Course course) {
    this.problem = problem;
    this.course = course;
    runsOfSet = new int[problem.sets().length][];
    for (int set = 0; set < runsOfSet.length; set++) {
      int wanted = set;
      runsOfSet[set] =
          IntStream.range(0, problem.movable())
              .filter(run -> problem.runs()[run].screenSet() == wanted)
              .toArray();
    }
  }

  /**
   * @param remaining by press, runs still to come in both states
   * @param step the step to come
   * @param now no first piece to come is earlier, s
   */
  boolean of(ShopState one, ShopState other, int[] remaining, int step, int now) {
    for (int press = 0; press < remaining.length; press++) {
      if (remaining[press] > 0) {
        if (one.pressFree[press] != other.pressFree[press]
            || one.pressLast[press] != other.pressLast[press]) {
          return false;
        }
      }
    }
    return garments(one, other, now)
        && belts(one, other, now)
        && sets(one, other, step)
        && inks(one, other, step, now);
  }

  private static boolean garments(ShopState one, ShopState other, int now) {
    return Arrays.equals(one.lotStage, other.lotStage) && sameFrom(one.lotFree, other.lotFree, now);
  }

  /** Whether times are the same or both over. */
  private static boolean sameFrom(int[] one, int[] other, int now) {
    int n = one.length;
    int i = 0;
    while (true) {
      int next = Arrays.mismatch(one, i, n, other, i, n);
      if (next < 0) {
        return true;
      }
      i += next;
      if (one[i] >= now || other[i] >= now) {
        return false;
      }
      i++;
    }
  }

  private static boolean belts(ShopState one, ShopState other, int now) {
    for (int i = 0; i < one.belts.length; i++) {
      if (!one.belts[i].sameSince(other.belts[i], now)) {
        return false;
      }
    }
    return true;
  }

  private boolean sets(ShopState one, ShopState other, int step) {
    if (!Arrays.equals(one.setLeft, other.setLeft)) {
      return false;
    }
    for (int set = 0; set < one.setLeft.length; set++) {
      if (one.setLeft[set] > 0
          && (one.setPress[set] != other.setPress[set]
              || (one.setFree[set] != other.setFree[set]
                  && Math.max(one.setFree[set], other.setFree[set]) > freeAtNextUse(set, step)))) {
        return false;
      }
    }
    return true;
  }

  /** When the press is free that takes a set next, s. */
  private int freeAtNextUse(int set, int step) {
    int next = course.steps();
    for (int run : runsOfSet[set]) {
      int at = course.stepOf[run];
      next = at >= step ? Math.min(next, at) : next;
    }
    return next == course.steps() ? 0 : course.pressFree[next];
  }

  private boolean inks(ShopState one, ShopState other, int step, int now) {
    int today = dayOf(now);
    if (!one.mixers.sameSince(other.mixers, course.mixersSince[step])) {
      return false;
    }
    for (int ink = 0; ink < one.inkDay.length; ink++) {
      if (course.lastUse[ink] >= step
          && !(lastCloth(one, other, ink, today) && batches(one, other, ink, today, now))) {
        return false;
      }
    }
    return true;
  }

  private int dayOf(int t) {
    int[] starts = problem.dayStart();
    int day = starts.length - 1;
    while (day > 0 && starts[day] > t) {
      day--;
    }
    return day;
  }

  private static boolean lastCloth(ShopState one, ShopState other, int ink, int today) {
    boolean same =
        one.inkDay[ink] == other.inkDay[ink] && one.inkLightness[ink] == other.inkLightness[ink];
    return same || (one.inkDay[ink] < today && other.inkDay[ink] < today);
  }

  private static boolean batches(ShopState one, ShopState other, int ink, int today, int now) {
    for (int slot = ink * SLOTS; slot < (ink + 1) * SLOTS; slot++) {
      boolean over = over(one, slot, today, now);
      if (over != over(other, slot, today, now) || (!over && !same(one, other, slot))) {
        return false;
      }
    }
    return true;
  }

  /** What ended, or was for another day, gives way before all that is still drawn from. */
  private static boolean over(ShopState state, int slot, int today, int now) {
    int day = state.batchDay[slot];
    return state.batchUseBy[slot] <= now || (day != ShopState.ANY_DAY && day < today);
  }

  private static boolean same(ShopState one, ShopState other, int slot) {
    return one.batchUseBy[slot] == other.batchUseBy[slot]
        && one.batchReady[slot] == other.batchReady[slot]
        && one.batchDay[slot] == other.batchDay[slot]
        && (one.batchRoomG[slot] == other.batchRoomG[slot]
            || Math.max(one.batchRoomG[slot], other.batchRoomG[slot]) < InkRoomSpec.LEAST_DRAW_G);
  }
}
