package org.potlife.planning;

import java.util.Arrays;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.PressSpec;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunTimes;
import org.potlife.simulation.StaffedTime;

/**
 * What changed lines would come to if rooms and dryers delayed each run as they did when the lines
 * were last simulated. Two presses that print on the same garments wait for each other, and an
 * order is as late as its last run. Some hundred times quicker than the simulation; exact where
 * presses share nothing else.
 *
 * <p>Long, since what was learned of the lines and what follows from a change read the same arrays,
 * millions of times a minute.
 */
final class LineGuess {

  private final Problem problem;
  private final Lines lines;
  private final DispatchTimes times;
  private final ShadowPrices prices;
  private final int[][] printS;
  private final StaffedTime[] staffedOf;

  /** By run, its end, s. */
  private final int[] end;

  /** By run, staffed seconds by which it took longer than press and set-up alone would have it. */
  private final int[] slower;

  /** By run, staffed seconds that it waited for anything but its press, hours and garments. */
  private final int[] waited;

  /** By run, when its order begins to be late by it, s. */
  private final int[] due;

  private final int[] weight;

  /**
   * By press and place, what the runs before it come to: weighted late minutes with priced set-ups,
   * set-up seconds.
   */
  private final long[][] lateBefore;

  private final long[][] setUpBefore;

  /** The same as they were learned. */
  private final int[] learnedEnd;

  private final long[][] learnedLate;
  private final long[][] learnedSetUp;

  /** The two lines of the last change. */
  private final Course[] courses;

  /** By run, behind which run and on which press it was learned, and its set-up there, s. */
  private final int[] learnedBefore;

  private final int[] learnedPress;
  private final int[] learnedSetUpS;

  /** By run, when it could have begun but for the garments, as learned, s. */
  private final int[] couldBegin;

  /** By run, the others on the same garments. */
  private final int[][] mates;

  private final int[] orderOf;
  private final OrderOffs orderOffs;
  private final boolean[] stale;
  private final boolean[] matesStale;
  private RunTimes learnedFrom;
  private long lateMinutes;
  private long setUpS;

  LineGuess(Problem problem, Lines lines, DispatchTimes times, ShadowPrices prices) {
    this.problem = problem;
    this.lines = lines;
    this.times = times;
    this.prices = prices;
    int presses = problem.presses().length;
    int runs = problem.movable();
    printS = new int[presses][runs];
    staffedOf =
        Arrays.stream(problem.presses()).map(PressSpec::staffed).toArray(StaffedTime[]::new);
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
    courses = new Course[] {new Course(0, runs), new Course(1, runs)};
    orderOffs = new OrderOffs(problem.orders().length);
    learnedBefore = new int[runs];
    learnedPress = new int[runs];
    learnedSetUpS = new int[runs];
    Arrays.fill(learnedPress, -1);
    couldBegin = new int[runs];
    mates = new int[runs][];
    for (int run = 0; run < runs; run++) {
      int own = run;
      mates[run] =
          times.runsOfLot(problem.runs()[run].garmentLot()).stream()
              .mapToInt(Integer::intValue)
              .filter(other -> other != own)
              .toArray();
    }
    stale = new boolean[presses];
    matesStale = new boolean[presses];
    orderOf = new int[runs];
    for (int run = 0; run < runs; run++) {
      orderOf[run] = problem.runs()[run].order();
    }
  }

  /** Set-ups are worth something else from now on; what was learned of them does not hold. */
  void priceAgain(double share) {
    prices.set(share, this);
    learnedFrom = null;
  }

  /** Takes over how the lines went when they were simulated as the evaluator's base. */
  void learn(RunTimes simulated) {
    orderOffs.clear();
    for (int press = 0; press < printS.length; press++) {
      stale[press] = simulated != learnedFrom | simulated.changedSinceAsked(press);
      for (int place = 0; place < lines.length(press); place++) {
        int run = lines.run(press, place);
        end[run] = simulated.endOf(run);
        orderOffs.note(orderOf[run], end[run] + times.transitS(press));
      }
    }
    learnedFrom = simulated;
    markStale();
    for (int press = 0; press < printS.length; press++) {
      if (stale[press]) {
        learnTimes(press, simulated);
      }
    }
    for (int press = 0; press < printS.length; press++) {
      if (stale[press]) {
        learnWaits(press);
        System.arraycopy(lateBefore[press], 0, learnedLate[press], 0, lines.length(press) + 1);
        System.arraycopy(setUpBefore[press], 0, learnedSetUp[press], 0, lines.length(press) + 1);
      } else {
        System.arraycopy(learnedLate[press], 0, lateBefore[press], 0, lines.length(press) + 1);
        System.arraycopy(learnedSetUp[press], 0, setUpBefore[press], 0, lines.length(press) + 1);
      }
    }
    System.arraycopy(end, 0, learnedEnd, 0, end.length);
    orderOffs.keep();
  }

  /** Lines whose orders end otherwise, or whose garments come otherwise, are learned anew too. */
  private void markStale() {
    Arrays.fill(matesStale, false);
    for (int run = 0; run < mates.length; run++) {
      for (int mate : mates[run]) {
        matesStale[lines.pressOf(mate)] |= stale[lines.pressOf(run)];
      }
    }
    for (int press = 0; press < stale.length; press++) {
      stale[press] = stale[press] || matesStale[press] || otherOrdersEnd(press);
    }
  }

  private boolean otherOrdersEnd(int press) {
    for (int place = 0; place < lines.length(press); place++) {
      if (orderOffs.differs(orderOf[lines.run(press, place)])) {
        return true;
      }
    }
    return false;
  }

  private void learnTimes(int press, RunTimes simulated) {
    StaffedTime staffed = staffedOf[press];
    int before = problem.presses()[press].mounted();
    int free = times.openAt(press);
    for (int place = 0; place < lines.length(press); place++) {
      int run = lines.run(press, place);
      OrderSpec order = problem.orders()[orderOf[run]];
      int off = end[run] + times.transitS(press);
      due[run] =
          Math.max(order.dueAt(), orderOffs.ofOthers(orderOf[run], off)) - times.transitS(press);
      weight[run] = order.weight();
      int setUp = times.setUpS(before, run, press);
      // a run that found no place was pushed on and took no time on its press
      int start = Math.min(simulated.startOf(run), end[run]);
      int took = staffed.workAt(end[run]) - staffed.workAt(start);
      couldBegin[run] = times.beginOf(run, press, free, setUp);
      learnedBefore[run] = before;
      learnedPress[run] = press;
      learnedSetUpS[run] = setUp;
      slower[run] = took - setUp - printS[press][run];
      free = end[run];
      before = run;
    }
  }

  private void learnWaits(int press) {
    StaffedTime staffed = staffedOf[press];
    for (int place = 0; place < lines.length(press); place++) {
      int run = lines.run(press, place);
      int setUp = learnedSetUpS[run];
      int took = setUp + printS[press][run] + slower[run];
      int could = staffed.addInSpan(afterMates(couldBegin[run], run, press, setUp, true), took);
      waited[run] =
          could >= StaffedTime.NEVER
              ? 0
              : Math.max(0, staffed.workAt(end[run]) - staffed.workAt(could));
      lateBefore[press][place + 1] =
          lateBefore[press][place] + late(run, end[run]) + prices.of(run, setUp);
      setUpBefore[press][place + 1] = setUpBefore[press][place] + setUp;
    }
  }

  /**
   * When the set-up of a run can begin, for what is printed before it on its garments, s.
   *
   * @param asLearned whether mates end as they did, or as with the last change
   */
  private int afterMates(int from, int run, int press, int setUp, boolean asLearned) {
    int begin = from;
    for (int mate : mates[run]) {
      if (comesAfter(run, from, mate)) {
        int ends = asLearned ? end[mate] : endBefore(mate, run);
        int free = ends + times.garmentsFreeS(lines.pressOf(mate));
        begin = Math.max(begin, times.beginFor(free, press, setUp));
      }
    }
    return begin;
  }

  /** When a mate ends that has the garments before a run, as far as lines are followed, s. */
  private int endBefore(int mate, int run) {
    int press = lines.pressOf(mate);
    for (Course course : courses) {
      if (course.press == press && course.hasFollowed(lines.placeOf(mate))) {
        return course.newEnd[lines.placeOf(mate)];
      }
    }
    // it need not wait for the garments any more if it did
    return mates[run].length > 1
        ? end[mate]
        : Math.min(end[mate], endAfter(couldBegin[mate], mate, press, learnedSetUpS[mate]));
  }

  /** More weighted late minutes of a line in which a run begins at another time. */
  private long ofLineFrom(int first, int begin) {
    int press = lines.pressOf(first);
    int free = begin;
    long more = 0;
    for (int place = lines.placeOf(first); place < lines.length(press); place++) {
      int run = lines.run(press, place);
      free = endAfter(free, run, press, learnedSetUpS[run]);
      if (free == end[run]) {
        return more;
      }
      more += late(run, free) - late(run, end[run]);
    }
    return more;
  }

  /** Whether a run that could begin at a time is printed after its mate. */
  private boolean comesAfter(int run, int couldBeginAt, int mate) {
    if (lines.pressOf(mate) == lines.pressOf(run)) {
      return lines.placeOf(mate) < lines.placeOf(run);
    }
    int stage = problem.runs()[run].stage();
    return stage >= 0 ? stage > problem.runs()[mate].stage() : couldBegin[mate] <= couldBeginAt;
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
    StaffedTime staffed = staffedOf[press];
    int work = Math.max(0, setUp + printS[press][run] + slower[run]);
    int from = times.beginOf(run, press, free, setUp);
    int soonest = staffed.addInSpan(from, work);
    if (waited[run] == 0 || soonest >= StaffedTime.NEVER) {
      return soonest;
    }
    // it may wait for days, but what it does itself stays within one span
    int start = staffed.subtract(soonest, work);
    return staffed.addInSpan(staffed.add(start, waited[run]), work);
  }

  /** Weighted late minutes of a run that ends at a time, s. */
  long late(int run, int ends) {
    return ends > due[run] ? (ends - (long) due[run] + 59) / 60 * weight[run] : 0;
  }

  /** Works out by how much the last change of the lines makes them later and dearer. */
  void ofLastChange() {
    isAtMost(Long.MAX_VALUE);
  }

  /**
   * Works out the same, and stops as soon as it is certain that the lines become later than that.
   *
   * @param most weighted late minutes, 0 or more
   * @return whether they do not; only then is the change worked out
   */
  boolean isAtMost(long most) {
    for (Course course : courses) {
      course.followChange();
    }
    // what gets sooner is followed first: how much the other may lose is known then
    int first = courses[0].later ? 1 : 0;
    courses[first].follow(most, courses[1 - first]);
    courses[1 - first].follow(most, courses[first]);
    lateMinutes = courses[0].laterMinutes() + courses[1].laterMinutes();
    setUpS = courses[0].moreSetUpS() + courses[1].moreSetUpS();
    return lateMinutes <= most;
  }

  private int setUpNow(int before, int run, int press) {
    return learnedBefore[run] == before && learnedPress[run] == press
        ? learnedSetUpS[run]
        : times.setUpS(before, run, press);
  }

  /** How a line goes on from where it changed until it goes on as before, or to its end. */
  private final class Course {

    private final int which;
    private final int[] newEnd;
    private final long[] newLate;
    private final long[] newSetUp;
    private int press;
    private int[] line;
    private int length;
    private int changedTo;

    /** Lengthened by the change by so many runs. */
    private int longer;

    private int place;
    private int before;
    private int free;
    private boolean finished;

    /** Whether what comes after the change is later than it was, and so all the rest. */
    private boolean later;

    Course(int which, int runs) {
      this.which = which;
      newEnd = new int[runs];
      newLate = new long[runs + 1];
      newSetUp = new long[runs + 1];
    }

    /** Follows the part that changed, and the run behind it. */
    void followChange() {
      press = lines.changedPress(which);
      finished = press < 0;
      later = false;
      if (finished) {
        return;
      }
      line = lines.runs()[press];
      length = lines.length(press);
      longer = length - lines.lengthBefore(which);
      changedTo = lines.changedTo(which);
      place = lines.changedFrom(which);
      before = place == 0 ? problem.presses()[press].mounted() : line[place - 1];
      free = place == 0 ? times.openAt(press) : end[line[place - 1]];
      newLate[place] = lateBefore[press][place];
      newSetUp[place] = setUpBefore[press][place];
      finished = place == length;
      while (!finished && place <= changedTo) {
        step();
      }
      later = !finished && free > end[before];
    }

    /** Follows the rest, unless it is certain that both lines come to more than that. */
    void follow(long most, Course other) {
      while (!finished && !(later && laterMinutes() + other.leastLaterMinutes() > most)) {
        step();
      }
    }

    private void step() {
      int run = line[place];
      int setUp = setUpNow(before, run, press);
      long elsewhere = 0;
      if (mates[run].length == 0) {
        free = endAfter(free, run, press, setUp);
      } else {
        int from = times.beginOf(run, press, free, setUp);
        free = endAfter(afterMates(from, run, press, setUp, false), run, press, setUp);
        elsewhere = ofMates(from, run);
      }
      newEnd[place] = free;
      finished = place >= changedTo && free == end[run];
      place++;
      newLate[place] = newLate[place - 1] + late(run, free) + prices.of(run, setUp) + elsewhere;
      newSetUp[place] = newSetUp[place - 1] + setUp;
      finished |= place == length;
      before = run;
    }

    /** More weighted late minutes of other lines that print on the garments of this run. */
    private long ofMates(int from, int run) {
      long more = 0;
      for (int mate : mates[run]) {
        int other = lines.pressOf(mate);
        if (other != courses[0].press && other != courses[1].press) {
          int begin = couldBegin[mate];
          if (!comesAfter(run, from, mate)) {
            int garments = free + times.garmentsFreeS(press);
            begin = Math.max(begin, times.beginFor(garments, other, learnedSetUpS[mate]));
          }
          long later = ofLineFrom(mate, begin);
          // what a third run on the garments does is not followed
          more += mates[run].length > 1 ? Math.max(0, later) : later;
        }
      }
      return more;
    }

    private boolean hasFollowed(int at) {
      return at >= lines.changedFrom(which) && at < place;
    }

    /** A bound of what it comes to in the end. */
    private long leastLaterMinutes() {
      return finished || later ? laterMinutes() : Long.MIN_VALUE / 2;
    }

    long laterMinutes() {
      return press < 0 ? 0 : newLate[place] - lateBefore[press][place - longer];
    }

    long moreSetUpS() {
      return press < 0 ? 0 : newSetUp[place] - setUpBefore[press][place - longer];
    }

    void keep() {
      if (press < 0) {
        return;
      }
      int from = lines.changedFrom(which);
      int rest = length - place;
      shift(lateBefore[press], place - longer, place, rest, newLate[place]);
      shift(setUpBefore[press], place - longer, place, rest, newSetUp[place]);
      for (int i = from; i < place; i++) {
        end[line[i]] = newEnd[i];
      }
      System.arraycopy(newLate, from + 1, lateBefore[press], from + 1, place - from);
      System.arraycopy(newSetUp, from + 1, setUpBefore[press], from + 1, place - from);
    }
  }

  /** The last change stays. */
  void keep() {
    for (Course course : courses) {
      course.keep();
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

  /** Change of the weighted late minutes by the last change, with the shadow prices of set-ups. */
  long lateMinutes() {
    return lateMinutes;
  }

  /** Change of the set-up by the last change, s. */
  long setUpS() {
    return setUpS;
  }
}
