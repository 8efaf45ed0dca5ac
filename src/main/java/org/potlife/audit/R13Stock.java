package org.potlife.audit;

import java.util.List;
import java.util.Optional;
import org.potlife.ink.StockInk;
import org.potlife.sheet.PlanSheet.BatchLine;

/**
 * The part of R13 that is about the shelf: only ink without agent is drawn from it, no more than is
 * there, the oldest container first, all of it before anything is mixed, and what is for light
 * garments alone never for dark cloth.
 *
 * <p>A container with less than a screen charge and the least draw is as good as empty. A plan
 * opens three containers of an ink at most, less one for each batch of it that is under way.
 */
final class R13Stock {

  /** Less is not worth changing the bucket for, g (docs/model.md). */
  private static final int LEAST_DRAW_G = 20;

  private static final int OPEN_CONTAINERS = 3;

  private final Evidence evidence;
  private final Notes notes;

  R13Stock(Evidence evidence, Notes notes) {
    this.evidence = evidence;
    this.notes = notes;
  }

  void check() {
    for (BatchFacts batch : evidence.batches()) {
      if (batch.fromStock()) {
        container(batch);
      }
      if (!batch.activated() && !evidence.isTakenOver(batch)) {
        usedUpBefore(batch);
      }
    }
  }

  private void container(BatchFacts batch) {
    Optional<StockInk> known = evidence.ink().container(batch.id());
    boolean taken = evidence.isTakenOver(batch);
    notes.check(
        !batch.activated() && batch.line().agentG() == 0,
        batch.id(),
        "is from the shelf, but ink %s takes an agent",
        batch.ink().id());
    if (!notes.check(
        known.isPresent() || taken, batch.id(), "is from the shelf, where no such container is")) {
      return;
    }
    known.ifPresent(
        there -> {
          notes.check(
              there.ink().equals(batch.ink().id()),
              batch.id(),
              "holds %s, not %s",
              there.ink(),
              batch.ink().id());
          notes.check(
              taken || batch.line().massG() == there.massG() && batch.mixFrom() == since(there),
              batch.id(),
              "is said to hold %d g since %s, there are %d g since %s",
              batch.line().massG(),
              evidence.at(batch.mixFrom()),
              there.massG(),
              there.since());
          int drawn = drawnBeyondFrozen(batch);
          notes.check(
              drawn <= there.massG(),
              batch.id(),
              "gives %d g and holds %d g",
              drawn,
              there.massG());
          for (BatchFacts.Use use : batch.uses()) {
            double cloth = use.run().order().garments().lightness();
            notes.check(
                !there.lightOnly() || cloth >= evidence.shop().inkRoom().lightFrom(),
                batch.id(),
                "is for light garments alone and serves run %s on cloth of lightness %.0f",
                use.run().id(),
                cloth);
          }
        });
  }

  /** The sheet does not look back further than a year. */
  private long since(StockInk there) {
    return Math.max(
        there.since().toEpochSecond(), evidence.sheet().plannedAt().minusDays(365).toEpochSecond());
  }

  private int drawnBeyondFrozen(BatchFacts batch) {
    return batch.uses().stream()
        .filter(use -> !evidence.isFrozen(use.run().id()))
        .mapToInt(use -> use.printG() + use.chargeG())
        .sum();
  }

  /** Nothing is mixed, and no younger container opened, while an older one would still serve. */
  private void usedUpBefore(BatchFacts batch) {
    long begun =
        evidence
            .ink()
            .container(batch.id())
            .filter(own -> batch.fromStock())
            .map(own -> own.since().toEpochSecond())
            .orElse(Long.MAX_VALUE);
    for (StockInk older : offered(batch.ink().id())) {
      if (older.since().toEpochSecond() < begun && !older.container().equals(batch.id())) {
        int left = older.massG() - drawn(older.container());
        notes.check(
            left < largestCharge(batch.ink().id()) + LEAST_DRAW_G,
            batch.id(),
            "is %s while %d g stay in container %s",
            batch.fromStock() ? "opened" : "mixed",
            left,
            older.container());
      }
    }
  }

  private List<StockInk> offered(String ink) {
    boolean dark =
        evidence.orders().values().stream()
            .filter(o -> o.garments().lightness() < evidence.shop().inkRoom().lightFrom())
            .flatMap(order -> order.prints().stream())
            .flatMap(print -> print.colours().stream())
            .anyMatch(colour -> colour.ink().equals(ink));
    List<BatchLine> held =
        evidence.published().map(Published::batches).orElse(List.of()).stream()
            .filter(line -> ink.equals(line.ink()) && line.useBy() == null)
            .filter(this::isUnderWay)
            .toList();
    return evidence.ink().containersOf(ink).stream()
        .filter(c -> !(c.lightOnly() && dark))
        .filter(c -> held.stream().noneMatch(batch -> batch.id().equals(c.container())))
        .limit(Math.max(0, OPEN_CONTAINERS - held.size()))
        .toList();
  }

  private boolean isUnderWay(BatchLine line) {
    boolean begun =
        !line.fromStock()
            && !evidence.ink().isGone(line.id())
            && (evidence.ink().isMarked(line.id())
                || line.mixFrom() != null && line.mixFrom().toEpochSecond() < evidence.plannedAt());
    return begun
        || Completeness.there(line.uses()).stream()
            .anyMatch(use -> use.run() != null && evidence.isFrozen(use.run()));
  }

  private int drawn(String container) {
    return evidence.batches().stream()
        .filter(batch -> batch.id().equals(container))
        .mapToInt(this::drawnBeyondFrozen)
        .sum();
  }

  private int largestCharge(String ink) {
    return evidence.runs().stream().mapToInt(run -> run.stationsWith(ink)).max().orElse(0)
        * evidence.shop().inkRoom().screenChargeG();
  }
}
