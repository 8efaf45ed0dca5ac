package org.potlife.audit;

import java.util.List;
import org.potlife.dryer.Dryer;

/**
 * A time in which nothing changes at a dryer. The two roundings are what the rates of the sheet,
 * written in whole pieces per hour, may hide.
 *
 * @param from epoch seconds
 * @param to epoch seconds
 * @param inTunnel runs whose garments may be in the tunnel
 * @param belts settings of the belt's timetable that hold in this time
 * @param areaMPerMin belt length that is covered in a minute, m
 * @param heatKw heat that the goods take, efficiency included, kW
 */
record TunnelMoment(
    Dryer dryer,
    long from,
    long to,
    List<RunFacts> inTunnel,
    List<BeltFacts> belts,
    double areaMPerMin,
    double areaRoundingMPerMin,
    double heatKw,
    double heatRoundingKw) {

  /** Whether a fact is in the tunnel and no run feeds the belt that has not begun. */
  boolean isFedByFactsAlone(Evidence evidence) {
    return inTunnel.stream().anyMatch(evidence::isFact)
        && inTunnel.stream()
            .filter(run -> !evidence.floor().hasBegun(run.id()))
            .noneMatch(this::isFedBy);
  }

  private boolean isFedBy(RunFacts run) {
    return run.firstPieceAt() < to && from < run.printStart()
        || run.rates().stream().anyMatch(rate -> rate.from() < to && from < rate.to());
  }

  List<String> names() {
    return inTunnel.stream().map(RunFacts::id).toList();
  }

  boolean continuesIn(TunnelMoment next) {
    return dryer.equals(next.dryer) && to == next.from;
  }
}
