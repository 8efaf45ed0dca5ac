package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.potlife.audit.AuditReport;
import org.potlife.plan.PlanBasis;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanState;
import org.potlife.plan.Plans;
import org.potlife.plan.Publication;
import org.potlife.plan.list.ChangeList;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Following;
import org.potlife.shop.Following.Publish;
import org.potlife.shop.Shops;

/**
 * Puts a draft into force without a planner, or notes why it waits for one. That it is to be
 * decided is stored with the draft: whoever finds it so after a kill goes on from there.
 */
@ApplicationScoped
class DraftDecision {

  private static final Logger LOG = Logger.getLogger(DraftDecision.class);

  private final EntityManager entities;
  private final PlanMapping mapping;
  private final Plans plans;
  private final PlanRows rows;
  private final Shops shops;

  @Inject
  DraftDecision(
      EntityManager entities, PlanMapping mapping, Plans plans, PlanRows rows, Shops shops) {
    this.entities = entities;
    this.mapping = mapping;
    this.plans = plans;
    this.rows = rows;
    this.shops = shops;
  }

  /** Whether a draft may come into force by itself. */
  static boolean isDue(PlanOrigin origin, boolean publishWhenSound, Following following) {
    return publishWhenSound || isByRule(origin, following);
  }

  private static boolean isByRule(PlanOrigin origin, Following following) {
    return origin == PlanOrigin.EVENTS && following.publish() == Publish.WHEN_NO_PROMISE_GETS_WORSE;
  }

  /** Decides on the draft if that is still to be done. */
  @Transactional
  void decide(String id) {
    PlanEntity seen = entities.find(PlanEntity.class, id);
    if (seen == null) {
      return;
    }
    // the plant before its plans, in the order of those who publish
    shops.lockShop(seen.plant);
    entities.refresh(seen);
    if (!seen.decisionDue || !seen.state.equals(PlanState.DRAFT.word())) {
      return;
    }
    seen.decisionDue = false;
    Optional<String> objection = objection(seen).or(() -> refusal(seen));
    seen.held = objection.orElse(null);
    LOG.info(objection.map(why -> "Waits for the planner: " + why).orElse("Published"));
  }

  private Optional<String> objection(PlanEntity draft) {
    PlanBasis basis = mapping.basis(draft).orElseThrow();
    Optional<PlanEntity> inForce = rows.findPublished(draft.plant);
    // what the draft changes was judged against the plan that was in force when it was begun
    if (inForce.isPresent() && !inForce.get().id.equals(basis.published())) {
      return Optional.of(
          "Plan " + inForce.get().id + " has come into force while this one was made.");
    }
    Following following = basis.shop().settings().following();
    if (!isByRule(PlanOrigin.ofWord(draft.origin), following)) {
      return Optional.empty();
    }
    Optional<PlanSheet> before = inForce.flatMap(mapping::sheet);
    if (before.isEmpty()) {
      return Optional.of("No plan is in force that it could follow.");
    }
    PlanSheet sheet = mapping.sheet(draft).orElseThrow();
    AuditReport audit = mapping.audit(draft).orElseThrow();
    return PublicationRule.objection(
        ChangeList.of(basis.index(sheet), basis.published(), before), audit, following);
  }

  private Optional<String> refusal(PlanEntity draft) {
    Publication publication = plans.publish(draft.plant, draft.id);
    return Optional.ofNullable(publication.refused())
        .map(why -> publication.findings().isEmpty() ? why : why + " " + publication.findings());
  }
}
