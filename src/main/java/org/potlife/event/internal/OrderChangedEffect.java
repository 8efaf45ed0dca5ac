package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.order.Order;
import org.potlife.platform.problem.FieldError;

/** The ERP changes an order that is there; the data is the whole order as with PUT. */
@ApplicationScoped
class OrderChangedEffect implements EventEffect<Order> {

  private final OrderDesk desk;

  @Inject
  OrderChangedEffect(OrderDesk desk) {
    this.desk = desk;
  }

  @Override
  public String type() {
    return "order.changed";
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
    if (desk.find(event.plant(), order.reference()).isEmpty()) {
      return OrderDesk.unknown(order.reference());
    }
    return desk.put(event, order);
  }
}
