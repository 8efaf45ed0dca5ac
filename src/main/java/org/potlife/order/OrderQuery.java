package org.potlife.order;

import java.time.Instant;
import java.util.Optional;

/**
 * Which orders to list, by due date and reference.
 *
 * @param dueBefore only those due before this instant
 * @param after the last order of the page before
 * @param limit orders per page, 1 to {@value #LARGEST_PAGE}
 */
public record OrderQuery(
    Optional<OrderState> state, Optional<Instant> dueBefore, Optional<After> after, int limit) {

  public static final int LARGEST_PAGE = 500;

  public OrderQuery {
    if (limit < 1 || limit > LARGEST_PAGE) {
      throw new IllegalArgumentException("limit must lie between 1 and " + LARGEST_PAGE);
    }
  }

  /** A place in the list. */
  public record After(Instant dueAt, String reference) {}
}
