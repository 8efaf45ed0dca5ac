package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.Optional;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanWish;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.StoredShop;

/** The table plan. Called within a transaction. */
@ApplicationScoped
class PlanRows {

  private static final String IN_FORCE = "current";

  private final EntityManager entities;
  private final Clock clock;

  @Inject
  PlanRows(EntityManager entities, Clock clock) {
    this.entities = entities;
    this.clock = clock;
  }

  /** The plan in force. */
  Optional<PlanEntity> findPublished(String plant) {
    return entities
        .createQuery(
            "select p from PlanEntity p where p.plant = :plant and p.state = 'published'",
            PlanEntity.class)
        .setParameter("plant", plant)
        .getResultStream()
        .findFirst();
  }

  /**
   * The plan with this id, or the one in force for the id {@code current}.
   *
   * @throws ProblemException 404 when the plant has none
   */
  PlanEntity get(String plant, String id) {
    if (id.equals(IN_FORCE)) {
      return findPublished(plant)
          .orElseThrow(
              () ->
                  ProblemException.notFound(
                      "No plan is in force. Ask for one with POST on the plant's plans and publish"
                          + " it."));
    }
    return Optional.ofNullable(entities.find(PlanEntity.class, id))
        .filter(e -> e.plant.equals(plant))
        .orElseThrow(() -> ProblemException.notFound("The plant has no plan with this id."));
  }

  /** A further version; needs the plant's lock, so that no two get the same number. */
  PlanEntity add(StoredShop shop, PlanWish wish) {
    PlanEntity e = new PlanEntity();
    e.plant = shop.plant();
    e.version = latestVersion(e.plant) + 1;
    e.id = e.plant + "-" + e.version;
    e.state = PlanState.SOLVING.word();
    e.day = wish.day();
    e.solveSeconds = wish.solveSeconds();
    e.seed = wish.seed();
    e.origin = wish.origin().word();
    e.publishWhenSound = wish.publishWhenSound();
    e.requestedAt = clock.instant();
    e.dataStamp = shop.dataStamp();
    e.progress = "[]";
    entities.persist(e);
    entities.flush();
    return e;
  }

  private int latestVersion(String plant) {
    return entities
        .createQuery(
            "select coalesce(max(p.version), 0) from PlanEntity p where p.plant = :plant",
            Integer.class)
        .setParameter("plant", plant)
        .getSingleResult();
  }

  /** Puts a plan into force in the place of the one before. */
  void putIntoForce(PlanEntity plan) {
    findPublished(plan.plant).ifPresent(e -> e.state = PlanState.SUPERSEDED.word());
    // the database allows one plan in force at any moment, so the old one goes first
    entities.flush();
    plan.state = PlanState.PUBLISHED.word();
    plan.publishedAt = clock.instant();
    plan.held = null;
    plan.decisionDue = false;
    entities.flush();
  }
}
