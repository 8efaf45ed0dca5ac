package org.potlife.bench;

import java.util.List;
import org.potlife.planning.BareSearch.Timed;

/** Curves of searches as points to draw. */
final class Curves {

  private Curves() {}

  /** Weighted late minutes over time, in a unit. */
  static List<double[]> late(Timed search, double unit) {
    return search.curve().stream()
        .map(
            point ->
                new double[] {
                  Math.max(0.01, point.seconds()), point.outcome().weightedLateMinutes() / unit
                })
        .toList();
  }
}
