package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanProgress;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanSummary;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Plans;
import org.potlife.plan.Publication;
import org.potlife.plan.StoredPlan;
import org.potlife.platform.http.Preconditions;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/** The plans in the table plan. */
@ApplicationScoped
class StoredPlans implements Plans {

  private final EntityManager entities;
  private final PlanRows rows;
  private final PlanMapping mapping;
  private final Shops shops;
  private final SolveJobs jobs;
  private final PlanCheck check;
  private final Restoration restoration;
  private final Event<PlanChange> changes;

  @Inject
  StoredPlans(
      EntityManager entities,
      PlanRows rows,
      PlanMapping mapping,
      Shops shops,
      SolveJobs jobs,
      PlanCheck check,
      Restoration restoration,
      Event<PlanChange> changes) {
    this.entities = entities;
    this.rows = rows;
    this.mapping = mapping;
    this.shops = shops;
    this.jobs = jobs;
    this.check = check;
    this.restoration = restoration;
    this.changes = changes;
  }

  @Override
  @Transactional
  public StoredPlan request(String plant, PlanWish wish) {
    StoredShop shop = lock(plant);
    PlanEntity e = rows.add(shop, wish);
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
    return shops
        .findShop(plant)
        .flatMap(shop -> rows.findPublished(plant).map(e -> stored(e, shop)));
  }

  @Override
  @Transactional
  public Optional<PlanSummary> findCurrentSummary(String plant) {
    return shops
        .findShop(plant)
        .flatMap(
            shop ->
                rows.findPublished(plant)
                    .map(e -> mapping.summary(e, shop.dataStamp(), shop.shop().timeZone())));
  }

  @Override
  @Transactional
  public StoredPlan getPlan(String plant, String id) {
    StoredShop shop = shops.getShop(plant);
    return stored(rows.get(plant, id), shop);
  }

  @Override
  @Transactional
  public PlanProgress getProgress(String plant, String id) {
    PlanEntity e = rows.get(plant, id);
    return new PlanProgress(e.id, PlanState.ofWord(e.state), mapping.progress(e));
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
  public Publication publish(String plant, String id, Preconditions preconditions) {
    // the plant's lock: no order may change between the look at the stamp and the publication
    StoredShop shop = lock(plant);
    PlanEntity draft = rows.get(plant, id);
    preconditions.allowChange(OptionalLong.of(draft.rowVersion));
    Optional<PlanEntity> before = rows.findPublished(plant);
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
    draft.audit = mapping.write(audit);
    rows.putIntoForce(draft);
    changes.fire(
        new PlanChange(
            plant, draft.id, draft.version, PlanChange.Kind.PUBLISHED, draft.publishedAt));
    return new Publication(stored(draft, shop), null, List.of());
  }

  @Override
  @Transactional
  public Publication restore(String plant, String id, Preconditions preconditions) {
    StoredShop shop = lock(plant);
    PlanEntity old = rows.get(plant, id);
    preconditions.allowChange(OptionalLong.of(old.rowVersion));
    Restoration.Tried tried = restoration.tryBringing(old, shop);
    return new Publication(stored(tried.plan(), shop), tried.refused(), tried.findings());
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
    PlanEntity e = rows.get(plant, id);
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

  private StoredPlan stored(PlanEntity e, StoredShop shop) {
    return mapping.stored(e, shop.dataStamp(), shop.shop().timeZone());
  }
}
