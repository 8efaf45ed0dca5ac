package org.potlife.audit;

import java.util.List;
import org.potlife.ink.Ink;
import org.potlife.ink.InkSystem;
import org.potlife.sheet.PlanSheet.BatchLine;

/**
 * A batch that could be read. Times are epoch seconds.
 *
 * @param useBy latest stroke, or null when the sheet gives none
 * @param uses what runs draw from it, those that could be read
 */
record BatchFacts(
    BatchLine line,
    Ink ink,
    InkSystem system,
    long mixFrom,
    long activateFrom,
    long activatedAt,
    long readyAt,
    Long useBy,
    List<Use> uses) {

  /** What a run draws, g, and from when to when. */
  record Use(BatchFacts.Id batch, RunFacts run, long from, long to, int printG, int chargeG) {}

  /** Name and ink of the batch that a use belongs to. */
  record Id(String id, String ink) {}

  String id() {
    return line.id();
  }

  /** Whether it is said to have stood on the shelf, and so was not made. */
  boolean fromStock() {
    return BatchLine.STOCK.equals(line.origin());
  }

  boolean activated() {
    return system.activated();
  }
}
