package org.potlife.outbox.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.Locale;
import org.potlife.event.EventApplied;
import org.potlife.event.ShopEvent;
import org.potlife.order.OrderChange;
import org.potlife.order.OrderState;
import org.potlife.outbox.Notice;
import org.potlife.outbox.Outbox;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.Plans;

/** Hears of every change within its transaction and puts into the outbox what others are told. */
@ApplicationScoped
class ChangeTeller {

  private static final String OF_ORDERS = "order.";

  private final Outbox outbox;
  private final Plans plans;
  private final PromisesTold told;
  private final PromiseTeller promises;

  @Inject
  ChangeTeller(Outbox outbox, Plans plans, PromisesTold told, PromiseTeller promises) {
    this.outbox = outbox;
    this.plans = plans;
    this.told = told;
    this.promises = promises;
  }

  void planChanged(@Observes PlanChange change) {
    PlanSummary plan = plans.getPlan(change.plant(), change.plan()).summary();
    String kind = change.kind().name().toLowerCase(Locale.ROOT);
    boolean inForce = change.kind() == PlanChange.Kind.PUBLISHED;
    String supersedes = inForce ? told.planInForce(change.plant(), change.plan()) : null;
    outbox.add(
        new Notice(
            change.plant(),
            "/plants/" + change.plant() + "/plans",
            change.plan() + ":" + kind,
            "plan." + kind,
            change.plan(),
            change.at(),
            PlanData.of(plan, supersedes)));
    if (inForce) {
      promises.tell(change);
    }
  }

  void orderChanged(@Observes OrderChange change) {
    String reference = change.order().order().reference();
    outbox.add(
        new Notice(
            change.plant(),
            "/plants/" + change.plant() + "/orders",
            reference + ":" + change.order().version(),
            "order." + change.kind().name().toLowerCase(Locale.ROOT),
            reference,
            change.at(),
            OrderData.of(change.order())));
    OrderState state = change.order().state();
    if (state == OrderState.CANCELLED || state == OrderState.FINISHED) {
      told.forget(change.plant(), reference);
    }
  }

  /**
   * What was taken in goes out under the name that its source gave it, unless it told of an order:
   * its change is told as that of any other order.
   */
  void applied(@Observes EventApplied applied) {
    ShopEvent event = applied.event();
    if (event.type().startsWith(OF_ORDERS)) {
      return;
    }
    outbox.add(
        new Notice(
            event.plant(),
            event.source(),
            event.id(),
            event.type(),
            null,
            event.time(),
            event.data()));
  }
}
