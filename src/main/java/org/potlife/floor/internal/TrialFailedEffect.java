package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.order.TrialPrint;

/** A trial print has shown that the cloth does not discharge. */
@ApplicationScoped
class TrialFailedEffect implements EventEffect<TrialPrints.Data> {

  private final TrialPrints trials;

  @Inject
  TrialFailedEffect(TrialPrints trials) {
    this.trials = trials;
  }

  @Override
  public String type() {
    return "trial-print.failed";
  }

  @Override
  public Class<TrialPrints.Data> data() {
    return TrialPrints.Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, TrialPrints.Data data) {
    return trials.tell(event, data, TrialPrint.FAILED);
  }
}
