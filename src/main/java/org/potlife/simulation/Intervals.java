package org.potlife.simulation;

import java.util.Arrays;

/**
 * Busy times of one place, sorted and apart; neighbours that touch are joined, so that a place that
 * works through keeps a single entry.
 */
final class Intervals {

  private int[] from = new int[16];
  private int[] to = new int[16];
  private int count;

  void copyFrom(Intervals other) {
    count = other.count;
    ensure(count);
    System.arraycopy(other.from, 0, from, 0, count);
    System.arraycopy(other.to, 0, to, 0, count);
  }

  /** Start of the first gap of a length at or after a moment. */
  int earliest(int notBefore, int length) {
    int i = firstEndingAfter(notBefore);
    int at = notBefore;
    while (i < count && from[i] < at + length) {
      at = Math.max(at, to[i]);
      i++;
    }
    return at;
  }

  /** The latest end, at most {@code end}, so that {@code [end - length, end)} meets no entry. */
  int latestEnd(int end, int length) {
    int at = end;
    int i = count - 1;
    while (i >= 0 && from[i] >= at) {
      i--;
    }
    while (i >= 0 && to[i] > at - length) {
      at = from[i];
      i--;
    }
    return at;
  }

  void book(int start, int end) {
    if (start >= end) {
      return;
    }
    int i = firstEndingAfter(start);
    boolean joinsBefore = i > 0 && to[i - 1] == start;
    boolean joinsAfter = i < count && from[i] == end;
    if (joinsBefore && joinsAfter) {
      to[i - 1] = to[i];
      System.arraycopy(from, i + 1, from, i, count - i - 1);
      System.arraycopy(to, i + 1, to, i, count - i - 1);
      count--;
    } else if (joinsBefore) {
      to[i - 1] = end;
    } else if (joinsAfter) {
      from[i] = start;
    } else {
      ensure(count + 1);
      System.arraycopy(from, i, from, i + 1, count - i);
      System.arraycopy(to, i, to, i + 1, count - i);
      from[i] = start;
      to[i] = end;
      count++;
    }
  }

  /** Takes back a booking, whole or a part of an entry. */
  void free(int start, int end) {
    if (start >= end) {
      return;
    }
    int i = firstEndingAfter(start);
    boolean keepsHead = from[i] < start;
    boolean keepsTail = to[i] > end;
    if (keepsHead && keepsTail) {
      ensure(count + 1);
      System.arraycopy(from, i, from, i + 1, count - i);
      System.arraycopy(to, i, to, i + 1, count - i);
      count++;
      to[i] = start;
      from[i + 1] = end;
    } else if (keepsHead) {
      to[i] = start;
    } else if (keepsTail) {
      from[i] = end;
    } else {
      System.arraycopy(from, i + 1, from, i, count - i - 1);
      System.arraycopy(to, i + 1, to, i, count - i - 1);
      count--;
    }
  }

  private int firstEndingAfter(int t) {
    int i = count;
    while (i > 0 && to[i - 1] > t) {
      i--;
    }
    return i;
  }

  private void ensure(int size) {
    if (size > from.length) {
      int length = Math.max(size, from.length * 2);
      from = Arrays.copyOf(from, length);
      to = Arrays.copyOf(to, length);
    }
  }
}
