package org.potlife.planning;

import java.util.Arrays;

/**
 * When the last two runs of each order are off the belt: an order is as late as its last run, so
 * that each of its runs may be off as late as the others at no cost.
 */
final class OrderOffs {

  /** By order, s. */
  private final int[] last;

  private final int[] beforeLast;
  private final int[] keptLast;
  private final int[] keptBeforeLast;

  OrderOffs(int orders) {
    last = new int[orders];
    beforeLast = new int[orders];
    keptLast = new int[orders];
    keptBeforeLast = new int[orders];
  }

  /** Nothing is off any more. */
  void clear() {
    Arrays.fill(last, 0);
    Arrays.fill(beforeLast, 0);
  }

  /** A run of an order is off at a time, s. */
  void note(int order, int off) {
    if (off >= last[order]) {
      beforeLast[order] = last[order];
      last[order] = off;
    } else {
      beforeLast[order] = Math.max(beforeLast[order], off);
    }
  }

  /** When all other runs of an order are off, for one that is off at a time, s. */
  int ofOthers(int order, int off) {
    return off == last[order] ? beforeLast[order] : last[order];
  }

  /** Remembers how it is. */
  void keep() {
    System.arraycopy(last, 0, keptLast, 0, last.length);
    System.arraycopy(beforeLast, 0, keptBeforeLast, 0, beforeLast.length);
  }

  /** Whether an order is off otherwise than remembered. */
  boolean differs(int order) {
    return last[order] != keptLast[order] || beforeLast[order] != keptBeforeLast[order];
  }
}
