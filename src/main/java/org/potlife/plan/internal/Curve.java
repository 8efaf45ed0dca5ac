package org.potlife.plan.internal;

import java.util.ArrayList;
import java.util.List;
import org.potlife.planning.SolveWatch.Progress;

/**
 * The falling curve of a search, thinned so that it stays small: a search may improve thousands of
 * times. The first and the last point are always kept.
 */
final class Curve {

  private static final int MOST_POINTS = 400;

  private final List<Progress> points = new ArrayList<>();
  private long leastGapMs;

  /** Adds a point; one that follows the last too soon takes its place. */
  void add(Progress point) {
    int last = points.size() - 1;
    if (last >= 1 && point.elapsedMs() - points.get(last - 1).elapsedMs() < leastGapMs) {
      points.set(last, point);
    } else {
      points.add(point);
    }
    if (points.size() > MOST_POINTS) {
      thin();
    }
  }

  List<Progress> points() {
    return List.copyOf(points);
  }

  /** Drops every second point and doubles the gap. */
  private void thin() {
    int last = points.size() - 1;
    List<Progress> kept = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      if (i % 2 == 0 || i == last) {
        kept.add(points.get(i));
      }
    }
    points.clear();
    points.addAll(kept);
    long span = kept.get(kept.size() - 1).elapsedMs() - kept.get(0).elapsedMs();
    leastGapMs = Math.max(1, 2 * span / MOST_POINTS);
  }
}
