package org.potlife.plan;

import java.util.List;
import org.potlife.order.Order;
import org.potlife.shop.Shop;

/**
 * What a plan was made from.
 *
 * @param shop the plant's set-up at that time
 * @param orders the orders that were open at that time
 * @param published id of the plan in force at that time, whose frozen runs had to stay; or null
 */
public record PlanBasis(Shop shop, List<Order> orders, String published) {

  public PlanBasis {
    orders = List.copyOf(orders);
  }
}
