package org.potlife.planning;

import org.potlife.order.Order;
import org.potlife.order.Print;

/**
 * A run in the words of the order: one print on one lot.
 *
 * @param number index of the print in its order
 * @param lot number of the lot, from 1
 * @param lots lots of the order
 * @param pieces pieces, trial pieces included
 */
record PlannedRun(Order order, Print print, int number, int lot, int lots, int pieces) {

  /** Stable over plans as long as the order's lots stay. */
  String id() {
    return id(order.reference(), print.design(), print.position(), lot);
  }

  static String id(String order, String design, String position, int lot) {
    return order + ":" + design + ":" + position + ":" + lot;
  }
}
