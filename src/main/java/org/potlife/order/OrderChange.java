package org.potlife.order;

import java.time.Instant;

/**
 * An order was placed, changed or cancelled. Fired as a CDI event within the transaction of the
 * change: an observer that fails undoes it.
 *
 * @param at when it was stored
 */
public record OrderChange(String plant, StoredOrder order, Kind kind, Instant at) {

  /** What happened; a cancelled order that is pushed again is placed again. */
  public enum Kind {
    PLACED,
    CHANGED,
    CANCELLED
  }
}
