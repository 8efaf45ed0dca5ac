package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.order.Order;
import org.potlife.order.OrderCheck;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.StoredOrder;
import org.potlife.platform.problem.FieldError;
import org.potlife.shop.Shops;

/**
 * Where orders that are told by events are placed, changed and cancelled, as by the REST writes.
 */
@ApplicationScoped
class OrderDesk {

  private final Orders orders;
  private final Shops shops;
  private final ToldOrders told;

  @Inject
  OrderDesk(Orders orders, Shops shops, ToldOrders told) {
    this.orders = orders;
    this.shops = shops;
    this.told = told;
  }

  List<FieldError> check(String plant, Order order) {
    return OrderCheck.check(order, shops.getShop(plant).shop());
  }

  Optional<StoredOrder> find(String plant, String reference) {
    return orders.findOrder(plant, reference);
  }

  /** Stores the order's document, unless a newer one is known. */
  Verdict put(ShopEvent event, Order order) {
    Optional<StoredOrder> known = find(event.plant(), order.reference());
    if (isOlder(event, order.reference())) {
      return Verdict.noted();
    }
    if (known.filter(stored -> stored.state() == OrderState.FINISHED).isPresent()) {
      return Verdict.parked(
          order.reference() + " is finished. Place what is still wanted under another reference.");
    }
    told.telling(
        event.plant(), order.reference(), () -> orders.putTold(event.plant(), order, event.time()));
    // the data stamp moved with the order, if anything changed
    return Verdict.noted();
  }

  /** Cancels, unless the order's document was told anew since. */
  Verdict cancel(ShopEvent event, String reference) {
    Optional<StoredOrder> known = find(event.plant(), reference);
    if (known.isEmpty()) {
      return unknown(reference);
    }
    OrderState state = known.get().state();
    if (isOlder(event, reference)) {
      return Verdict.noted();
    }
    if (state == OrderState.STARTED || state == OrderState.FINISHED) {
      return Verdict.parked(
          "%s is %s, so it cannot be cancelled; lower its quantity instead."
              .formatted(reference, state.word()));
    }
    told.telling(
        event.plant(), reference, () -> orders.cancelTold(event.plant(), reference, event.time()));
    return Verdict.noted();
  }

  static Verdict unknown(String reference) {
    return Verdict.parked("The plant has no order " + reference + ".");
  }

  private boolean isOlder(ShopEvent event, String reference) {
    return orders
        .findToldAt(event.plant(), reference)
        .filter(toldAt -> toldAt.isAfter(event.time()))
        .isPresent();
  }
}
