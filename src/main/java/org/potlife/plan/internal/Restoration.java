package org.potlife.plan.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
import org.potlife.order.Order;
import org.potlife.plan.PlanChange;
import org.potlife.plan.PlanOrigin;
import org.potlife.plan.PlanState;
import org.potlife.plan.PlanWish;
import org.potlife.plan.Stability;
import org.potlife.plan.internal.PlantNow.Stand;
import org.potlife.planning.PlanRequest;
import org.potlife.planning.Planner;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.StoredShop;

/**
 * Brings an earlier plan back. It is not simply put into force again: hours have gone by, runs have
 * begun, orders have come. A further version is made from the present, in which what has begun
 * stays and the earlier plan's other runs stand on their presses in their order.
 */
@ApplicationScoped
class Restoration {

  private static final int MOST_REASONS = 5;

  private final PlanRows rows;
  private final PlanMapping mapping;
  private final PlantNow plants;
  private final Planner planner;
  private final PlanCheck check;
  private final Event<PlanChange> changes;

  @Inject
  Restoration(
      PlanRows rows,
      PlanMapping mapping,
      PlantNow plants,
      Planner planner,
      PlanCheck check,
      Event<PlanChange> changes) {
    this.rows = rows;
    this.mapping = mapping;
    this.plants = plants;
    this.planner = planner;
    this.check = check;
    this.changes = changes;
  }

  /**
   * What became of it.
   *
   * @param plan the new version; the earlier plan when it is refused
   * @param refused why it is refused, in words; null when the new version is in force
   * @param findings broken rules, when these are the reason
   */
  record Tried(PlanEntity plan, String refused, List<Finding> findings) {}

  /** Brings it back or says why not. Within the transaction that holds the plant's lock. */
  Tried tryBringing(PlanEntity old, StoredShop shop) {
    if (!old.state.equals(PlanState.SUPERSEDED.word())) {
      return refused(
          old, "Only a superseded plan can be brought back; this plan is " + old.state + ".");
    }
    PlanSheet earlier = mapping.sheet(old).orElseThrow();
    Stand stand = plants.read(old.plant);
    PlanRequest request = stand.request(stand.dayLike(earlier), 0, old.seed);
    PlanSheet sheet = planner.keeping(request, earlier);
    List<String> reasons = obstacles(earlier, sheet, stand);
    if (!reasons.isEmpty()) {
      return refused(old, String.join(" ", reasons));
    }
    AuditReport audit = check.check(stand.basis(), sheet, stand.published());
    if (!audit.passed()) {
      return new Tried(
          old,
          "Brought back today the plan breaks " + audit.findings().size() + " times a rule.",
          audit.findings());
    }
    return new Tried(store(old, shop, stand, sheet, audit), null, List.of());
  }

  private static Tried refused(PlanEntity old, String why) {
    return new Tried(old, why, List.of());
  }

  private PlanEntity store(
      PlanEntity old, StoredShop shop, Stand stand, PlanSheet sheet, AuditReport audit) {
    PlanEntity e =
        rows.add(shop, new PlanWish(sheet.day(), 0, old.seed, PlanOrigin.RESTORATION, false));
    e.restores = old.id;
    e.plannedAt = stand.plannedAt();
    e.finishedAt = e.requestedAt;
    e.basis = mapping.write(stand.basis());
    e.sheet = mapping.write(sheet);
    e.score = mapping.write(sheet.score());
    e.audit = mapping.write(audit);
    e.auditPassed = true;
    e.stability =
        stand.published().map(before -> mapping.write(Stability.of(before, sheet))).orElse(null);
    rows.putIntoForce(e);
    changes.fire(
        new PlanChange(e.plant, e.id, e.version, PlanChange.Kind.PUBLISHED, e.publishedAt));
    return e;
  }

  /** What of the earlier plan cannot be again. */
  static List<String> obstacles(PlanSheet earlier, PlanSheet sheet, Stand stand) {
    Set<String> open =
        stand.basis().orders().stream().map(Order::reference).collect(Collectors.toSet());
    Set<String> frozen = new HashSet<>(sheet.frozen());
    Map<String, RunLine> now = new HashMap<>();
    sheet.runs().forEach(run -> now.put(run.id(), run));
    List<RunLine> toDo =
        earlier.runs().stream()
            .filter(run -> open.contains(run.order()) && !frozen.contains(run.id()))
            .filter(run -> !isBehind(run, stand))
            .toList();
    if (toDo.isEmpty()) {
      return List.of("Nothing of this plan is still to be done: its runs are done or under way.");
    }
    List<String> reasons = new ArrayList<>();
    for (RunLine run : toDo) {
      RunLine there = now.get(run.id());
      String name = run.order() + " " + run.design() + ", " + run.position();
      if (there == null) {
        reasons.add("%s (lot %d) has no place any more.".formatted(name, run.lot()));
      } else if (!there.press().equals(run.press())) {
        reasons.add(
            "%s (lot %d) stood on %s, which cannot take it any more."
                .formatted(name, run.lot(), run.press()));
      }
    }
    int more = reasons.size() - MOST_REASONS;
    if (more > 0) {
      reasons = new ArrayList<>(reasons.subList(0, MOST_REASONS));
      reasons.add("And " + more + " more.");
    }
    return reasons;
  }

  /** Whether the plan in force has printed it, so that it is not to be done again. */
  private static boolean isBehind(RunLine run, Stand stand) {
    Optional<RunLine> inForce =
        stand.published().stream()
            .flatMap(sheet -> sheet.runs().stream())
            .filter(other -> other.id().equals(run.id()))
            .findFirst();
    return inForce
        .filter(other -> other.setUpStart().toInstant().isBefore(stand.plannedAt()))
        .isPresent();
  }
}
