package org.potlife.planning;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Iterated descent on the line of one press, for cases in which the guess is exact: after a kick,
 * the best exchange of two runs or the best new place of a block, again and again until none helps;
 * what is no worse than before the kick is kept. H. R. Lourenco, O. C. Martin and T. Stuetzle,
 * Iterated Local Search, 2003; the neighbourhoods after A. Subramanian, M. Battarra and C. N.
 * Potts, International Journal of Production Research 52, 2014 (both from memory).
 */
final class LineDescent {

  /** Longer lines have too many neighbours; found by trial, as the next three. */
  static final int LONGEST_LINE = 150;

  private static final int SHORTEST_LINE = 4;
  private static final int LONGEST_BLOCK = 10;

  /** Descents without gain before the next one begins at the best line, kicked harder. */
  private static final int PATIENCE = 200;

  private static final int HARD_KICKS = 6;

  private final LineGuess guess;
  private final Budget budget;
  private final SplittableRandom random;

  private int press;
  private int length;
  private int[] line;
  private int[] candidate;
  private int[] scratch;

  /** By place, what the line comes to so far. */
  private int[] end;

  private long[] late;
  private long[] setUp;

  /** What the last candidate comes to, if it is better than it had to be. */
  private long candidateLate;

  private long candidateSetUp;

  LineDescent(LineGuess guess, Budget budget, SplittableRandom random) {
    this.guess = guess;
    this.budget = budget;
    this.random = random;
  }

  static boolean suits(int length) {
    return length >= SHORTEST_LINE && length <= LONGEST_LINE;
  }

  /**
   * Searches on from a line.
   *
   * @param until share of the budget at which to end
   * @param better told of each line that is better than the one before, its array to be copied
   */
  void improve(int onPress, int[] runs, int count, double until, Consumer<int[]> better) {
    press = onPress;
    length = count;
    line = Arrays.copyOf(runs, count);
    candidate = new int[count];
    scratch = new int[count];
    end = new int[count];
    late = new long[count];
    setUp = new long[count];
    int[] best = line.clone();
    int[] local = line.clone();
    sumUp(0);
    long bestLate = late[length - 1];
    long bestSetUp = setUp[length - 1];
    long localLate = bestLate;
    long localSetUp = bestSetUp;
    int fruitless = 0;
    while (budget.used() < until) {
      descend();
      long nowLate = late[length - 1];
      long nowSetUp = setUp[length - 1];
      if (isBetter(nowLate, nowSetUp, bestLate, bestSetUp)) {
        bestLate = nowLate;
        bestSetUp = nowSetUp;
        System.arraycopy(line, 0, best, 0, length);
        better.accept(line);
      }
      if (!isBetter(localLate, localSetUp, nowLate, nowSetUp)) {
        fruitless = isBetter(nowLate, nowSetUp, localLate, localSetUp) ? 0 : fruitless;
        localLate = nowLate;
        localSetUp = nowSetUp;
        System.arraycopy(line, 0, local, 0, length);
      }
      if (++fruitless > PATIENCE) {
        fruitless = 0;
        System.arraycopy(best, 0, line, 0, length);
        for (int i = 0; i < HARD_KICKS; i++) {
          exchange(line, random.nextInt(length), random.nextInt(length));
        }
        localLate = Long.MAX_VALUE;
      } else {
        kick(local);
      }
      sumUp(0);
    }
  }

  private static boolean isBetter(long late, long setUp, long thanLate, long thanSetUp) {
    return late < thanLate || (late == thanLate && setUp < thanSetUp);
  }

  /** Works out what the line comes to from a place on. */
  private void sumUp(int from) {
    int before = from == 0 ? guess.mounted(press) : line[from - 1];
    int free = from == 0 ? guess.openAt(press) : end[from - 1];
    long lateSoFar = from == 0 ? 0 : late[from - 1];
    long setUpSoFar = from == 0 ? 0 : setUp[from - 1];
    for (int place = from; place < length; place++) {
      int run = line[place];
      int needs = guess.setUpS(before, run, press);
      free = guess.endAfter(free, run, press, needs);
      lateSoFar += guess.late(run, free);
      setUpSoFar += needs;
      end[place] = free;
      late[place] = lateSoFar;
      setUp[place] = setUpSoFar;
      before = run;
    }
  }

  /** Best changes of all kinds in random order, until none of any kind helps. */
  private void descend() {
    int kinds = Math.min(LONGEST_BLOCK, length / 2) + 1;
    int[] open = new int[kinds];
    int left = fill(open);
    while (left > 0 && !budget.over()) {
      int pick = random.nextInt(left);
      if (improveOnce(open[pick])) {
        left = fill(open);
      } else {
        open[pick] = open[--left];
      }
    }
  }

  private static int fill(int[] kinds) {
    for (int i = 0; i < kinds.length; i++) {
      kinds[i] = i;
    }
    return kinds.length;
  }

  /**
   * Makes the best change of a kind.
   *
   * @param block runs that move together; 0 for an exchange of two runs
   * @return false if none helps
   */
  private boolean improveOnce(int block) {
    long bestLate = late[length - 1];
    long bestSetUp = setUp[length - 1];
    int bestFrom = -1;
    int bestTo = -1;
    int last = length - Math.max(1, block);
    for (int from = 0; from <= last; from++) {
      for (int to = block == 0 ? from + 1 : 0; to <= last; to++) {
        if (from != to) {
          change(block, from, to);
          int changedTo = Math.max(from, to) + Math.max(1, block) - 1;
          budget.glanced();
          if (comesTo(Math.min(from, to), changedTo, bestLate, bestSetUp)) {
            bestLate = candidateLate;
            bestSetUp = candidateSetUp;
            bestFrom = from;
            bestTo = to;
          }
        }
      }
    }
    if (bestFrom < 0) {
      return false;
    }
    change(block, bestFrom, bestTo);
    System.arraycopy(candidate, 0, line, 0, length);
    sumUp(Math.min(bestFrom, bestTo));
    return true;
  }

  /** Writes the changed line down as the candidate. */
  private void change(int block, int from, int to) {
    System.arraycopy(line, 0, candidate, 0, length);
    if (block == 0) {
      exchange(candidate, from, to);
      return;
    }
    if (from < to) {
      System.arraycopy(line, from + block, candidate, from, to - from);
    } else {
      System.arraycopy(line, to, candidate, to + block, from - to);
    }
    System.arraycopy(line, from, candidate, to, block);
  }

  private static void exchange(int[] runs, int a, int b) {
    int run = runs[a];
    runs[a] = runs[b];
    runs[b] = run;
  }

  /** Works out what the candidate comes to; ends as soon as it can no longer be better. */
  private boolean comesTo(int from, int changedTo, long bestLate, long bestSetUp) {
    int before = from == 0 ? guess.mounted(press) : line[from - 1];
    int free = from == 0 ? guess.openAt(press) : end[from - 1];
    long lateSoFar = from == 0 ? 0 : late[from - 1];
    long setUpSoFar = from == 0 ? 0 : setUp[from - 1];
    for (int place = from; place < length; place++) {
      int run = candidate[place];
      int needs = guess.setUpS(before, run, press);
      free = guess.endAfter(free, run, press, needs);
      lateSoFar += guess.late(run, free);
      setUpSoFar += needs;
      if (lateSoFar > bestLate) {
        return false;
      }
      before = run;
      if (place > changedTo && free == end[place]) {
        // from here on everything is as before
        lateSoFar += late[length - 1] - late[place];
        setUpSoFar += setUp[length - 1] - setUp[place];
        break;
      }
    }
    candidateLate = lateSoFar;
    candidateSetUp = setUpSoFar;
    return isBetter(lateSoFar, setUpSoFar, bestLate, bestSetUp);
  }

  /** Exchanges two stretches of a line. */
  private void kick(int[] from) {
    int most = Math.max(1, length / 4);
    int first = 1 + random.nextInt(most);
    int second = 1 + random.nextInt(most);
    int at = random.nextInt(length - first - second + 1);
    int between = random.nextInt(length - first - second - at + 1);
    System.arraycopy(from, 0, scratch, 0, length);
    System.arraycopy(from, at + first + between, scratch, at, second);
    System.arraycopy(from, at + first, scratch, at + second, between);
    System.arraycopy(from, at, scratch, at + second + between, first);
    System.arraycopy(scratch, 0, line, 0, length);
  }
}
