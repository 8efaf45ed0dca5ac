package org.potlife.plan;

import java.util.List;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.shop.Shop;

/**
 * What a plan was made from.
 *
 * @param shop the plant's set-up at that time
 * @param orders the orders that were open at that time
 * @param published id of the plan in force at that time, whose frozen runs had to stay; or null
 * @param ink what the ink room had told up to that time
 */
public record PlanBasis(Shop shop, List<Order> orders, String published, InkReport ink) {

  public PlanBasis {
    orders = List.copyOf(orders);
    ink = ink == null ? InkReport.NOTHING : ink;
  }
}
