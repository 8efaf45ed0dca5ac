package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.potlife.plan.Plans;
import org.potlife.plan.Publication;
import org.potlife.shop.Shops;

/** Publishes a plan without a planner. */
@ApplicationScoped
class AutoPublication {

  private final Plans plans;
  private final Shops shops;

  @Inject
  AutoPublication(Plans plans, Shops shops) {
    this.plans = plans;
    this.shops = shops;
  }

  /**
   * Publishes the plan unless another one has come into force since it was begun: what it changes
   * was judged against the plan that was in force then.
   *
   * @param against id of that plan; null without one
   * @return why it is not published; empty when it is
   */
  @Transactional
  Optional<String> publish(String plant, String plan, String against) {
    shops.lockShop(plant);
    String inForce = plans.findCurrentId(plant).orElse(null);
    if (inForce != null && !inForce.equals(against)) {
      return Optional.of("Plan " + inForce + " has come into force while this one was made.");
    }
    Publication publication = plans.publish(plant, plan);
    return Optional.ofNullable(publication.refused())
        .map(why -> publication.findings().isEmpty() ? why : why + " " + publication.findings());
  }
}
