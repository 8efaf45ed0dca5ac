package org.potlife.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Staffed time of a press or a room over the horizon, in whole seconds from the plan's origin.
 *
 * <p>Stretches are sorted and apart. Stretches whose gap is at most the longest pause belong to one
 * span (R3). All look-ups start from an index by hour, so that they cost a few steps.
 */
public final class StaffedTime {

  /** No such time within the horizon. */
  public static final int NEVER = Integer.MAX_VALUE / 2;

  private static final int HOUR = 3600;

  private final int[] start;
  private final int[] end;
  private final int[] workBefore;
  private final int[] spanLast;
  private final int[] overtimeBefore;
  private final boolean[] overtime;
  private final int[] byHour;

  /**
   * @param start starts of the stretches, seconds, ascending
   * @param end ends, seconds, each greater than its start and not beyond the next start
   * @param overtime whether a stretch costs extra
   * @param maxPauseS longest gap within a span, seconds
   */
  public StaffedTime(int[] start, int[] end, boolean[] overtime, int maxPauseS) {
    this.start = start.clone();
    this.end = end.clone();
    this.overtime = overtime.clone();
    int n = start.length;
    workBefore = new int[n + 1];
    overtimeBefore = new int[n + 1];
    spanLast = new int[n];
    for (int i = 0; i < n; i++) {
      if (end[i] <= start[i] || (i > 0 && start[i] < end[i - 1])) {
        throw new IllegalArgumentException("stretches must be sorted and apart, see number " + i);
      }
      int length = end[i] - start[i];
      workBefore[i + 1] = workBefore[i] + length;
      overtimeBefore[i + 1] = overtimeBefore[i] + (overtime[i] ? length : 0);
    }
    for (int i = n - 1; i >= 0; i--) {
      boolean joined = i + 1 < n && start[i + 1] - end[i] <= maxPauseS;
      spanLast[i] = joined ? spanLast[i + 1] : i;
    }
    byHour = indexByHour(this.end);
  }

  /** Staffed without end or pause, from a moment on. */
  public static StaffedTime always(int from) {
    return new StaffedTime(new int[] {from}, new int[] {NEVER}, new boolean[] {false}, 0);
  }

  private static int[] indexByHour(int[] end) {
    int n = end.length;
    int hours = n == 0 || end[n - 1] >= NEVER ? 1 : end[n - 1] / HOUR + 2;
    int[] index = new int[hours];
    int i = 0;
    for (int hour = 0; hour < hours; hour++) {
      while (i < n && end[i] <= hour * HOUR) {
        i++;
      }
      index[hour] = i;
    }
    return index;
  }

  /** Index of the first stretch that ends after {@code t}; the number of stretches if none. */
  int stretchAt(int t) {
    int hour = t <= 0 ? 0 : t / HOUR;
    int i = byHour[Math.min(hour, byHour.length - 1)];
    while (i < end.length && end[i] <= t) {
      i++;
    }
    return i;
  }

  /** Staffed seconds of the longest span. */
  public int longestSpan() {
    int longest = 0;
    for (int i = 0; i < start.length; i = spanLast[i] + 1) {
      longest = Math.max(longest, workBefore[spanLast[i] + 1] - workBefore[i]);
    }
    return longest;
  }

  /** Whether it has more than one span, so that what does not fit before an end waits. */
  public boolean closes() {
    return start.length > 0 && spanLast[0] < start.length - 1;
  }

  int count() {
    return start.length;
  }

  int start(int stretch) {
    return start[stretch];
  }

  int end(int stretch) {
    return end[stretch];
  }

  /** Index of the last stretch of the span that a stretch belongs to. */
  int spanLast(int stretch) {
    return spanLast[stretch];
  }

  /** The moment itself if staffed, else the next staffed one, else {@link #NEVER}. */
  public int next(int t) {
    int i = stretchAt(t);
    return i == end.length ? NEVER : Math.max(t, start[i]);
  }

  /** The staffed parts of a time, each with its start and end, s. */
  public List<int[]> within(int from, int to) {
    List<int[]> parts = new ArrayList<>();
    for (int i = stretchAt(from); i < start.length && start[i] < to; i++) {
      parts.add(new int[] {Math.max(from, start[i]), Math.min(to, end[i])});
    }
    return parts;
  }

  /** Staffed seconds from the origin to {@code t}. */
  public int workAt(int t) {
    int i = stretchAt(t);
    return i == end.length ? workBefore[i] : workBefore[i] + Math.max(0, t - start[i]);
  }

  /** Overtime seconds from the origin to {@code t}. */
  public int overtimeAt(int t) {
    int i = stretchAt(t);
    if (i == end.length || !overtime[i]) {
      return overtimeBefore[i];
    }
    return overtimeBefore[i] + Math.max(0, t - start[i]);
  }

  /** When work that starts at {@code work} staffed seconds begins; on an edge the later side. */
  public int startOf(int work) {
    int i = stretchOf(work + 1);
    return i < 0 ? NEVER : start[i] + work - workBefore[i];
  }

  /** When {@code work} staffed seconds are done; on an edge the earlier side. */
  public int endOf(int work) {
    if (work == 0) {
      return start.length == 0 ? NEVER : start[0];
    }
    int i = stretchOf(work);
    return i < 0 ? NEVER : start[i] + work - workBefore[i];
  }

  private int stretchOf(int work) {
    int found = Arrays.binarySearch(workBefore, work);
    int i = found >= 0 ? found - 1 : -found - 2;
    return i >= start.length ? -1 : Math.max(0, i);
  }

  /** End of {@code work} staffed seconds that begin at or after {@code t}; NEVER if too late. */
  public int add(int t, int work) {
    int i = stretchAt(t);
    if (i == end.length) {
      return NEVER;
    }
    int at = Math.max(t, start[i]);
    int left = work;
    while (left > end[i] - at) {
      left -= end[i] - at;
      i++;
      if (i == end.length) {
        return NEVER;
      }
      at = start[i];
    }
    return at + left;
  }

  /**
   * End of {@code work} staffed seconds that begin at or after {@code t} and stay within one span;
   * NEVER if none is long enough.
   */
  public int addInSpan(int t, int work) {
    int i = stretchAt(t);
    while (i < end.length) {
      int at = Math.max(t, start[i]);
      int next = spanLast[i] + 1;
      if (work <= workBefore[next] - workBefore[i] - (at - start[i])) {
        int left = work;
        while (left > end[i] - at) {
          left -= end[i] - at;
          i++;
          at = start[i];
        }
        return at + left;
      }
      i = next;
    }
    return NEVER;
  }

  /** Latest start of {@code work} staffed seconds that end at {@code t}; -1 if before the first. */
  public int subtract(int t, int work) {
    int i = stretchAt(t);
    int left = work;
    if (i < end.length && start[i] < t) {
      if (left <= t - start[i]) {
        return t - left;
      }
      left -= t - start[i];
    } else if (left == 0) {
      return t;
    }
    for (i--; i >= 0; i--) {
      if (left <= end[i] - start[i]) {
        return end[i] - left;
      }
      left -= end[i] - start[i];
    }
    return -1;
  }
}
