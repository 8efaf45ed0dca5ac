package org.potlife.floor.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.potlife.event.EventEffect;
import org.potlife.event.ShopEvent;
import org.potlife.order.TrialPrint;

/** A trial print has shown that the cloth discharges. */
@ApplicationScoped
class TrialPassedEffect implements EventEffect<TrialPrints.Data> {

  private final TrialPrints trials;

  @Inject
  TrialPassedEffect(TrialPrints trials) {
    this.trials = trials;
  }

  @Override
  public String type() {
    return "trial-print.passed";
  }

  @Override
  public Class<TrialPrints.Data> data() {
    return TrialPrints.Data.class;
  }

  @Override
  public Verdict apply(ShopEvent event, TrialPrints.Data data) {
    return trials.tell(event, data, TrialPrint.PASSED);
  }
}
