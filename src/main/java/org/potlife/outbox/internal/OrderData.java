package org.potlife.outbox.internal;

import java.time.OffsetDateTime;
import org.potlife.order.Order;
import org.potlife.order.OrderState;
import org.potlife.order.StoredOrder;

/**
 * What order.placed, order.changed and order.cancelled say.
 *
 * @param quantity garments ordered
 */
record OrderData(
    String reference,
    long version,
    OrderState state,
    String customer,
    OffsetDateTime dueAt,
    int priority,
    int quantity) {

  static OrderData of(StoredOrder stored) {
    Order order = stored.order();
    return new OrderData(
        order.reference(),
        stored.version(),
        stored.state(),
        order.customer(),
        order.dueAt(),
        order.priority(),
        order.garments().quantity());
  }
}
