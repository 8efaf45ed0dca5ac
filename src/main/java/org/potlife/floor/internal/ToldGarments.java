package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;
import org.potlife.order.Order;
import org.potlife.order.OrderState;
import org.potlife.order.Orders;
import org.potlife.order.StoredOrder;

/** Where what is told of an order's garments and trial prints changes the order. */
@ApplicationScoped
class ToldGarments {

  private final Orders orders;
  private final EventLog log;

  @Inject
  ToldGarments(Orders orders, EventLog log) {
    this.orders = orders;
    this.log = log;
  }

  /**
   * Changes an order, unless a newer event of these types and with the same names was told.
   *
   * @param names fields of the data that name what it is about
   */
  Verdict change(
      ShopEvent event,
      String reference,
      Set<String> types,
      List<String> names,
      UnaryOperator<Order> to) {
    Optional<StoredOrder> found = orders.findOrder(event.plant(), reference);
    if (found.isEmpty()) {
      return Verdict.parked("The plant has no order " + reference + ".");
    }
    OrderState state = found.get().state();
    if (state == OrderState.FINISHED || state == OrderState.CANCELLED) {
      return Verdict.parked("Order %s is %s.".formatted(reference, state.word()));
    }
    boolean newer =
        log.list(event.plant(), types, event.time()).stream()
            .filter(other -> other.time().isAfter(event.time()))
            .anyMatch(other -> names.stream().allMatch(name -> isSame(name, event, other)));
    if (!newer) {
      // the document stays as old as it was told; only this of it is newer
      orders.putTold(
          event.plant(),
          to.apply(found.get().order()),
          orders.findToldAt(event.plant(), reference).orElseThrow());
    }
    return Verdict.noted();
  }

  private static boolean isSame(String name, ShopEvent one, ShopEvent other) {
    return one.data().path(name).equals(other.data().path(name));
  }
}
