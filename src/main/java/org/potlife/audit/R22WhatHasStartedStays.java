package org.potlife.audit;

import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UseLine;

/**
 * R22: runs of open orders that the published plan starts inside the freeze window stand on the
 * sheet exactly as published, with their batches and screens; batches and screens that are begun go
 * on as published. Nothing else of the plan lies before the planning, no run before the day of the
 * plan or beyond the horizon.
 *
 * <p>Left out of the comparison is what may change without moving anything: the customer's name,
 * the latest start of a screen's step, runs that use a screen or batch later, and with them the
 * mass of a batch that also served runs outside the window.
 */
final class R22WhatHasStartedStays implements Rule {

  @Override
  public String number() {
    return "R22";
  }

  @Override
  public String title() {
    return "What has started stays";
  }

  private static final Set<String> RUN_MAY_CHANGE = Set.of("customer");
  private static final Set<String> FACT_MAY_CHANGE =
      Set.of(
          "customer",
          "setUpStart",
          "firstPieceAt",
          "printStart",
          "printEnd",
          "offBelt",
          "coolAt",
          "rates",
          "ratePerHour");

  private static final Set<String> SCREEN_MAY_CHANGE =
      Set.of("run", "runs", "releasedAt", "latestFrom");
  private static final Set<String> BATCH_MAY_CHANGE =
      Set.of("massG", "components", "agentG", "retarderG", "reserveG", "runs", "uses");

  private static final Set<String> CLOCK =
      Set.of("mixFrom", "activateFrom", "activatedAt", "readyAt", "useBy");

  private static final Set<String> BEGUN_MAY_CHANGE = Set.of("reserveG", "runs", "uses");

  @Override
  public void check(Evidence evidence, Notes notes) {
    frozenAsPublished(evidence, notes);
    nothingInThePast(evidence, notes);
  }

  private static void frozenAsPublished(Evidence evidence, Notes notes) {
    Set<String> listed = new HashSet<>();
    if (evidence.sheet().frozen() != null) {
      listed.addAll(evidence.sheet().frozen());
    }
    notes.check(
        listed.equals(evidence.frozen()),
        "plan",
        "calls the runs %s frozen, inside the freeze window of the published plan are %s",
        listed,
        evidence.frozen());
    if (evidence.frozen().isEmpty()) {
      return;
    }
    Published before = evidence.published().orElseThrow();
    Map<String, RunLine> runs = new HashMap<>();
    evidence.runs().forEach(run -> runs.put(run.id(), run.line()));
    Map<String, ScreenLine> screens = new HashMap<>();
    evidence.screens().forEach(screen -> screens.put(screen.id(), screen.line()));
    for (String id : evidence.frozen()) {
      RunLine published = before.run(id).orElseThrow();
      RunLine now = runs.get(id);
      if (!notes.check(
          now != null, id, "is published inside the freeze window and not on the sheet")) {
        continue;
      }
      if (evidence.floor().isNews(id)) {
        asTold(evidence, published, now, notes);
        screens(before, published, screens, notes);
        continue;
      }
      List<String> changed = SameLine.differences(published, now, RUN_MAY_CHANGE);
      notes.check(changed.isEmpty(), id, "is inside the freeze window, but differs in %s", changed);
      screens(before, published, screens, notes);
    }
    before.batches().forEach(batch -> frozenBatch(evidence, batch, notes));
  }

  private static void screens(
      Published before, RunLine published, Map<String, ScreenLine> screens, Notes notes) {
    for (String screen : Completeness.there(published.screens())) {
      before
          .screen(screen)
          .ifPresent(
              line ->
                  same(notes, "screen", line.id(), line, screens.get(screen), SCREEN_MAY_CHANGE));
    }
  }

  /** A run that was told of, or goes otherwise than published, stands with its real times. */
  private static void asTold(Evidence evidence, RunLine published, RunLine now, Notes notes) {
    RealTimes.Times times = evidence.floor().times(published.id()).orElseThrow();
    List<String> changed = SameLine.differences(published, now, FACT_MAY_CHANGE);
    notes.check(changed.isEmpty(), now.id(), "has begun, but differs in %s", changed);
    RealTimes.Times written =
        new RealTimes.Times(
            now.setUpStart().toEpochSecond(),
            now.firstPieceAt().toEpochSecond(),
            now.printStart().toEpochSecond(),
            now.printEnd().toEpochSecond());
    notes.check(
        times.equals(written),
        now.id(),
        "stands with set-up %s, first piece %s, print %s to %s; by the floor's report it is %s, %s,"
            + " %s to %s",
        evidence.at(written.start()),
        evidence.at(written.firstPiece()),
        evidence.at(written.print()),
        evidence.at(written.end()),
        evidence.at(times.start()),
        evidence.at(times.firstPiece()),
        evidence.at(times.print()),
        evidence.at(times.end()));
    boolean endAsPublished = now.printEnd().isEqual(published.printEnd());
    notes.check(
        !endAsPublished || now.offBelt().isEqual(published.offBelt()),
        now.id(),
        "ends as published and is said to be off the belt %s, published was %s",
        now.offBelt(),
        published.offBelt());
  }

  private static void frozenBatch(Evidence evidence, BatchLine published, Notes notes) {
    List<UseLine> uses =
        published.uses() == null
            ? List.of()
            : published.uses().stream().filter(Objects::nonNull).toList();
    List<UseLine> frozen =
        uses.stream().filter(u -> u.run() != null && evidence.isFrozen(u.run())).toList();
    if (frozen.isEmpty()) {
      return;
    }
    BatchLine now =
        evidence.batches().stream()
            .map(BatchFacts::line)
            .filter(line -> line.id().equals(published.id()))
            .findFirst()
            .orElse(null);
    Set<String> mayChange =
        withClock(
            evidence,
            published.id(),
            frozen.size() == uses.size() ? Set.of("runs", "uses") : BATCH_MAY_CHANGE);
    // a later run may join, and then the mass grows as long as nothing is weighed
    boolean joined = now != null && now.uses() != null && now.uses().size() > uses.size();
    if (same(
        notes,
        "batch",
        published.id(),
        published,
        now,
        joined ? withClock(evidence, published.id(), BATCH_MAY_CHANGE) : mayChange)) {
      for (UseLine use : frozen) {
        Set<String> ofUse = evidence.floor().isNews(use.run()) ? Set.of("from", "to") : Set.of();
        notes.check(
            now.uses() != null
                && now.uses().stream()
                    .filter(Objects::nonNull)
                    .anyMatch(u -> SameLine.differences(use, u, ofUse).isEmpty()),
            published.id(),
            "no longer gives run %s the %d g that were published",
            use.run(),
            use.printG());
      }
    }
  }

  private static boolean same(
      Notes notes, String kind, String id, Record published, Record now, Set<String> mayChange) {
    if (!notes.check(
        now != null, id, "is a %s of a run inside the freeze window and not on the sheet", kind)) {
      return false;
    }
    List<String> changed = SameLine.differences(published, now, mayChange);
    return notes.check(
        changed.isEmpty(),
        id,
        "is a %s of a run inside the freeze window, but differs in %s",
        kind,
        changed);
  }

  private static boolean asPublished(Evidence evidence, BatchFacts batch) {
    return evidence
        .published()
        .flatMap(plan -> plan.batch(batch.id()))
        .filter(
            before ->
                SameLine.differences(
                        before, batch.line(), withClock(evidence, batch.id(), BEGUN_MAY_CHANGE))
                    .isEmpty())
        .isPresent();
  }

  /** The clock of a batch is as the ink room told it (R10), not as it was published. */
  private static Set<String> withClock(Evidence evidence, String batch, Set<String> mayChange) {
    if (evidence.ink().activatedAt(batch).isEmpty()) {
      return mayChange;
    }
    Set<String> all = new HashSet<>(mayChange);
    all.addAll(CLOCK);
    return all;
  }

  private static boolean asPublished(Evidence evidence, ScreenFacts screen) {
    return evidence
        .published()
        .flatMap(plan -> plan.screen(screen.id()))
        .filter(before -> SameLine.differences(before, screen.line(), SCREEN_MAY_CHANGE).isEmpty())
        .isPresent();
  }

  /** What was done before the planning is as published; a drying may have ended otherwise. */
  private static boolean begunAsPublished(Evidence evidence, ScreenFacts screen) {
    List<StepLine> published =
        evidence
            .published()
            .flatMap(plan -> plan.screen(screen.id()))
            .map(ScreenLine::steps)
            .map(Completeness::there)
            .orElse(List.of());
    return evidence.reports().isChanged(screen.id())
        && screen.steps().stream()
            .filter(step -> step.from() < evidence.plannedAt())
            .allMatch(step -> published.stream().anyMatch(before -> isSame(step, before)));
  }

  private static boolean isSame(ScreenFacts.Step step, StepLine before) {
    return step.stage() == Stage.find(before.step()).orElse(null)
        && before.from() != null
        && before.from().toEpochSecond() == step.from()
        && step.where().equals(before.where())
        && before.to() != null
        && (step.stage().drying() || before.to().toEpochSecond() == step.to());
  }

  private static void nothingInThePast(Evidence evidence, Notes notes) {
    OffsetDateTime horizonEnd = evidence.sheet().horizonEnd();
    for (RunFacts run : evidence.runs()) {
      if (!evidence.isFrozen(run.id())) {
        notes.check(
            run.setUpStart() >= evidence.pressesOpenFrom(),
            run.id(),
            "starts %s, the plan counts for the presses from %s",
            evidence.at(run.setUpStart()),
            evidence.at(evidence.pressesOpenFrom()));
        notes.check(
            horizonEnd == null || run.printEnd() <= horizonEnd.toEpochSecond(),
            run.id(),
            "prints until %s, the plan may reach until %s",
            evidence.at(run.printEnd()),
            horizonEnd);
      }
    }
    for (BatchFacts batch : evidence.batches()) {
      notes.check(
          batch.fromStock()
              || batch.mixFrom() >= evidence.plannedAt()
              || batch.uses().stream().anyMatch(use -> evidence.isFrozen(use.run().id()))
              || asPublished(evidence, batch),
          batch.id(),
          "is mixed %s, before the planning at %s",
          evidence.at(batch.mixFrom()),
          evidence.at(evidence.plannedAt()));
    }
    for (ScreenFacts screen : evidence.screens()) {
      boolean frozen = screen.runs().stream().anyMatch(run -> evidence.isFrozen(run.id()));
      long from =
          screen.steps().stream().mapToLong(ScreenFacts.Step::from).min().orElse(Long.MAX_VALUE);
      notes.check(
          frozen
              || from >= evidence.plannedAt()
              || asPublished(evidence, screen)
              || begunAsPublished(evidence, screen),
          screen.id(),
          "is begun %s, before the planning at %s",
          evidence.at(Math.min(from, evidence.plannedAt())),
          evidence.at(evidence.plannedAt()));
    }
  }
}
