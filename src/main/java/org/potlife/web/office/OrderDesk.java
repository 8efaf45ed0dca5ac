package org.potlife.web.office;

import java.util.List;
import org.potlife.order.Order;
import org.potlife.order.Promise;
import org.potlife.order.StoredOrder;

/**
 * Orders with their promises.
 *
 * @param rows those of this page
 * @param found how many there are in all
 * @param cut whether the plant has more than were looked at
 * @param from number of the first one, from 0
 */
public record OrderDesk(
    List<Row> rows, int found, boolean cut, int from, String state, String text, boolean late) {

  /** Orders on one page. */
  static final int PAGE = 50;

  /**
   * One order.
   *
   * @param promise what the plan in force says; null when it says nothing
   */
  public record Row(StoredOrder stored, Promise promise) {

    public Order order() {
      return stored.order();
    }

    /** Whether it ends late or is not on the plan. */
    public boolean troubled() {
      return promise != null && (promise.lateMinutes() > 0 || promise.plannedFinish() == null);
    }
  }

  /**
   * Where the page begins that shows what was asked for: the last one when it is beyond the end.
   */
  static int begin(int asked, int found) {
    int last = found == 0 ? 0 : (found - 1) / PAGE * PAGE;
    return Math.max(0, Math.min(asked, last));
  }

  /** Whether something was looked for, beyond the state. */
  public boolean narrowed() {
    return !text.isEmpty() || late;
  }

  /** Number of this page, from 1. */
  public int page() {
    return from / PAGE + 1;
  }

  public int pages() {
    return Math.max(1, (found + PAGE - 1) / PAGE);
  }

  /** Where the last page begins. */
  public int end() {
    return begin(found, found);
  }

  public int next() {
    return from + PAGE;
  }

  public int before() {
    return Math.max(0, from - PAGE);
  }

  public boolean hasNext() {
    return next() < found;
  }

  public boolean hasBefore() {
    return from > 0;
  }

  /** Number of the first one as people count. */
  public int first() {
    return found == 0 ? 0 : from + 1;
  }

  public int last() {
    return from + rows.size();
  }
}
