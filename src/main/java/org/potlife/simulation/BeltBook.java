package org.potlife.simulation;

import java.util.Arrays;

/**
 * Load of one dryer over time as a step function: area and heat in use, the speed limit of what is
 * in the tunnel, the speed that it needs at least, and how many runs are in it. Step i holds from
 * its time to the time of step i+1, the last one without end.
 *
 * <p>The columns of a step lie side by side, since they are read together.
 */
final class BeltBook {

  private static final int TIME = 0;
  private static final int AREA = 1;
  private static final int HEAT = 2;
  private static final int SPEED = 3;
  private static final int LEAST = 4;
  private static final int IN_TUNNEL = 5;
  private static final int COLUMNS = 6;

  private int[] rows = new int[32 * COLUMNS];
  private int count = 1;

  BeltBook(int maxSpeed) {
    rows[TIME] = Integer.MIN_VALUE / 2;
    rows[SPEED] = maxSpeed;
  }

  /** Takes over what holds at {@code since} and later; nothing is asked of the time before. */
  void copyFrom(BeltBook other, int since) {
    int first = other.stepAt(since);
    count = other.count - first;
    ensure(count);
    System.arraycopy(other.rows, first * COLUMNS, rows, 0, count * COLUMNS);
  }

  /** Whether the load is the same from {@code since} on. */
  boolean sameSince(BeltBook other, int since) {
    int first = stepAt(since);
    int firstOfOther = other.stepAt(since);
    int steps = count - first;
    // the first step may have begun at another time
    return steps == other.count - firstOfOther
        && Arrays.equals(
            rows,
            first * COLUMNS + AREA,
            count * COLUMNS,
            other.rows,
            firstOfOther * COLUMNS + AREA,
            other.count * COLUMNS);
  }

  /** Index of the step that holds at {@code t}; looked for from the end, where plans grow. */
  int stepAt(int t) {
    int at = (count - 1) * COLUMNS;
    while (at > 0 && rows[at] > t) {
      at -= COLUMNS;
    }
    return at / COLUMNS;
  }

  int stepEnd(int step) {
    return step + 1 < count ? rows[(step + 1) * COLUMNS] : StaffedTime.NEVER;
  }

  int area(int step) {
    return rows[step * COLUMNS + AREA];
  }

  int heat(int step) {
    return rows[step * COLUMNS + HEAT];
  }

  int speed(int step) {
    return rows[step * COLUMNS + SPEED];
  }

  /** The belt may not run slower than this: area in use, and promises made before the plan. */
  int least(int step) {
    return Math.max(rows[step * COLUMNS + AREA], rows[step * COLUMNS + LEAST]);
  }

  /** Holds the belt at a speed or more, um/min. */
  void hold(int from, int to, int leastSpeed) {
    if (from >= to) {
      return;
    }
    int first = split(from);
    int last = split(to);
    for (int at = first * COLUMNS; at < last * COLUMNS; at += COLUMNS) {
      rows[at + LEAST] = Math.max(rows[at + LEAST], leastSpeed);
    }
  }

  /** Puts a run into the tunnel: the belt is not faster than its limit from {@code from} on. */
  void occupy(int from, int to, int speedLimit) {
    int first = split(from);
    int last = split(to);
    for (int at = first * COLUMNS; at < last * COLUMNS; at += COLUMNS) {
      rows[at + SPEED] = Math.min(rows[at + SPEED], speedLimit);
      rows[at + IN_TUNNEL]++;
    }
  }

  /** Lays pieces on the belt. */
  void feed(int from, int to, int moreArea, int moreHeat) {
    if (from >= to || (moreArea == 0 && moreHeat == 0)) {
      return;
    }
    int first = split(from);
    int last = split(to);
    for (int at = first * COLUMNS; at < last * COLUMNS; at += COLUMNS) {
      rows[at + AREA] += moreArea;
      rows[at + HEAT] += moreHeat;
    }
  }

  /** Time in which runs are in the tunnel, times the share of the belt that is empty, 1/1000 s. */
  long emptyMilliS(int from, int to) {
    long sum = 0;
    for (int i = stepAt(from); i < count && rows[i * COLUMNS] < to; i++) {
      int at = i * COLUMNS;
      if (rows[at + IN_TUNNEL] > 0) {
        long length = Math.min(to, stepEnd(i)) - (long) Math.max(from, rows[at]);
        int speed = rows[at + SPEED];
        sum += length * 1000 * Math.max(0, speed - rows[at + AREA]) / speed;
      }
    }
    return sum;
  }

  private int split(int t) {
    int i = stepAt(t);
    if (rows[i * COLUMNS] == t) {
      return i;
    }
    ensure(count + 1);
    int at = (i + 1) * COLUMNS;
    System.arraycopy(rows, at, rows, at + COLUMNS, count * COLUMNS - at);
    System.arraycopy(rows, at - COLUMNS, rows, at, COLUMNS);
    rows[at] = t;
    count++;
    return i + 1;
  }

  private void ensure(int size) {
    if (size * COLUMNS > rows.length) {
      rows = Arrays.copyOf(rows, Math.max(size * COLUMNS, rows.length * 2));
    }
  }
}
