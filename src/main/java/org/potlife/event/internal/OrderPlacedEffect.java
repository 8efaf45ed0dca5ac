package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.order.Order;
import org.potlife.platform.problem.FieldError;

/** The ERP places an order, or replaces it, as with PUT. */
@ApplicationScoped
class OrderPlacedEffect implements EventEffect<Order> {

  private final OrderDesk desk;

  @Inject
  OrderPlacedEffect(OrderDesk desk) {
    this.desk = desk;
  }

  @Override
  public String type() {
    return "order.placed";
  }

  @Override
  public Class<Order> data() {
    return Order.class;
  }

  @Override
  public List<FieldError> check(ShopEvent event, Order order) {
    return desk.check(event.plant(), order);
  }

  @Override
  public Verdict apply(ShopEvent event, Order order) {
    return desk.put(event, order);
  }
}
