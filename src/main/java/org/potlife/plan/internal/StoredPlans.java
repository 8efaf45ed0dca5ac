package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Plans;
import org.potlife.plan.Publication;
import org.potlife.plan.StoredPlan;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** The plans in the table plan. */
@ApplicationScoped
class StoredPlans implements Plans {

  private static final String IN_FORCE = "current";

  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Shops shops;
  private final SolveJobs jobs;
  private final PlanCheck check;
  private final Event<PlanChange> changes;
  private final Clock clock;

  @Inject
  StoredPlans(
      EntityManager entities,
      PlanMapping mapping,
      Shops shops,
      SolveJobs jobs,
      PlanCheck check,
      Event<PlanChange> changes,
      Clock clock) {
    this.entities = entities;
    this.mapping = mapping;
    this.shops = shops;
    this.jobs = jobs;
    this.check = check;
    this.changes = changes;
    this.clock = clock;
  }

  @Override
  @Transactional
  public StoredPlan request(String plant, PlanWish wish) {
    StoredShop shop = lock(plant);
    PlanEntity e = new PlanEntity();
    e.plant = plant;
    e.version = latestVersion(plant) + 1;
    e.id = plant + "-" + e.version;
    e.state = PlanState.SOLVING.word();
    e.day = wish.day();
    e.solveSeconds = wish.solveSeconds();
    e.seed = wish.seed();
    e.publishWhenSound = wish.publishWhenSound();
    e.requestedAt = clock.instant();
    e.dataStamp = shop.dataStamp();
    e.progress = "[]";
    entities.persist(e);
    entities.flush();
    // in the same transaction: a plan without its job would never be solved
    jobs.schedule(e.id);
    return stored(e, shop);
  }

  @Override
  @Transactional
  public Optional<String> findCurrentId(String plant) {
    return entities
        .createQuery(
            "select p.id from PlanEntity p where p.plant = :plant and p.state = 'published'",
            String.class)
        .setParameter("plant", plant)
        .getResultStream()
        .findFirst();
  }

  @Override
  @Transactional
  public Optional<StoredPlan> findCurrent(String plant) {
    return shops.findShop(plant).flatMap(shop -> findPublished(plant).map(e -> stored(e, shop)));
  }

  @Override
  @Transactional
  public StoredPlan getPlan(String plant, String id) {
    StoredShop shop = shops.getShop(plant);
    return stored(get(plant, id), shop);
  }

  @Override
  @Transactional
  public List<PlanSummary> listPlans(String plant, int limit) {
    StoredShop shop = shops.getShop(plant);
    return entities
        .createQuery(
            "select p from PlanEntity p where p.plant = :plant order by p.version desc",
            PlanEntity.class)
        .setParameter("plant", plant)
        .setMaxResults(limit)
        .getResultStream()
        .map(e -> mapping.summary(e, shop.dataStamp(), shop.shop().timeZone()))
        .toList();
  }

  @Override
  @Transactional
  public Publication publish(String plant, String id) {
    // the plant's lock: no order may change between the look at the stamp and the publication
    StoredShop shop = lock(plant);
    PlanEntity draft = get(plant, id);
    Optional<PlanEntity> before = findPublished(plant);
    String refused = refusal(draft, shop);
    if (refused != null) {
      return new Publication(stored(draft, shop), refused, List.of());
    }
    AuditReport audit =
        check.check(
            mapping.basis(draft).orElseThrow(),
            mapping.sheet(draft).orElseThrow(),
            before.flatMap(mapping::sheet));
    if (!audit.passed()) {
      return new Publication(
          stored(draft, shop),
          "The plan breaks " + audit.findings().size() + " times a rule of the shop.",
          audit.findings());
    }
    before.ifPresent(e -> e.state = PlanState.SUPERSEDED.word());
    // the database allows one plan in force at any moment, so the old one goes first
    entities.flush();
    draft.state = PlanState.PUBLISHED.word();
    draft.publishedAt = clock.instant();
    draft.audit = mapping.write(audit);
    entities.flush();
    changes.fire(
        new PlanChange(
            plant, draft.id, draft.version, PlanChange.Kind.PUBLISHED, draft.publishedAt));
    return new Publication(stored(draft, shop), null, List.of());
  }

  private static String refusal(PlanEntity draft, StoredShop shop) {
    if (!draft.state.equals(PlanState.DRAFT.word())) {
      return "Only a draft can be published; this plan is " + draft.state + ".";
    }
    if (draft.dataStamp != shop.dataStamp()) {
      return "The plan is stale: set-up or orders of the plant have changed since it was made."
          + " Ask for a new plan.";
    }
    return null;
  }

  @Override
  @Transactional
  public StoredPlan stop(String plant, String id) {
    StoredShop shop = shops.getShop(plant);
    PlanEntity e = get(plant, id);
    // beside the entity, so that it cannot collide with the job that is just storing the plan
    entities
        .createNativeQuery(
            "update plan set stop_requested = true where id = :id and state = 'solving'")
        .setParameter("id", e.id)
        .executeUpdate();
    return stored(e, shop);
  }

  private StoredShop lock(String plant) {
    return shops.lockShop(plant).orElseGet(() -> shops.getShop(plant));
  }

  private int latestVersion(String plant) {
    return entities
        .createQuery(
            "select coalesce(max(p.version), 0) from PlanEntity p where p.plant = :plant",
            Integer.class)
        .setParameter("plant", plant)
        .getSingleResult();
  }

  private Optional<PlanEntity> findPublished(String plant) {
    return entities
        .createQuery(
            "select p from PlanEntity p where p.plant = :plant and p.state = 'published'",
            PlanEntity.class)
        .setParameter("plant", plant)
        .getResultStream()
        .findFirst();
  }

  private PlanEntity get(String plant, String id) {
    if (id.equals(IN_FORCE)) {
      return findPublished(plant)
          .orElseThrow(
              () ->
                  ProblemException.notFound(
                      "No plan is in force. Ask for one with POST on the plant's plans and publish"
                          + " it."));
    }
    return Optional.ofNullable(entities.find(PlanEntity.class, id, LockModeType.NONE))
        .filter(e -> e.plant.equals(plant))
        .orElseThrow(() -> ProblemException.notFound("The plant has no plan with this id."));
  }

  private StoredPlan stored(PlanEntity e, StoredShop shop) {
    return mapping.stored(e, shop.dataStamp(), shop.shop().timeZone());
  }
}
