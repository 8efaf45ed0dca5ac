package org.potlife.planning;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.Problem;

/**
 * Changes of lines that may pay: a run, or a short block, goes to or swaps with a place of about
 * its own simulated time, stands beside a run with the same screens or inks, or jumps ahead when it
 * is late. Kinds that have paid lately are tried more often.
 */
final class LineMoves {

  /** The kinds of change. */
  enum Kind {
    GO,
    SWAP,
    BLOCK_GO,
    BLOCK_SWAP,
    KIN,
    TAIL,
    AHEAD,
    NEIGHBOUR,
    SOONEST_SET_UP
  }

  private static final Kind[] KINDS = Kind.values();
  private static final double LEAST_SHARE = 0.04;
  private static final int LEARN_EVERY = 1000;

  /** What a look at a change counts, against a simulation; found by trial. */
  private static final double GLANCE = 0.1;

  private static final int LONGEST_BLOCK = 6;

  /**
   * Places among which the soonest set-up is looked for, and how far from the run's time; trial.
   */
  private static final int PLACES = 8;

  private static final int PLACES_AWAY = 8;

  private final Problem problem;
  private final Lines lines;
  private final IntUnaryOperator ends;
  private final DispatchTimes times;
  private final Kin kin;
  private final SplittableRandom random;
  private final int[][] pressesOf;
  private final double[] share = new double[KINDS.length];
  private final double[] tried = new double[KINDS.length];
  private final double[] paid = new double[KINDS.length];
  private int sinceLearnt;
  private int kind;
  private int run;
  private int notedKind;
  private int notedRun;

  LineMoves(
      Problem problem,
      Lines lines,
      IntUnaryOperator ends,
      DispatchTimes times,
      SplittableRandom random) {
    this.problem = problem;
    this.lines = lines;
    this.ends = ends;
    this.times = times;
    kin = new Kin(problem, times);
    this.random = random;
    pressesOf = new int[problem.movable()][];
    for (int run = 0; run < pressesOf.length; run++) {
      pressesOf[run] = pressesOf(problem.runs()[run].presses());
    }
    Arrays.fill(share, 1.0 / KINDS.length);
  }

  private static int[] pressesOf(boolean[] allowed) {
    return IntStream.range(0, allowed.length).filter(p -> allowed[p]).toArray();
  }

  /** Changes the lines; false if what was picked cannot be done, then nothing is changed. */
  boolean change() {
    kind = pickKind();
    run = random.nextInt(problem.movable());
    if (kind == Kind.AHEAD.ordinal() || random.nextInt(3) == 0) {
      run = latestOfSome(run);
    }
    int press = lines.pressOf(run);
    int place = lines.placeOf(run);
    switch (KINDS[kind]) {
      case KIN:
        return besideKin(run, press, place);
      case NEIGHBOUR:
        return amongNeighbours(press, place);
      case AHEAD:
        return ahead(run, press, place);
      case SOONEST_SET_UP:
        return whereSetUpSoonest(run, press, place);
      default:
        return nearInTime(run, press, place);
    }
  }

  /** Notes what the last change was; {@link #recall} makes it the last one again. */
  void note() {
    notedKind = kind;
    notedRun = run;
  }

  void recall() {
    kind = notedKind;
    run = notedRun;
  }

  /** The run that the last change is about. */
  int run() {
    return run;
  }

  /** The last change could not be done, or was not worth a simulation. */
  void learnNothing() {
    tried[kind] += GLANCE;
  }

  /** The last change was simulated, and made the plan better or not. */
  void learn(boolean better) {
    tried[kind]++;
    if (better) {
      paid[kind]++;
    }
    if (++sinceLearnt >= LEARN_EVERY) {
      sinceLearnt = 0;
      double sum = 0;
      for (int i = 0; i < share.length; i++) {
        share[i] = (paid[i] + 0.05) / (tried[i] + 5);
        sum += share[i];
        tried[i] *= 0.8;
        paid[i] *= 0.8;
      }
      double free = 1 - LEAST_SHARE * share.length;
      for (int i = 0; i < share.length; i++) {
        share[i] = LEAST_SHARE + free * share[i] / sum;
      }
    }
  }

  private int pickKind() {
    double pick = random.nextDouble();
    int i = 0;
    while (i < share.length - 1 && pick >= share[i]) {
      pick -= share[i];
      i++;
    }
    return i;
  }

  private int latestOfSome(int run) {
    int latest = run;
    for (int i = 0; i < 4; i++) {
      int other = random.nextInt(problem.movable());
      latest = weighedLateness(other) > weighedLateness(latest) ? other : latest;
    }
    return latest;
  }

  private double weighedLateness(int run) {
    OrderSpec order = problem.orders()[problem.runs()[run].order()];
    double late = (double) ends.applyAsInt(run) - order.dueAt();
    return late > 0 ? late * order.weight() : late / Math.max(1, order.weight());
  }

  private boolean nearInTime(int run, int press, int place) {
    int target = pressesOf[run][random.nextInt(pressesOf[run].length)];
    int near = near(target, run);
    switch (KINDS[kind]) {
      case GO:
        return go(press, place, 1, target, near);
      case SWAP:
        return swap(press, place, 1, target, near, 1);
      case BLOCK_GO:
        return go(press, place, 2 + random.nextInt(LONGEST_BLOCK - 1), target, near);
      case BLOCK_SWAP:
        return swap(
            press,
            place,
            1 + random.nextInt(LONGEST_BLOCK),
            target,
            near,
            1 + random.nextInt(LONGEST_BLOCK));
      default:
        return target != press
            && swap(
                press,
                place,
                lines.length(press) - place,
                target,
                near,
                lines.length(target) - near);
    }
  }

  /** A place on the target at about the run's time; far away now and then. */
  private int near(int target, int run) {
    int length = lines.length(target);
    int low = firstNotBefore(target, ends.applyAsInt(run));
    int most = Math.max(2, Math.min(length, random.nextInt(6) == 0 ? length : 5));
    int away = (int) (most * random.nextDouble() * random.nextDouble());
    return Math.max(0, Math.min(length, random.nextBoolean() ? low - away : low + away));
  }

  private int firstNotBefore(int press, int time) {
    int low = 0;
    int high = lines.length(press);
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (ends.applyAsInt(lines.run(press, middle)) < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean besideKin(int run, int press, int place) {
    boolean behind = random.nextBoolean();
    int[] candidates = behind ? kin.before(run) : kin.after(run);
    if (candidates.length == 0) {
      return false;
    }
    int other = candidates[random.nextInt(candidates.length)];
    int target = lines.pressOf(other);
    if (!problem.runs()[run].presses()[target]) {
      return false;
    }
    return go(press, place, 1, target, lines.placeOf(other) + (behind ? 1 : 0));
  }

  private boolean amongNeighbours(int press, int place) {
    int other = place + 1 + random.nextInt(3);
    if (other >= lines.length(press)) {
      return false;
    }
    if (random.nextBoolean()) {
      lines.swapWithin(press, place, 1, other, 1);
    } else if (random.nextBoolean()) {
      lines.move(press, place, 1, press, other);
    } else {
      lines.move(press, other, 1, press, place);
    }
    return true;
  }

  /** To the place, of some at about its time, that adds least to the set-ups. */
  private boolean whereSetUpSoonest(int run, int press, int place) {
    int bestPress = -1;
    int bestPlace = 0;
    int best = Integer.MAX_VALUE;
    for (int i = 0; i < PLACES; i++) {
      int target = pressesOf[run][random.nextInt(pressesOf[run].length)];
      int near = firstNotBefore(target, ends.applyAsInt(run));
      int to = near + random.nextInt(2 * PLACES_AWAY + 1) - PLACES_AWAY;
      boolean stays = target == press && (to == place || to == place + 1);
      if (to < 0 || to > lines.length(target) || stays) {
        continue;
      }
      int more = moreSetUpS(run, target, to);
      if (more < best) {
        best = more;
        bestPress = target;
        bestPlace = to;
      }
    }
    return bestPress >= 0 && go(press, place, 1, bestPress, bestPlace);
  }

  private int moreSetUpS(int run, int press, int place) {
    int before = place == 0 ? problem.presses()[press].mounted() : lines.run(press, place - 1);
    int more = times.setUpS(before, run, press);
    if (place < lines.length(press)) {
      int after = lines.run(press, place);
      more += times.setUpS(run, after, press) - times.setUpS(before, after, press);
    }
    return more;
  }

  /** A late run goes to an earlier place. */
  private boolean ahead(int run, int press, int place) {
    int target = pressesOf[run][random.nextInt(pressesOf[run].length)];
    int latest = firstNotBefore(target, ends.applyAsInt(run));
    if (latest == 0) {
      return false;
    }
    int to = latest - 1 - (int) (latest * random.nextDouble() * random.nextDouble());
    return random.nextBoolean()
        ? go(press, place, 1, target, Math.max(0, to))
        : swap(press, place, 1, target, Math.max(0, to), 1);
  }

  private boolean go(int press, int place, int count, int target, int to) {
    int taken = Math.min(count, lines.length(press) - place);
    if (target != press) {
      if (!allowed(press, place, taken, target)) {
        return false;
      }
      lines.move(press, place, taken, target, to);
      return true;
    }
    int left = to > place ? Math.max(place, to - taken) : to;
    if (left == place) {
      return false;
    }
    lines.move(press, place, taken, press, Math.min(left, lines.length(press) - taken));
    return true;
  }

  private boolean swap(int a, int atA, int countA, int b, int atB, int countB) {
    int takenA = Math.min(countA, lines.length(a) - atA);
    int takenB = Math.min(countB, lines.length(b) - atB);
    if (a == b) {
      return swapWithin(a, Math.min(atA, atB), Math.max(atA, atB), takenA, takenB);
    }
    if ((takenA <= 0 && takenB <= 0)
        || !allowed(a, atA, takenA, b)
        || !allowed(b, atB, takenB, a)) {
      return false;
    }
    lines.swap(a, atA, takenA, b, atB, takenB);
    return true;
  }

  private boolean swapWithin(int press, int first, int second, int countA, int countB) {
    int count = Math.min(countA, second - first);
    int later = Math.min(countB, lines.length(press) - second);
    if (count <= 0 || later <= 0) {
      return false;
    }
    lines.swapWithin(press, first, count, second, later);
    return true;
  }

  private boolean allowed(int press, int place, int count, int target) {
    for (int i = place; i < place + count; i++) {
      if (!problem.runs()[lines.run(press, i)].presses()[target]) {
        return false;
      }
    }
    return true;
  }
}
