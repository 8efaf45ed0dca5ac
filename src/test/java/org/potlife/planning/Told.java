package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.List;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.sheet.PlanSheet.RunLine;

/** What the crew tells of a run, in its words. */
final class Told {

  private final RunLine line;
  private OffsetDateTime first;
  private OffsetDateTime started;
  private OffsetDateTime counted;
  private OffsetDateTime ended;
  private int good;
  private int spoiled;

  private Told(RunLine line) {
    this.line = line;
  }

  static Told of(RunLine line) {
    return new Told(line);
  }

  Told started(OffsetDateTime at) {
    started = at;
    first = at;
    return this;
  }

  Told counted(OffsetDateTime at, int goodPieces, int spoiledPieces) {
    counted = at;
    first = first == null ? at : first;
    good = goodPieces;
    spoiled = spoiledPieces;
    return this;
  }

  Told ended(OffsetDateTime at, int goodPieces, int spoiledPieces) {
    ended = at;
    return counted(at, goodPieces, spoiledPieces);
  }

  RunReport report() {
    return new RunReport(
        line.id(),
        line.order(),
        line.design(),
        line.position(),
        line.lot(),
        line.press(),
        line.quantity(),
        first,
        started,
        null,
        counted,
        good,
        spoiled,
        ended);
  }

  FloorReport alone() {
    return new FloorReport(List.of(report()), List.of(), List.of());
  }

  static FloorReport pressDown(String press, OffsetDateTime from, OffsetDateTime to) {
    return new FloorReport(
        List.of(), List.of(new Downtime(press, null, from, to, null)), List.of());
  }
}
