package org.potlife.simulation;

/**
 * Places one run on one press at the earliest moment that press, shift, garments, screens, ink room
 * and dryer allow, and books what it uses. Each push to a later moment has one cause.
 */
final class Placement {

  /** More pushes than this, and the run is taken to have no place. */
  private static final int MOST_PUSHES = 4000;

  private final Problem problem;
  private final SetUp setUps;
  private final ScreenPipeline screens;
  private final InkDraw inks;
  private final Change change;
  private final BeltWalk walk = new BeltWalk();

  private ShopState state;
  private RunSpec run;
  private PressSpec press;
  private RunSpec.BeltFeed feed;
  private Trace trace;
  private boolean framesReturned;
  private boolean changesScreens;
  private int setUp;
  private int mounted;
  private int firstPieceS;
  private int start;
  private int firstPiece;
  private int print;
  private int end;
  private int before;
  private int unscreened;
  private int off;
  private int released;

  Placement(Problem problem, SetUp setUps) {
    this.problem = problem;
    this.setUps = setUps;
    screens = new ScreenPipeline(problem);
    inks = new InkDraw(problem);
    change = new Change(problem);
  }

  /** Where the runs to come give their frames back: false while that has been done already. */
  void returnFrames(boolean wanted) {
    framesReturned = !wanted;
  }

  /** When the press of the last run was free, s. */
  int before() {
    return before;
  }

  /** When the set-up of the last run begins, s. */
  int start() {
    return start;
  }

  /** When the last run could have begun but for the making of its screens, s. */
  int unscreened() {
    return unscreened;
  }

  /** When the last run is off the belt, s; -1 if it has no place. */
  int off() {
    return off;
  }

  /** When the last run released the frames of its screens for good, s; -1 if it did not. */
  int released() {
    return released;
  }

  /** Places the run and returns true, or counts it as unplaced. */
  boolean place(ShopState target, int runIndex, int pressIndex, Trace recorder) {
    state = target;
    state.mixers.lookAfresh();
    trace = recorder;
    run = problem.runs()[runIndex];
    press = problem.presses()[pressIndex];
    feed = run.feeds()[press.dryer()];
    int last = state.pressLast[pressIndex];
    int setUpChange = last < 0 ? -1 : setUps.change(last, runIndex);
    boolean sameScreens = last >= 0 && SetUp.none(setUpChange) && !wentElsewhere(pressIndex);
    changesScreens = !sameScreens;
    if (last < 0 || (SetUp.none(setUpChange) && !sameScreens)) {
      mounted = setUps.stations(runIndex);
      setUp = setUps.onEmpty(runIndex, press);
    } else {
      mounted = SetUp.mounted(setUpChange);
      setUp = SetUp.seconds(setUpChange, press);
    }
    firstPieceS = setUp == 0 ? 0 : press.firstPieceS();
    start = state.pressFree[pressIndex];
    before = start;
    unscreened = start;
    off = -1;
    released = -1;
    if (!waitForScreens(sameScreens)) {
      return refuse(runIndex, pressIndex, Refusal.SCREENS);
    }
    if (!findTime(runIndex)) {
      return refuse(runIndex, pressIndex, Refusal.HORIZON);
    }
    book(runIndex, pressIndex);
    return true;
  }

  /** The screens were on another press in between: they are mounted as on an empty press. */
  private boolean wentElsewhere(int pressIndex) {
    int set = run.screenSet();
    return set >= 0 && state.setPress[set] >= 0 && state.setPress[set] != pressIndex;
  }

  private boolean refuse(int runIndex, int pressIndex, Refusal refusal) {
    state.unplaced++;
    if (trace != null) {
      trace.refuse(runIndex, pressIndex, refusal);
    }
    return false;
  }

  private boolean waitForScreens(boolean sameScreens) {
    int set = run.screenSet();
    if (set < 0) {
      return true;
    }
    unscreened = sameScreens ? start : Math.max(start, state.setFree[set]);
    int ready = screens.readyAt(state.screens, set, trace);
    if (ready >= StaffedTime.NEVER) {
      return false;
    }
    push(ready, Cause.SCREENS);
    if (!sameScreens) {
      push(state.setFree[set], Cause.SAME_SCREENS);
    }
    return true;
  }

  private void push(int to, Cause cause) {
    if (to > start) {
      if (trace != null) {
        trace.waitUntil(start, to, cause);
      }
      start = to;
    }
  }

  private boolean findTime(int runIndex) {
    StaffedTime staffed = press.staffed();
    for (int pushes = 0; pushes < MOST_PUSHES; pushes++) {
      int stretch = staffed.stretchAt(start);
      if (stretch == staffed.count()) {
        return false;
      }
      push(staffed.start(stretch), Cause.CLOSED);
      print = staffed.add(start, setUp);
      if (print > problem.horizonEnd()) {
        return false;
      }
      int spanLast = staffed.spanLast(stretch);
      if (print > staffed.end(spanLast)) {
        if (!nextSpan(staffed, spanLast, Cause.CLOSED)) {
          return false;
        }
        continue;
      }
      firstPiece = firstPieceS == 0 ? print : staffed.subtract(print, firstPieceS);
      if (tooEarly(state.lotFree[run.garmentLot()], Cause.SAME_GARMENTS)
          || tooEarly(run.garmentsFrom(), Cause.GARMENTS)) {
        continue;
      }
      int inkReady = inks.readyFor(state, run, firstPiece);
      if (inkReady >= StaffedTime.NEVER) {
        return false;
      }
      if (tooEarly(inkReady, Cause.INK_ROOM)) {
        continue;
      }
      end =
          walk.walk(
              state.belts[press.dryer()],
              problem.dryers()[press.dryer()],
              press,
              feed,
              firstPiece,
              print,
              spanLast,
              run.pieces());
      if (end == BeltWalk.BLOCKED) {
        dryerInTheWay();
        continue;
      }
      if (end == BeltWalk.TOO_LONG) {
        if (!nextSpan(staffed, spanLast, Cause.CLOSED)) {
          return false;
        }
        continue;
      }
      if (end + problem.dryers()[press.dryer()].transitS() > problem.horizonEnd()) {
        return false;
      }
      if (inks.serve(state, run, firstPiece, end, changesScreens, runIndex, trace)
          == InkDraw.SERVED) {
        return true;
      }
      if (!nextSpan(staffed, spanLast, Cause.INK_ROOM)) {
        return false;
      }
    }
    return false;
  }

  /** Moves the start so that the first piece comes no earlier than {@code need}. */
  private boolean tooEarly(int need, Cause cause) {
    if (firstPiece >= need) {
      return false;
    }
    startFor(need, setUp - firstPieceS, cause);
    return true;
  }

  private void startFor(int moment, int workBefore, Cause cause) {
    push(Math.max(start + 1, press.beginFor(moment, workBefore)), cause);
  }

  private void dryerInTheWay() {
    int until = walk.blockedUntil();
    if (walk.blockedAtFirstPiece()) {
      startFor(until, setUp - firstPieceS, Cause.DRYER);
    } else {
      startFor(until, setUp, Cause.DRYER);
    }
  }

  private boolean nextSpan(StaffedTime staffed, int spanLast, Cause cause) {
    if (spanLast + 1 >= staffed.count()) {
      return false;
    }
    push(staffed.start(spanLast + 1), cause);
    return true;
  }

  private void book(int runIndex, int pressIndex) {
    DryerSpec dryer = problem.dryers()[press.dryer()];
    off = end + dryer.transitS();
    long empty = walk.book(state.belts[press.dryer()], feed, firstPiece, print, off);
    CostSpec costs = problem.costs();
    state.addHourly(CostKind.EMPTY_BELT, costs.emptyBeltPerHour(), empty / 1000);
    state.addHourly(CostKind.SET_UP, costs.setUpPerHour(), setUp);
    int overtime = press.staffed().overtimeAt(end) - press.staffed().overtimeAt(start);
    state.addHourly(CostKind.OVERTIME, costs.overtimePerHour(), overtime);
    change.book(state, runIndex, pressIndex, start, state.pressLast[pressIndex]);
    darkBeforeLight(costs);
    state.lotFree[run.garmentLot()] = end + dryer.garmentsFreeS();
    state.lotStage[run.garmentLot()]++;
    state.pressFree[pressIndex] = end;
    state.pressLast[pressIndex] = runIndex;
    releaseScreens(pressIndex);
    state.finish(problem, run.order(), off);
    if (trace != null) {
      trace.place(
          runIndex, pressIndex, before, start, firstPiece, print, end, off, setUp, mounted, walk);
    }
  }

  private void releaseScreens(int pressIndex) {
    int set = run.screenSet();
    if (set < 0) {
      return;
    }
    ScreenSetSpec spec = problem.sets()[set];
    state.setFree[set] = Math.max(state.setFree[set], end + press.tearDownS() * spec.screens());
    state.setPress[set] = pressIndex;
    state.setLeft[set]--;
    if (state.setLeft[set] == 0) {
      released = state.setFree[set];
      if (!framesReturned) {
        screens.giveBack(state.screens, set, released);
      }
    }
  }

  /** R13: leftovers of an activated ink can serve light cloth, so dark cloth goes first. */
  private void darkBeforeLight(CostSpec costs) {
    int day = inks.dayOf(firstPiece);
    for (RunSpec.InkNeed need : run.needs()) {
      int ink = need.ink();
      if (problem.inks()[ink].activated()) {
        if (state.inkDay[ink] == day && state.inkLightness[ink] > run.clothLightness()) {
          state.add(CostKind.LIGHT_BEFORE_DARK, costs.lightBeforeDark());
        }
        state.inkDay[ink] = day;
        state.inkLightness[ink] = run.clothLightness();
      }
    }
  }
}
