package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Plans;
import org.potlife.plan.internal.PendingChanges.Pending;
import org.potlife.shop.Following;
import org.potlife.shop.Shops;
import org.potlife.shop.StoredShop;

/**
 * Asks for a plan when what happened has settled. While such a plan is being solved, what happens
 * further makes its search begin anew, with the best so far as its start, {@value #MOST_RESTARTS}
 * times at most: then it comes to its end, and a further plan follows it.
 */
@ApplicationScoped
class Replanning {

  /** More, and in a restless hour no plan would ever stand. */
  static final int MOST_RESTARTS = 3;

  /** Plans made by themselves and never published that are kept. */
  static final int KEPT = 20;

  private static final Logger LOG = Logger.getLogger(Replanning.class);
  private static final Duration LONGEST_REST = Duration.ofSeconds(2);
  private static final Duration SHORTEST_REST = Duration.ofMillis(50);

  private final EntityManager entities;
  private final PendingChanges pending;
  private final PlanRows rows;
  private final Plans plans;
  private final Shops shops;
  private final Clock clock;
  private final boolean byDefault;

  @Inject
  Replanning(
      EntityManager entities,
      PendingChanges pending,
      PlanRows rows,
      Plans plans,
      Shops shops,
      Clock clock,
      @ConfigProperty(name = "potlife.following", defaultValue = "true") boolean byDefault) {
    this.entities = entities;
    this.pending = pending;
    this.rows = rows;
    this.plans = plans;
    this.shops = shops;
    this.clock = clock;
    this.byDefault = byDefault;
  }

  /**
   * Looks after what is pending.
   *
   * @return after which time to look again; empty when all is done
   */
  @Transactional
  Optional<Duration> lookAfter(String task) {
    Optional<String> plant = pending.find(task).map(Pending::plant);
    if (plant.isEmpty()) {
      return Optional.empty();
    }
    // the plant before its row, in the order of those who write it
    Optional<StoredShop> shop = shops.lockShop(plant.get());
    Optional<Pending> changes = pending.find(task);
    if (shop.isEmpty() || changes.isEmpty()) {
      return Optional.empty();
    }
    return lookAfter(shop.get(), changes.get());
  }

  private Optional<Duration> lookAfter(StoredShop shop, Pending changes) {
    Following following = shop.shop().settings().following();
    Optional<PlanEntity> inForce = rows.findPublished(shop.plant());
    if (inForce.isEmpty() || !isOn(following) || isAnswered(shop)) {
      pending.done(shop.plant());
      return Optional.empty();
    }
    Duration rest = Duration.between(clock.instant(), due(following, changes));
    if (!rest.isNegative() && !rest.isZero()) {
      return Optional.of(within(rest));
    }
    if (isSolving(shop.plant())) {
      if (!restart(shop.plant())) {
        return Optional.of(LONGEST_REST);
      }
    } else {
      ask(shop, inForce.get(), following);
    }
    pending.done(shop.plant());
    return Optional.empty();
  }

  private boolean isOn(Following following) {
    return following.automatic() == null ? byDefault : following.automatic();
  }

  /** When what happened has settled, or has been restless for long enough. */
  static Instant due(Following following, Pending changes) {
    Instant settled = changes.lastAt().plusSeconds(following.settleSeconds());
    Instant latest = changes.firstAt().plusSeconds(following.settleAtMostSeconds());
    return settled.isBefore(latest) ? settled : latest;
  }

  private static Duration within(Duration rest) {
    if (rest.compareTo(LONGEST_REST) > 0) {
      return LONGEST_REST;
    }
    return rest.compareTo(SHORTEST_REST) < 0 ? SHORTEST_REST : rest;
  }

  /** Whether a plan stands, or is about to be made, that knows all that has happened. */
  private boolean isAnswered(StoredShop shop) {
    return entities
            .createQuery(
                "select count(p) from PlanEntity p where p.plant = :plant"
                    + " and ((p.state in ('solving', 'draft', 'published')"
                    + " and p.dataStamp = :stamp) or (p.state = 'solving' and p.plannedAt is null"
                    + " and p.origin = 'events'))",
                Long.class)
            .setParameter("plant", shop.plant())
            .setParameter("stamp", shop.dataStamp())
            .getSingleResult()
        > 0;
  }

  private boolean isSolving(String plant) {
    return entities
            .createQuery(
                "select count(p) from PlanEntity p where p.plant = :plant"
                    + " and p.state = 'solving' and p.origin = 'events'",
                Long.class)
            .setParameter("plant", plant)
            .getSingleResult()
        > 0;
  }

  /**
   * Lets the search that runs begin anew; false when it has done so often enough, or just ended.
   */
  private boolean restart(String plant) {
    // beside the entity, so that it cannot collide with the job that is just storing the plan
    int restarted =
        entities
            .createNativeQuery(
                "update plan set restart_requested = true where plant = :plant"
                    + " and state = 'solving' and origin = 'events' and restarts < :most")
            .setParameter("plant", plant)
            .setParameter("most", MOST_RESTARTS)
            .executeUpdate();
    if (restarted > 0) {
      LOG.infof("Plant %s has changed while a plan was solved: its search begins anew", plant);
    }
    return restarted > 0;
  }

  private void ask(StoredShop shop, PlanEntity inForce, Following following) {
    LocalDate today = LocalDate.ofInstant(clock.instant(), shop.shop().timeZone());
    int longest = shop.shop().settings().longestSolveSeconds();
    forgetOld(shop.plant());
    var plan =
        plans.request(
            shop.plant(),
            new PlanWish(
                inForce.day.isBefore(today) ? today : inForce.day,
                Math.min(following.solveSeconds(), longest),
                PlanWish.DEFAULT_SEED,
                PlanOrigin.EVENTS,
                false));
    LOG.infof(
        "Plan %s follows what happened in plant %s", plan.summary().id(), plan.summary().plant());
  }

  /** In a long night many drafts come that nobody looks at. */
  private void forgetOld(String plant) {
    entities
        .createNativeQuery(
            "delete from plan where id in (select id from plan where plant = :plant"
                + " and origin = 'events' and state in ('draft', 'failed')"
                + " order by version desc offset :kept)")
        .setParameter("plant", plant)
        .setParameter("kept", KEPT)
        .executeUpdate();
  }
}
