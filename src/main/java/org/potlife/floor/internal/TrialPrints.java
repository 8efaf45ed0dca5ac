package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.ink.Process;
import org.potlife.order.Order;
import org.potlife.order.Orders;
import org.potlife.order.Print;
import org.potlife.order.StoredOrder;
import org.potlife.order.TrialPrint;

/** How trial prints turned out (R18). */
@ApplicationScoped
class TrialPrints {

  private static final Set<String> TYPES = Set.of("trial-print.passed", "trial-print.failed");

  private final Orders orders;
  private final ToldGarments garments;

  @Inject
  TrialPrints(Orders orders, ToldGarments garments) {
    this.orders = orders;
    this.garments = garments;
  }

  /**
   * @param person who looked at it
   */
  record Data(
      @NotBlank @Size(max = 60) String order,
      @NotBlank @Size(max = 60) String design,
      @NotBlank @Size(max = 40) String position,
      @Size(max = 60) String person) {

    private boolean isOf(Print print) {
      return print.design().equals(design) && print.position().equals(position);
    }
  }

  Verdict tell(ShopEvent event, Data data, TrialPrint outcome) {
    Optional<StoredOrder> found = orders.findOrder(event.plant(), data.order());
    if (found.isPresent()) {
      Optional<Print> print = found.get().order().prints().stream().filter(data::isOf).findFirst();
      if (print.isEmpty()) {
        return Verdict.parked(
            "Order %s has no print %s on the %s."
                .formatted(data.order(), data.design(), data.position()));
      }
      if (print.get().process() != Process.DISCHARGE) {
        return Verdict.parked(
            "%s is no discharge print, it needs no trial.".formatted(data.design()));
      }
    }
    return garments.change(
        event,
        data.order(),
        TYPES,
        List.of("order", "design", "position"),
        order -> tried(order, data, outcome));
  }

  private static Order tried(Order order, Data data, TrialPrint outcome) {
    List<Print> prints = new ArrayList<>();
    for (Print print : order.prints()) {
      prints.add(data.isOf(print) ? tried(print, outcome) : print);
    }
    return order.with(order.garments(), prints);
  }

  private static Print tried(Print print, TrialPrint outcome) {
    return new Print(
        print.design(),
        print.position(),
        print.process(),
        print.artworkApproved(),
        outcome,
        print.passes(),
        print.widthMm(),
        print.heightMm(),
        print.flashes(),
        print.colours());
  }
}
