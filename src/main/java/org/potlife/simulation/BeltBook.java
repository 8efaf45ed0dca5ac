package org.potlife.simulation;

import java.util.Arrays;

/**
 * Load of one dryer over time as a step function: area and heat in use, the speed limit of what is
 * in the tunnel, the speed that it needs at least, and how many runs are in it. Step i holds from
 * {@code time[i]} to {@code time[i+1]}, the last one without end.
 */
final class BeltBook {

  private int[] time = new int[64];
  private int[] area = new int[64];
  private int[] heat = new int[64];
  private int[] speed = new int[64];
  private int[] least = new int[64];
  private int[] inTunnel = new int[64];
  private int count = 1;

  BeltBook(int maxSpeed) {
    time[0] = Integer.MIN_VALUE / 2;
    speed[0] = maxSpeed;
  }

  void copyFrom(BeltBook other) {
    count = other.count;
    ensure(count);
    System.arraycopy(other.time, 0, time, 0, count);
    System.arraycopy(other.area, 0, area, 0, count);
    System.arraycopy(other.heat, 0, heat, 0, count);
    System.arraycopy(other.speed, 0, speed, 0, count);
    System.arraycopy(other.least, 0, least, 0, count);
    System.arraycopy(other.inTunnel, 0, inTunnel, 0, count);
  }

  /** Index of the step that holds at {@code t}; looked for from the end, where plans grow. */
  int stepAt(int t) {
    int i = count - 1;
    while (time[i] > t) {
      i--;
    }
    return i;
  }

  int stepEnd(int step) {
    return step + 1 < count ? time[step + 1] : StaffedTime.NEVER;
  }

  int area(int step) {
    return area[step];
  }

  int heat(int step) {
    return heat[step];
  }

  int speed(int step) {
    return speed[step];
  }

  /** The belt may not run slower than this: area in use, and promises made before the plan. */
  int least(int step) {
    return Math.max(area[step], least[step]);
  }

  /** Holds the belt at a speed or more, um/min. */
  void hold(int from, int to, int leastSpeed) {
    if (from >= to) {
      return;
    }
    int first = split(from);
    int last = split(to);
    for (int i = first; i < last; i++) {
      least[i] = Math.max(least[i], leastSpeed);
    }
  }

  /** Puts a run into the tunnel: the belt is not faster than its limit from {@code from} on. */
  void occupy(int from, int to, int speedLimit) {
    int first = split(from);
    int last = split(to);
    for (int i = first; i < last; i++) {
      speed[i] = Math.min(speed[i], speedLimit);
      inTunnel[i]++;
    }
  }

  /** Lays pieces on the belt. */
  void feed(int from, int to, int moreArea, int moreHeat) {
    if (from >= to || (moreArea == 0 && moreHeat == 0)) {
      return;
    }
    int first = split(from);
    int last = split(to);
    for (int i = first; i < last; i++) {
      area[i] += moreArea;
      heat[i] += moreHeat;
    }
  }

  /** Time in which runs are in the tunnel, times the share of the belt that is empty, 1/1000 s. */
  long emptyMilliS(int from, int to) {
    long sum = 0;
    for (int i = stepAt(from); i < count && time[i] < to; i++) {
      if (inTunnel[i] > 0) {
        long length = Math.min(to, stepEnd(i)) - (long) Math.max(from, time[i]);
        sum += length * 1000 * Math.max(0, speed[i] - area[i]) / speed[i];
      }
    }
    return sum;
  }

  private int split(int t) {
    int i = stepAt(t);
    if (time[i] == t) {
      return i;
    }
    ensure(count + 1);
    int at = i + 1;
    int moved = count - at;
    System.arraycopy(time, at, time, at + 1, moved);
    System.arraycopy(area, at, area, at + 1, moved);
    System.arraycopy(heat, at, heat, at + 1, moved);
    System.arraycopy(speed, at, speed, at + 1, moved);
    System.arraycopy(least, at, least, at + 1, moved);
    System.arraycopy(inTunnel, at, inTunnel, at + 1, moved);
    time[at] = t;
    area[at] = area[i];
    heat[at] = heat[i];
    speed[at] = speed[i];
    least[at] = least[i];
    inTunnel[at] = inTunnel[i];
    count++;
    return at;
  }

  private void ensure(int size) {
    if (size > time.length) {
      int length = Math.max(size, time.length * 2);
      time = Arrays.copyOf(time, length);
      area = Arrays.copyOf(area, length);
      heat = Arrays.copyOf(heat, length);
      speed = Arrays.copyOf(speed, length);
      least = Arrays.copyOf(least, length);
      inTunnel = Arrays.copyOf(inTunnel, length);
    }
  }
}
