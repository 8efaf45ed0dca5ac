package org.potlife.planning;

import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.StaffedTime;

/**
 * What a changed line would come to if presses did not share rooms and dryers: set-ups and prints
 * in staffed time, garments in house, each run's lateness by itself. Some hundred times quicker
 * than the simulation; a search asks it which changes are worth simulating.
 */
final class LineGuess {

  private final Problem problem;
  private final Lines lines;
  private final LineMoves.EndTimes ends;
  private final DispatchTimes times;
  private final int[][] printS;
  private long lateMinutes;
  private long setUpS;

  LineGuess(Problem problem, Lines lines, LineMoves.EndTimes ends, DispatchTimes times) {
    this.problem = problem;
    this.lines = lines;
    this.ends = ends;
    this.times = times;
    printS = new int[problem.presses().length][problem.movable()];
    for (int press = 0; press < printS.length; press++) {
      for (int run = 0; run < problem.movable(); run++) {
        if (problem.runs()[run].presses()[press]) {
          printS[press][run] = (int) Math.ceil(times.printS(run, press));
        }
      }
    }
  }

  /** Works out by how much the last change of the lines makes them later and dearer. */
  void ofLastChange() {
    lateMinutes = 0;
    setUpS = 0;
    for (int which = 0; which < 2; which++) {
      int press = lines.changedPress(which);
      if (press >= 0) {
        int from = lines.changedFrom(which);
        add(press, lines.runs()[press], from, lines.length(press), 1);
        add(press, lines.before(which), from, lines.lengthBefore(which), -1);
      }
    }
  }

  /** Change of the weighted late minutes. */
  long lateMinutes() {
    return lateMinutes;
  }

  /** Change of the set-up, s. */
  long setUpS() {
    return setUpS;
  }

  private void add(int press, int[] line, int from, int length, int sign) {
    StaffedTime staffed = problem.presses()[press].staffed();
    int before = from == 0 ? problem.presses()[press].mounted() : line[from - 1];
    int free =
        from == 0
            ? Math.max(problem.presses()[press].openFrom(), times.freeAt(press))
            : ends.of(line[from - 1]);
    long late = 0;
    long setUps = 0;
    for (int i = from; i < length; i++) {
      int run = line[i];
      RunSpec spec = problem.runs()[run];
      int setUp = times.setUpS(before, run, press);
      int work = setUp + printS[press][run];
      free = staffed.add(Math.max(free, spec.garmentsFrom() - setUp), work);
      if (free >= StaffedTime.NEVER) {
        break;
      }
      OrderSpec order = problem.orders()[spec.order()];
      if (free > order.dueAt()) {
        late += (free - (long) order.dueAt()) / 60 * order.weight();
      }
      setUps += setUp;
      before = run;
    }
    lateMinutes += sign * late;
    setUpS += sign * setUps;
  }
}
