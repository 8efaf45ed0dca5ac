package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;

/** The ERP cancels an order. */
@ApplicationScoped
class OrderCancelledEffect implements EventEffect<OrderCancelledEffect.Data> {

  private final OrderDesk desk;

  @Inject
  OrderCancelledEffect(OrderDesk desk) {
    this.desk = desk;
  }

  /** The order's reference. */
  record Data(@NotBlank @Size(max = 60) String reference) {}

  @Override
  public String type() {
    return "order.cancelled";
  }

  @Override
  public Class<Data> data() {
    return Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, Data data) {
    return desk.cancel(event, data.reference());
  }
}
