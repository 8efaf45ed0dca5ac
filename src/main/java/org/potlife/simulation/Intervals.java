package org.potlife.simulation;

import java.util.Arrays;

/**
 * Busy times of one place, sorted and apart; neighbours that touch are joined, so that a place that
 * works through keeps a single entry.
 */
final class Intervals {

  /** So many of the last entries are looked at one by one. */
  private static final int NEAR = 4;

  private int[] from = new int[16];
  private int[] to = new int[16];
  private int count;

  void copyFrom(Intervals other) {
    count = other.count;
    ensure(count);
    System.arraycopy(other.from, 0, from, 0, count);
    System.arraycopy(other.to, 0, to, 0, count);
  }

  /** Takes over what another has before a moment, and keeps its own from then on. */
  void copyBefore(Intervals other, int moment) {
    int kept = firstEndingAfter(moment);
    int head = 0;
    while (head < other.count && other.from[head] < moment) {
      head++;
    }
    int tail = count - kept;
    if (tail > 0) {
      from[kept] = Math.max(from[kept], moment);
    }
    boolean joined = head > 0 && tail > 0 && from[kept] == Math.min(other.to[head - 1], moment);
    if (joined) {
      from[kept] = other.from[head - 1];
      head--;
    }
    ensure(head + tail);
    System.arraycopy(from, kept, from, head, tail);
    System.arraycopy(to, kept, to, head, tail);
    System.arraycopy(other.from, 0, from, 0, head);
    System.arraycopy(other.to, 0, to, 0, head);
    if (head > 0 && !joined) {
      to[head - 1] = Math.min(to[head - 1], moment);
    }
    count = head + tail;
  }

  /** Keeps its own before a moment, and takes over what another has from then on. */
  void copySince(Intervals other, int moment) {
    int head = 0;
    while (head < count && from[head] < moment) {
      head++;
    }
    if (head > 0) {
      to[head - 1] = Math.min(to[head - 1], moment);
    }
    int next = other.firstEndingAfter(moment);
    if (head > 0 && next < other.count && to[head - 1] == Math.max(other.from[next], moment)) {
      to[head - 1] = other.to[next];
      next++;
    }
    int tail = other.count - next;
    ensure(head + tail);
    System.arraycopy(other.from, next, from, head, tail);
    System.arraycopy(other.to, next, to, head, tail);
    if (tail > 0) {
      from[head] = Math.max(from[head], moment);
    }
    count = head + tail;
  }

  /** Whether the same is busy from a moment on. */
  boolean sameSince(Intervals other, int since) {
    int i = firstEndingAfter(since);
    int j = other.firstEndingAfter(since);
    int left = count - i;
    if (left != other.count - j) {
      return false;
    }
    return left == 0
        || (Math.max(from[i], since) == Math.max(other.from[j], since)
            && Arrays.equals(from, i + 1, count, other.from, j + 1, other.count)
            && Arrays.equals(to, i, count, other.to, j, other.count));
  }

  /** Start of the first gap of a length at or after a moment. */
  int earliest(int notBefore, int length) {
    return earliest(notBefore, length, Integer.MAX_VALUE);
  }

  /** The same; what is not before {@code bound} is no help and need not be right. */
  int earliest(int notBefore, int length, int bound) {
    int i = firstEndingAfter(notBefore);
    int at = notBefore;
    while (i < count && from[i] < at + length && at < bound) {
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

  /**
   * Drops the entries that follow a busy stretch without a gap of {@code least}; tells how far the
   * stretch then goes.
   */
  int packed(int busyTo, int least) {
    int end = busyTo;
    int dropped = 0;
    while (dropped < count && (from[dropped] - end < least || from[dropped] == end)) {
      end = Math.max(end, to[dropped]);
      dropped++;
    }
    if (dropped > 0) {
      count -= dropped;
      System.arraycopy(from, dropped, from, 0, count);
      System.arraycopy(to, dropped, to, 0, count);
    }
    return end;
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

  /** Looked for from the end, where plans grow. */
  private int firstEndingAfter(int t) {
    int i = count;
    int near = Math.max(0, count - NEAR);
    while (i > near && to[i - 1] > t) {
      i--;
    }
    if (i > near || near == 0 || to[near - 1] <= t) {
      return i;
    }
    int low = 0;
    int high = near - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (to[middle] > t) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private void ensure(int size) {
    if (size > from.length) {
      int length = Math.max(size, from.length * 2);
      from = Arrays.copyOf(from, length);
      to = Arrays.copyOf(to, length);
    }
  }
}
