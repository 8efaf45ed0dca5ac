package org.potlife.planning;

import java.util.HashMap;
import java.util.Map;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.simulation.Problem;

/**
 * Where the movable runs of a problem stand in another plan.
 *
 * @param press by run, its press; -1 if the plan does not have it, or the shop not the press
 * @param start by run, start of its set-up, s from the problem's origin; says only who comes first
 */
record LineUp(int[] press, int[] start) {

  /** As in the published plan. */
  static LineUp published(Problem problem) {
    return new LineUp(problem.publishedPress(), problem.publishedStart());
  }

  /** As on a sheet. */
  static LineUp of(MappedProblem mapped, PlanSheet sheet) {
    Map<String, RunLine> lines = new HashMap<>();
    sheet.runs().forEach(run -> lines.put(run.id(), run));
    Map<String, Integer> presses = new HashMap<>();
    mapped.request().shop().presses().forEach(press -> presses.put(press.id(), presses.size()));
    int movable = mapped.problem().movable();
    LineUp lineUp = new LineUp(new int[movable], new int[movable]);
    for (int run = 0; run < movable; run++) {
      RunLine line = lines.get(mapped.runs().get(run).id());
      lineUp.press[run] = line == null ? -1 : presses.getOrDefault(line.press(), -1);
      lineUp.start[run] = line == null ? -1 : mapped.horizon().seconds(line.setUpStart());
    }
    return lineUp;
  }
}
