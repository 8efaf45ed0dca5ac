package org.potlife.plan.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.audit.AuditReport;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.PromiseChange;
import org.potlife.shop.Following;

/** When a plan that was made by itself is published by itself. */
final class PublicationRule {

  private static final int MOST_PROMISES = 5;

  private PublicationRule() {}

  /** Why the plan waits for the planner; empty when it may be published. */
  static Optional<String> objection(ChangeList changes, AuditReport audit, Following following) {
    List<String> reasons = new ArrayList<>();
    if (!audit.passed()) {
      reasons.add("It breaks " + audit.findings().size() + " times a rule of the shop.");
    }
    List<PromiseChange> worse = changes.promises().stream().filter(PromiseChange::worse).toList();
    worse.stream().limit(MOST_PROMISES).map(PromiseChange::text).forEach(reasons::add);
    if (worse.size() > MOST_PROMISES) {
      reasons.add("And " + (worse.size() - MOST_PROMISES) + " more promises get worse.");
    }
    int moved = changes.stability().runsMoved();
    if (moved >= following.fewerThanRuns()) {
      reasons.add(
          "%d runs move; by itself the plant publishes when fewer than %d do."
              .formatted(moved, following.fewerThanRuns()));
    }
    return reasons.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", reasons));
  }
}
