package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.function.Function;
import org.potlife.plan.Plans;
import org.potlife.room.KnownScreens;
import org.potlife.sheet.PlanSheet;

/** The sheet of the plan in force, for those who look a screen up on it. */
@ApplicationScoped
class ScreensInForce implements KnownScreens {

  private final SheetInForce<PlanSheet> inForce;

  @Inject
  ScreensInForce(Plans plans, EntityManager entities, PlanMapping mapping) {
    inForce = new SheetInForce<>(plans, entities, mapping, Function.identity());
  }

  @Override
  @Transactional
  public Optional<PlanSheet> findSheet(String plant) {
    return inForce.find(plant);
  }
}
