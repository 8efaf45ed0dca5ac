package org.potlife.plan;

import java.util.List;
import org.potlife.planning.SolveWatch.Progress;

/**
 * How far the search of a plan has come.
 *
 * @param plan id
 * @param points improvements in time
 */
public record PlanProgress(String plan, PlanState state, List<Progress> points) {

  public PlanProgress {
    points = List.copyOf(points);
  }
}
