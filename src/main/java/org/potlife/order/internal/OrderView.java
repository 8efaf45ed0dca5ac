package org.potlife.order.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.potlife.order.Order;
import org.potlife.order.OrderState;
import org.potlife.order.Promise;
import org.potlife.order.StoredOrder;

/**
 * An order as it is read: its own fields, and what became of it.
 *
 * @param promise what the plan in force says; left out when none does
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record OrderView(@JsonUnwrapped Order order, OrderState state, long version, Promise promise) {

  static OrderView of(StoredOrder stored, Promise promise) {
    return new OrderView(stored.order(), stored.state(), stored.version(), promise);
  }
}
