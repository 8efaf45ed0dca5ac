package org.potlife.simulation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Evaluates sequences of a shop whose rooms are left out: sets of screens are ready at given times
 * and no run draws ink. Presses on one dryer then have to do with those on another only by garments
 * and screens that go from one to the other, so that only the dryers are simulated whose presses
 * differ from a base, and those to which a difference gets that way.
 *
 * <p>With {@code verify} every result is compared with a simulation from the start.
 *
 * <p>Long, because which dryer goes as in the base, which has its turn next and what both share is
 * decided anew at every step.
 */
public final class DryerEvaluator implements RunTimes {

  private static final int UNTOUCHED = Integer.MAX_VALUE;
  private static final int DONE = -1;
  private static final int NO_PLACE = -2;

  private final Problem problem;
  private final Simulation simulation;
  private final Simulation whole;
  private final boolean verify;
  private final SharedGoods shared;
  private final DryerCourse[] courses;
  private final int[] dryerOf;
  private final RunRecords base;
  private final RunRecords tried;
  private final ShopState working;
  private final ShopState empty;
  private final int[][] baseSequences;
  private final int[] baseLengths;
  private final OrderEnds orders;
  private Outcome baseOutcome;
  private boolean started;

  /** By dryer, the step of the base from which it is simulated. */
  private final int[] from;

  private final boolean[] simulated;
  private final boolean[] changed;

  /** By dryer, the step from which it is simulated this time, and the one to come. */
  private final int[] starts;

  private final int[] steps;

  /** By dryer, the step of the base from which all is as there again. */
  private final int[] untils;

  private final int[] pressBefore;
  private final long[][] costs;
  private final long[] costBefore = new long[CostKind.values().length];
  private final int[][] newRuns;
  private final int[] walked;
  private int walkedCount;

  /** Runs of the last evaluation that are in no line of the base. */
  private final int[] newcomers;

  private int newcomerCount;
  private int nextShared;

  /** By press, how many runs at the end of its line are those of the base. */
  private final int[] common;

  private int[][] sequences;
  private int[] lengths;
  private boolean adopting;

  /** Whether dryers that are as in the base again are left alone from then on. */
  private boolean mayLeave;

  /**
   * @param problem one without needs of ink
   */
  public DryerEvaluator(Problem problem, boolean verify) {
    this.problem = problem;
    this.verify = verify;
    SetUp setUps = new SetUp(problem);
    simulation = new Simulation(problem, setUps);
    whole = new Simulation(problem, setUps);
    shared = new SharedGoods(problem);
    int presses = problem.presses().length;
    int runs = problem.movable();
    int dryers = problem.dryers().length;
    dryerOf = new int[presses];
    for (int press = 0; press < presses; press++) {
      dryerOf[press] = problem.presses()[press].dryer();
    }
    courses = new DryerCourse[dryers];
    for (int dryer = 0; dryer < dryers; dryer++) {
      int feeding = dryer;
      courses[dryer] =
          new DryerCourse(
              problem,
              dryer,
              IntStream.range(0, presses).filter(press -> dryerOf[press] == feeding).toArray());
    }
    base = new RunRecords(runs);
    tried = new RunRecords(runs);
    working = new ShopState(problem);
    empty = new ShopState(problem);
    baseSequences = new int[presses][runs];
    baseLengths = new int[presses];
    orders = new OrderEnds(problem, base, empty);
    from = new int[dryers];
    simulated = new boolean[presses];
    changed = new boolean[presses];
    starts = new int[dryers];
    steps = new int[dryers];
    untils = new int[dryers];
    common = new int[presses];
    pressBefore = new int[dryers];
    costs = new long[dryers][costBefore.length];
    newRuns = new int[dryers][runs];
    walked = new int[shared.most()];
    newcomers = new int[runs];
  }

  /**
   * From here on sets of screens are ready at these times, whatever the sequences. There is no base
   * any more.
   *
   * @param readyAt by set, s; of a set that was never wanted, anything below 0
   */
  public void giveScreens(int[] readyAt) {
    empty.screens.give(readyAt);
    working.screens.give(readyAt);
    whole.giveScreens(readyAt);
    started = false;
  }

  /** What these sequences come to. */
  public Outcome evaluate(int[][] newSequences, int[] newLengths) {
    return evaluate(newSequences, newLengths, false);
  }

  /** The same, and these sequences become the base. */
  public Outcome evaluateAsBase(int[][] newSequences, int[] newLengths) {
    return evaluate(newSequences, newLengths, true);
  }

  private Outcome evaluate(int[][] newSequences, int[] newLengths, boolean asBase) {
    sequences = newSequences;
    lengths = newLengths;
    adopting = asBase;
    if (started && !findChanged()) {
      return baseOutcome;
    }
    boolean complete = (started || asBase) && simulate();
    Outcome outcome = complete ? working.outcome(0) : whole.run(sequences, lengths, null);
    if (asBase) {
      baseOutcome = outcome;
      started = complete;
    }
    if (verify && complete) {
      compare(outcome);
    }
    return outcome;
  }

  private void compare(Outcome outcome) {
    Outcome full = whole.run(sequences, lengths, null);
    if (!full.equals(outcome)) {
      throw new IllegalStateException("by dryers %s, full simulation %s".formatted(outcome, full));
    }
  }

  /** Finds the steps of the base from which dryers go otherwise; false if nothing differs. */
  private boolean findChanged() {
    Arrays.fill(from, UNTOUCHED);
    boolean any = false;
    for (int press = 0; press < baseSequences.length; press++) {
      int[] line = baseSequences[press];
      int at = Arrays.mismatch(line, 0, baseLengths[press], sequences[press], 0, lengths[press]);
      common[press] = UNTOUCHED;
      if (at >= 0) {
        any = true;
        simulateFrom(press, at);
        common[press] = commonEnd(press);
      }
    }
    return any;
  }

  private int commonEnd(int press) {
    int[] line = baseSequences[press];
    int i = baseLengths[press] - 1;
    int j = lengths[press] - 1;
    while (i >= 0 && j >= 0 && line[i] == sequences[press][j]) {
      i--;
      j--;
    }
    return lengths[press] - 1 - j;
  }

  /** The dryer of a press goes otherwise once the press has come to a place of its line. */
  private boolean simulateFrom(int press, int place) {
    int step = place == 0 ? 0 : base.step(baseSequences[press][place - 1]) + 1;
    int dryer = dryerOf[press];
    boolean sooner = step < from[dryer];
    from[dryer] = Math.min(from[dryer], step);
    return sooner;
  }

  /** Simulates until no more dryers are touched; false if a run finds no place. */
  private boolean simulate() {
    if (!started) {
      startAfresh();
    }
    mayLeave = !adopting;
    int early;
    do {
      begin();
      early = run();
      if (early == NO_PLACE || (early >= 0 && !beginSooner(early))) {
        return false;
      }
    } while (early >= 0);
    addUntouched();
    if (adopting) {
      adopt();
    }
    return true;
  }

  /** Makes room for a run that has its turn sooner; false if that would change nothing. */
  private boolean beginSooner(int run) {
    if (!base.isThere(run)) {
      return false;
    }
    int press = base.press(run);
    boolean other = simulateFrom(press, placeOf(run, press)) || mayLeave;
    mayLeave = false;
    return other;
  }

  private int placeOf(int run, int press) {
    int place = 0;
    while (baseSequences[press][place] != run) {
      place++;
    }
    return place;
  }

  private void startAfresh() {
    working.copyFrom(empty);
    Arrays.fill(from, 0);
    for (int run = 0; run < problem.movable(); run++) {
      base.leaveOut(run);
    }
    Arrays.fill(costBefore, 0);
    for (DryerCourse course : courses) {
      course.end(0, costBefore);
      course.keep(0, working, Integer.MIN_VALUE / 2, costBefore);
    }
    orders.adopt(empty);
  }

  private void begin() {
    walkedCount = 0;
    working.unplaced = 0;
    orders.begin(working);
    int firstTurn = StaffedTime.NEVER;
    Arrays.fill(simulated, false);
    Arrays.fill(starts, 0);
    Arrays.fill(untils, 0);
    for (DryerCourse course : courses) {
      if (from[course.dryer] != UNTOUCHED) {
        course.addUp(working);
        begin(course, from[course.dryer]);
        if (starts[course.dryer] < course.steps) {
          firstTurn = Math.min(firstTurn, base.turn(course.run[starts[course.dryer]]));
        }
        for (int press : course.presses) {
          if (working.position[press] < lengths[press]) {
            firstTurn = Math.min(firstTurn, working.pressFree[press]);
          }
        }
      }
    }
    for (int i = 0; i < newcomerCount; i++) {
      shared.reset(newcomers[i], working);
    }
    newcomerCount = 0;
    shared.begin(working);
    nextShared = started ? 0 : shared.count();
    while (nextShared < shared.count() && base.turn(shared.run(nextShared)) < firstTurn) {
      if (goesAsInBase(shared.run(nextShared))) {
        base.apply(shared.run(nextShared), problem, working);
      }
      nextShared++;
    }
    for (DryerCourse course : courses) {
      if (from[course.dryer] != UNTOUCHED) {
        takeOut(course);
      }
    }
  }

  /** From here on the presses of a dryer are simulated. */
  private void begin(DryerCourse course, int first) {
    int dryer = course.dryer;
    int step = course.checkpointFor(first);
    starts[dryer] = step;
    steps[dryer] = step;
    untils[dryer] = UNTOUCHED;
    course.load(step, working);
    course.takeBack(step, working);
    course.copyCost(step, costs[dryer]);
    for (int press : course.presses) {
      simulated[press] = true;
    }
    for (int i = step; i < course.steps; i++) {
      orders.again(course.run[i]);
    }
  }

  /** Its runs have not had their turn yet: their orders end without them. */
  private void takeOut(DryerCourse course) {
    for (int step = starts[course.dryer]; step < course.steps; step++) {
      int run = course.run[step];
      shared.reset(run, working);
      orders.takeOut(run, working);
    }
  }

  /** A run will not go as in the base: from its turn on its dryer is simulated too. */
  private void touch(int run) {
    DryerCourse course = courses[dryerOf[base.press(run)]];
    if (from[course.dryer] == UNTOUCHED) {
      course.addUp(working);
    }
    from[course.dryer] = Math.min(from[course.dryer], base.step(run));
    begin(course, base.step(run));
    takeOut(course);
    for (int press : course.presses) {
      // where lines have become shorter or longer, what remains is the same
      working.position[press] += lengths[press] - baseLengths[press];
      simulation.lookAhead(press);
    }
  }

  private void addUntouched() {
    for (DryerCourse course : courses) {
      if (from[course.dryer] == UNTOUCHED) {
        course.addUp(working);
      }
    }
    orders.finish(working);
  }

  /** Simulates all dryers that are touched; tells which run of another one is touched by that. */
  private int run() {
    simulation.follow(working, sequences, lengths, simulated);
    int press = simulation.next();
    while (true) {
      int run = nextOfOthers(simulation.now(), press);
      if (run >= 0) {
        if (!shared.isTouched(base, run, working)) {
          pass(run);
        } else if (base.step(run) < starts[dryerOf[base.press(run)]] || wouldBeSooner(run)) {
          return run;
        } else {
          touch(run);
        }
        press = simulation.next();
      } else if (press >= 0) {
        int next = sequences[press][working.position[press]];
        if (comesBeforeStart(press)) {
          return next;
        }
        int sooner = soonerThan(next, press);
        if (sooner >= 0) {
          return sooner;
        }
        if (!step(press)) {
          return NO_PLACE;
        }
        press = simulation.next();
      } else {
        return allPlaced() ? DONE : NO_PLACE;
      }
    }
  }

  /** Whether garments that came earlier let a run go before steps that were taken over. */
  private boolean comesBeforeStart(int press) {
    int dryer = dryerOf[press];
    int start = starts[dryer];
    if (start == 0) {
      return false;
    }
    int last = courses[dryer].run[start - 1];
    int now = simulation.now();
    return now < courses[dryer].since(start)
        || (now == base.turn(last) && press < base.press(last));
  }

  /**
   * A run that waited in the base for the garments that this one takes now, and would be there
   * first now; or -1.
   */
  private int soonerThan(int run, int press) {
    int lot = problem.runs()[run].garmentLot();
    if (shared.isSharedLot(lot)) {
      int now = simulation.now();
      for (int other : shared.runsOfLot(lot)) {
        if (goesAsInBase(other) && base.turn(other) >= now) {
          RunSpec spec = problem.runs()[other];
          int could =
              Math.max(base.before(other), Math.max(spec.garmentsFrom(), working.lotFree[lot]));
          boolean hasTurn = spec.stage() < 0 || spec.stage() == working.lotStage[lot];
          if (hasTurn && (could < now || (could == now && base.press(other) < press))) {
            return other;
          }
        }
      }
    }
    return -1;
  }

  private boolean goesAsInBase(int run) {
    int dryer = dryerOf[base.press(run)];
    int step = base.step(run);
    return step >= 0 && (step < starts[dryer] || step >= untils[dryer]);
  }

  private boolean allPlaced() {
    for (int press = 0; press < simulated.length; press++) {
      if (simulated[press] && working.position[press] < lengths[press]) {
        return false;
      }
    }
    return true;
  }

  /** Whether a run that is touched has its turn before the one that it had in the base. */
  private boolean wouldBeSooner(int run) {
    RunSpec spec = problem.runs()[run];
    int lot = spec.garmentLot();
    return Math.max(base.before(run), Math.max(spec.garmentsFrom(), working.lotFree[lot]))
        < base.turn(run);
  }

  /** The next run that goes as in the base, shares something and has its turn first; or -1. */
  private int nextOfOthers(int now, int press) {
    while (nextShared < shared.count()) {
      int run = shared.run(nextShared);
      int turn = base.turn(run);
      if (press >= 0 && (turn > now || (turn == now && base.press(run) >= press))) {
        return -1;
      }
      if (goesAsInBase(run)) {
        return run;
      }
      // with nothing else to come it cannot be told any more where its dryer would be as before
      mayLeave &= press >= 0;
      nextShared++;
    }
    return -1;
  }

  /** A run goes as in the base. */
  private void pass(int run) {
    if (adopting) {
      tried.noteBefore(run, problem.runs()[run], working);
      walked[walkedCount++] = run;
    }
    base.apply(run, problem, working);
    simulation.lookAheadFor(problem.runs()[run].garmentLot());
    nextShared++;
  }

  private boolean step(int press) {
    int dryer = dryerOf[press];
    int turn = simulation.now();
    DryerCourse course = courses[dryer];
    if (mayLeave && isAsInBaseAgain(course, press)) {
      leave(course);
      return true;
    }
    int step = steps[dryer]++;
    if (adopting) {
      if (step > starts[dryer]) {
        // others may send another run to the press that has just had its turn
        int since = Math.min(turn, working.pressFree[pressBefore[dryer]]);
        course.keep(step, working, since, costs[dryer]);
      }
      System.arraycopy(working.costMilli, 0, costBefore, 0, costBefore.length);
      int next = sequences[press][working.position[press]];
      tried.noteBefore(next, problem.runs()[next], working);
    }
    int run = simulation.step(press, null);
    Placement placement = simulation.placement();
    if (placement.off() < 0) {
      return false;
    }
    if (!base.isThere(run)) {
      newcomers[newcomerCount++] = run;
    }
    orders.place(run, placement.off());
    if (adopting) {
      newRuns[dryer][step] = run;
      pressBefore[dryer] = press;
      tried.note(run, problem.runs()[run], turn, press, step, placement, working);
      for (int kind = 0; kind < costBefore.length; kind++) {
        if (!OrderEnds.followsFromEnds(kind)) {
          costs[dryer][kind] += working.costMilli[kind] - costBefore[kind];
        }
      }
    }
    return true;
  }

  /** Whether its presses and its belt have come to where they were in the base. */
  private boolean isAsInBaseAgain(DryerCourse course, int press) {
    int left = 0;
    for (int other : course.presses) {
      int remaining = lengths[other] - working.position[other];
      if (remaining > common[other]) {
        return false;
      }
      left += remaining;
    }
    int step = course.steps - left;
    int run = sequences[press][working.position[press]];
    return step > starts[course.dryer]
        && course.run[step] == run
        && base.turn(run) == simulation.now()
        && course.isAt(step, working, lengths, baseLengths);
  }

  /** From here on it goes as in the base. */
  private void leave(DryerCourse course) {
    int left = 0;
    for (int press : course.presses) {
      left += lengths[press] - working.position[press];
      working.position[press] = lengths[press];
      simulated[press] = false;
      simulation.lookAhead(press);
    }
    int step = course.steps - left;
    untils[course.dryer] = step;
    course.addRest(step, working);
    for (int i = step; i < course.steps; i++) {
      orders.asInBase(course.run[i], working);
    }
  }

  private void adopt() {
    for (DryerCourse course : courses) {
      int dryer = course.dryer;
      if (from[dryer] != UNTOUCHED) {
        for (int step = starts[dryer]; step < course.steps; step++) {
          if (!orders.isPlaced(course.run[step])) {
            base.leaveOut(course.run[step]);
          }
        }
        for (int step = starts[dryer]; step < steps[dryer]; step++) {
          course.run[step] = newRuns[dryer][step];
          base.copyFrom(tried, course.run[step]);
        }
        course.end(steps[dryer], costs[dryer]);
      }
    }
    for (int i = 0; i < walkedCount; i++) {
      base.copyBeforeFrom(tried, walked[i]);
    }
    for (int press = 0; press < simulated.length; press++) {
      if (simulated[press]) {
        System.arraycopy(sequences[press], 0, baseSequences[press], 0, lengths[press]);
        baseLengths[press] = lengths[press];
        changed[press] = true;
      }
    }
    orders.adopt(working);
    shared.order(base);
  }

  @Override
  public int startOf(int run) {
    return base.startOf(run);
  }

  @Override
  public int endOf(int run) {
    return base.endOf(run);
  }

  @Override
  public boolean changedSinceAsked(int press) {
    boolean was = changed[press];
    changed[press] = false;
    return was;
  }
}
