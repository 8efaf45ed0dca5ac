package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.potlife.plan.Plans;
import org.potlife.room.KnownScreens;
import org.potlife.sheet.PlanSheet;

/** The sheet of the plan in force, for those who look a screen up on it. */
@ApplicationScoped
class ScreensInForce implements KnownScreens {

  private final ReadInForce<PlanSheet> inForce;

  @Inject
  ScreensInForce(Plans plans, EntityManager entities, PlanMapping mapping) {
    inForce = new ReadInForce<>(plans, entities, mapping::sheet);
  }

  @Override
  @Transactional
  public Optional<PlanSheet> findSheet(String plant) {
    return inForce.find(plant);
  }
}
