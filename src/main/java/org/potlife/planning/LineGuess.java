package org.potlife.planning;

import java.util.Arrays;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.RunTimes;
import org.potlife.simulation.StaffedTime;

/**
 * What changed lines would come to if rooms and dryers delayed each run as they did when the lines
 * were last simulated. Some hundred times quicker than the simulation; exact where presses share
 * nothing.
 */
final class LineGuess {

  private final Problem problem;
  private final Lines lines;
  private final DispatchTimes times;
  private final int[][] printS;

  /** By run, its end, s. */
  private final int[] end;

  /** By run, staffed seconds by which it took longer than press and set-up alone would have it. */
  private final int[] slower;

  /** By run, staffed seconds that it waited for anything but its press, hours and garments. */
  private final int[] waited;

  /** By run, when its order begins to be late by it, s. */
  private final int[] due;

  private final int[] weight;

  /** By press and place, what the runs before it come to: weighted late minutes, set-up seconds. */
  private final long[][] lateBefore;

  private final long[][] setUpBefore;

  /** The same as they were learned. */
  private final int[] learnedEnd;

  private final long[][] learnedLate;
  private final long[][] learnedSetUp;

  /** The same for the two lines of the last change. */
  private final int[][] newEnd;

  private final long[][] newLate;
  private final long[][] newSetUp;

  /** For both lines, the place from which they go on as before. */
  private final int[] stops = new int[2];

  /** By run, behind which run and on which press it was learned, and its set-up there, s. */
  private final int[] learnedBefore;

  private final int[] learnedPress;
  private final int[] learnedSetUpS;
  private final int[] orderOf;
  private final int[] orderEnd;
  private final int[] learnedOrderEnd;
  private final boolean[] stale;
  private RunTimes learnedFrom;
  private long lateMinutes;
  private long setUpS;

  LineGuess(Problem problem, Lines lines, DispatchTimes times) {
    this.problem = problem;
    this.lines = lines;
    this.times = times;
    int presses = problem.presses().length;
    int runs = problem.movable();
    printS = new int[presses][runs];
    for (int press = 0; press < presses; press++) {
      for (int run = 0; run < runs; run++) {
        if (problem.runs()[run].presses()[press]) {
          printS[press][run] = (int) Math.ceil(times.printS(run, press));
        }
      }
    }
    end = new int[runs];
    slower = new int[runs];
    waited = new int[runs];
    due = new int[runs];
    weight = new int[runs];
    lateBefore = new long[presses][runs + 1];
    setUpBefore = new long[presses][runs + 1];
    learnedEnd = new int[runs];
    learnedLate = new long[presses][runs + 1];
    learnedSetUp = new long[presses][runs + 1];
    newEnd = new int[2][runs];
    newLate = new long[2][runs + 1];
    newSetUp = new long[2][runs + 1];
    orderEnd = new int[problem.orders().length];
    learnedOrderEnd = new int[orderEnd.length];
    learnedBefore = new int[runs];
    learnedPress = new int[runs];
    learnedSetUpS = new int[runs];
    Arrays.fill(learnedPress, -1);
    stale = new boolean[presses];
    orderOf = new int[runs];
    for (int run = 0; run < runs; run++) {
      orderOf[run] = problem.runs()[run].order();
    }
  }

  /** Takes over how the lines went when they were simulated as the evaluator's base. */
  void learn(RunTimes simulated) {
    Arrays.fill(orderEnd, 0);
    for (int press = 0; press < printS.length; press++) {
      stale[press] = simulated != learnedFrom | simulated.changedSinceAsked(press);
      for (int place = 0; place < lines.length(press); place++) {
        int run = lines.run(press, place);
        end[run] = simulated.endOf(run);
        orderEnd[orderOf[run]] = Math.max(orderEnd[orderOf[run]], end[run]);
      }
    }
    learnedFrom = simulated;
    for (int press = 0; press < printS.length; press++) {
      if (stale[press] || otherOrdersEnd(press)) {
        learn(press, simulated);
        System.arraycopy(lateBefore[press], 0, learnedLate[press], 0, lines.length(press) + 1);
        System.arraycopy(setUpBefore[press], 0, learnedSetUp[press], 0, lines.length(press) + 1);
      } else {
        System.arraycopy(learnedLate[press], 0, lateBefore[press], 0, lines.length(press) + 1);
        System.arraycopy(learnedSetUp[press], 0, setUpBefore[press], 0, lines.length(press) + 1);
      }
    }
    System.arraycopy(end, 0, learnedEnd, 0, end.length);
    System.arraycopy(orderEnd, 0, learnedOrderEnd, 0, orderEnd.length);
  }

  private boolean otherOrdersEnd(int press) {
    for (int place = 0; place < lines.length(press); place++) {
      int order = orderOf[lines.run(press, place)];
      if (orderEnd[order] != learnedOrderEnd[order]) {
        return true;
      }
    }
    return false;
  }

  private void learn(int press, RunTimes simulated) {
    StaffedTime staffed = problem.presses()[press].staffed();
    int before = problem.presses()[press].mounted();
    int free = times.openAt(press);
    for (int place = 0; place < lines.length(press); place++) {
      int run = lines.run(press, place);
      RunSpec spec = problem.runs()[run];
      OrderSpec order = problem.orders()[spec.order()];
      // an order is as late as its last run: the others may end later at no cost
      boolean last = end[run] == orderEnd[spec.order()];
      due[run] = last ? order.dueAt() : Math.max(order.dueAt(), orderEnd[spec.order()]);
      weight[run] = order.weight();
      int setUp = times.setUpS(before, run, press);
      // a run that found no place was pushed on and took no time on its press
      int start = Math.min(simulated.startOf(run), end[run]);
      int took = staffed.workAt(end[run]) - staffed.workAt(start);
      learnedBefore[run] = before;
      learnedPress[run] = press;
      learnedSetUpS[run] = setUp;
      slower[run] = took - setUp - printS[press][run];
      int could = staffed.addInSpan(Math.max(free, spec.garmentsFrom() - setUp), took);
      waited[run] =
          could >= StaffedTime.NEVER
              ? 0
              : Math.max(0, staffed.workAt(end[run]) - staffed.workAt(could));
      lateBefore[press][place + 1] = lateBefore[press][place] + late(run, end[run]);
      setUpBefore[press][place + 1] = setUpBefore[press][place] + setUp;
      free = end[run];
      before = run;
    }
  }

  /** Set-up of a run behind another one, s. */
  int setUpS(int before, int run, int press) {
    return times.setUpS(before, run, press);
  }

  /** What is mounted on a press before its first run. */
  int mounted(int press) {
    return problem.presses()[press].mounted();
  }

  /** When a press takes its first run, s. */
  int openAt(int press) {
    return times.openAt(press);
  }

  /**
   * When a run ends on a press, s.
   *
   * @param free when the run before it ends, s
   * @param setUp s
   */
  int endAfter(int free, int run, int press, int setUp) {
    StaffedTime staffed = problem.presses()[press].staffed();
    int work = Math.max(0, setUp + printS[press][run] + slower[run]);
    int from = Math.max(free, problem.runs()[run].garmentsFrom() - setUp);
    // it may wait for days, but what it does itself stays within one span
    return staffed.addInSpan(waited[run] == 0 ? from : staffed.add(from, waited[run]), work);
  }

  /** Weighted late minutes of a run that ends at a time, s. */
  long late(int run, int ends) {
    return ends > due[run] ? (ends - (long) due[run] + 59) / 60 * weight[run] : 0;
  }

  /** Works out by how much the last change of the lines makes them later and dearer. */
  void ofLastChange() {
    lateMinutes = 0;
    setUpS = 0;
    for (int which = 0; which < 2; which++) {
      int press = lines.changedPress(which);
      if (press >= 0) {
        follow(which, press);
        int stop = stops[which];
        int stopBefore = stop + lines.lengthBefore(which) - lines.length(press);
        lateMinutes += newLate[which][stop] - lateBefore[press][stopBefore];
        setUpS += newSetUp[which][stop] - setUpBefore[press][stopBefore];
      }
    }
  }

  /** Follows a line from where it changed until it goes on as before, or to its end. */
  private void follow(int which, int press) {
    int[] line = lines.runs()[press];
    int first = lines.changedFrom(which);
    int changedTo = lines.changedTo(which);
    int before = first == 0 ? problem.presses()[press].mounted() : line[first - 1];
    int free = first == 0 ? times.openAt(press) : end[line[first - 1]];
    long late = lateBefore[press][first];
    long setUps = setUpBefore[press][first];
    int place = first;
    newLate[which][first] = late;
    newSetUp[which][first] = setUps;
    boolean asBefore = false;
    while (place < lines.length(press) && !asBefore) {
      int run = line[place];
      int setUp = setUpNow(before, run, press);
      free = endAfter(free, run, press, setUp);
      late += late(run, free);
      setUps += setUp;
      newEnd[which][place] = free;
      asBefore = place >= changedTo && free == end[run];
      place++;
      newLate[which][place] = late;
      newSetUp[which][place] = setUps;
      before = run;
    }
    stops[which] = place;
  }

  private int setUpNow(int before, int run, int press) {
    return learnedBefore[run] == before && learnedPress[run] == press
        ? learnedSetUpS[run]
        : times.setUpS(before, run, press);
  }

  /** The last change stays. */
  void keep() {
    for (int which = 0; which < 2; which++) {
      int press = lines.changedPress(which);
      if (press >= 0) {
        int from = lines.changedFrom(which);
        int stop = stops[which];
        int stopBefore = stop + lines.lengthBefore(which) - lines.length(press);
        int rest = lines.length(press) - stop;
        shift(lateBefore[press], stopBefore, stop, rest, newLate[which][stop]);
        shift(setUpBefore[press], stopBefore, stop, rest, newSetUp[which][stop]);
        for (int place = from; place < stop; place++) {
          end[lines.run(press, place)] = newEnd[which][place];
        }
        System.arraycopy(newLate[which], from + 1, lateBefore[press], from + 1, stop - from);
        System.arraycopy(newSetUp[which], from + 1, setUpBefore[press], from + 1, stop - from);
      }
    }
  }

  /** Sums that go on as before from a place on, but from another sum. */
  private static void shift(long[] sums, int from, int to, int count, long sum) {
    long more = sum - sums[from];
    System.arraycopy(sums, from, sums, to, count + 1);
    for (int i = to; i <= to + count; i++) {
      sums[i] += more;
    }
  }

  /** The lines are again as they were when it learned. */
  void forget() {
    copy(learnedLate, lateBefore);
    copy(learnedSetUp, setUpBefore);
    System.arraycopy(learnedEnd, 0, end, 0, end.length);
  }

  private void copy(long[][] from, long[][] to) {
    for (int press = 0; press < from.length; press++) {
      System.arraycopy(from[press], 0, to[press], 0, lines.length(press) + 1);
    }
  }

  /** When a run ends, s. */
  int endOf(int run) {
    return end[run];
  }

  /** Whether the last change makes the lines less late, or cheaper to set up. */
  boolean isBetter() {
    return lateMinutes < 0 || (lateMinutes == 0 && setUpS < 0);
  }

  /** Change of the weighted late minutes by the last change. */
  long lateMinutes() {
    return lateMinutes;
  }

  /** Change of the set-up by the last change, s. */
  long setUpS() {
    return setUpS;
  }
}
