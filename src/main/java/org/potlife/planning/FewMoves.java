package org.potlife.planning;

import org.potlife.simulation.Problem;

/**
 * Share of the published runs that a new plan may put on another press, since a change of plan
 * costs (R22).
 */
final class FewMoves {

  /** Our own choice; in a small shop so many runs at least. */
  private static final double MOVED_AT_MOST = 0.1;

  private static final int MOVED_AT_LEAST_ALLOWED = 3;

  private final Problem problem;
  private int published;
  private int most = Integer.MAX_VALUE;

  FewMoves(Problem problem) {
    this.problem = problem;
    for (int run = 0; run < problem.movable(); run++) {
      published += problem.publishedPress()[run] >= 0 ? 1 : 0;
    }
  }

  /** What these lines have moved is allowed in any case. */
  void beginWith(Lines lines) {
    if (published > 0) {
      int allowed = Math.max(MOVED_AT_LEAST_ALLOWED, (int) Math.ceil(published * MOVED_AT_MOST));
      most = Math.max(moved(lines), allowed);
    }
  }

  /** Whether the last change of the lines keeps to it. */
  boolean isKept(Lines lines) {
    return published == 0 || lines.changedPress(1) < 0 || moved(lines) <= most;
  }

  private int moved(Lines lines) {
    int moved = 0;
    for (int run = 0; run < problem.movable(); run++) {
      int press = problem.publishedPress()[run];
      moved += press >= 0 && press != lines.pressOf(run) ? 1 : 0;
    }
    return moved;
  }
}
