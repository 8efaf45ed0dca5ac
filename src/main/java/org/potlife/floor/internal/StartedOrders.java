package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.potlife.floor.OrderProgress;
import org.potlife.order.OrderChange;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.StoredOrder;
import org.potlife.shop.Shops;

/**
 * Moves orders along as their runs go: the first thing told starts an order, and it is finished
 * when what was ordered is printed.
 */
@ApplicationScoped
class StartedOrders {

  private final Orders orders;
  private final Shops shops;
  private final EntityManager entities;
  private final ToldRuns runs;
  private final Clock clock;

  @Inject
  StartedOrders(Orders orders, Shops shops, EntityManager entities, ToldRuns runs, Clock clock) {
    this.orders = orders;
    this.shops = shops;
    this.entities = entities;
    this.runs = runs;
    this.clock = clock;
  }

  boolean isOpen(String plant, String reference) {
    return orders
        .findOrder(plant, reference)
        .filter(order -> order.state() == OrderState.OPEN || order.state() == OrderState.STARTED)
        .isPresent();
  }

  /** Something was told of a run of the order. */
  void follow(String plant, String reference) {
    Optional<StoredOrder> found = orders.findOrder(plant, reference);
    if (found.filter(order -> order.state() == OrderState.OPEN).isPresent()) {
      orders.moveTo(plant, reference, OrderState.STARTED);
    }
    if (found.isPresent() && isOpen(plant, reference) && isComplete(plant, found.get())) {
      orders.moveTo(plant, reference, OrderState.FINISHED);
    } else if (found.filter(order -> order.state() == OrderState.FINISHED).isPresent()
        && !isComplete(plant, found.get())) {
      // pieces were found spoiled after all
      orders.moveTo(plant, reference, OrderState.STARTED);
    }
  }

  /** A started order whose quantity was lowered to what is printed is finished by that. */
  void changed(@Observes OrderChange change) {
    if (change.kind() == OrderChange.Kind.CHANGED
        && change.order().state() == OrderState.STARTED
        && isComplete(change.plant(), change.order())) {
      entities.flush();
      orders.moveTo(change.plant(), change.order().order().reference(), OrderState.FINISHED);
    }
  }

  private boolean isComplete(String plant, StoredOrder stored) {
    double spoilage = shops.getShop(plant).shop().cloth().spoilagePercent();
    return OrderProgress.of(
            stored.order(),
            runs.list(
                plant, List.of(stored.order().reference()), clock.instant().plusSeconds(3600)),
            spoilage)
        .isComplete();
  }
}
