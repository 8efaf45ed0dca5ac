package org.potlife.outside;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.potlife.simulation.CostSpec;
import org.potlife.simulation.DryerSpec;
import org.potlife.simulation.InkRoomSpec;
import org.potlife.simulation.InkSpec;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.PressSpec;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.ScreenRoomSpec;
import org.potlife.simulation.ScreenSetSpec;
import org.potlife.simulation.StaffedTime;
import org.potlife.simulation.TakenOver;

/** Builds the engine's problem for textbook cases, in minutes; a piece takes a minute. */
public final class BareShop {

  /** A press is a machine: it needs no set-up. */
  public static final SetUpMinutes NO_SET_UP = new SetUpMinutes(0, 0, 0, 0, 0, 0, 0);

  private static final int MINUTE = 60;
  private static final int HORIZON = 1_000_000 * MINUTE;
  private static final int ROOMY = 1_000_000;

  /** Minutes of the parts of a set-up (R2), and the pieces of the trial. */
  public record SetUpMinutes(
      int changeover,
      int perScreen,
      int tearDown,
      int toDarker,
      int toLighter,
      int firstPiece,
      int trialPieces) {}

  /** A run to be; what is not said has a plain default. */
  public static final class Run {
    private final int order;
    private final int pieces;
    private int lot = -1;
    private int stage = -1;
    private int set = -1;
    private int from;
    private int[] inks = {};
    private int[] presses;
    private int beltPerPiece;
    private int speedLimit = ROOMY;

    private Run(int order, int pieces) {
      this.order = order;
      this.pieces = pieces;
    }

    /** The garments that it is printed on; its own ones if not said. */
    public Run lot(int number) {
      lot = number;
      return this;
    }

    /** Place in the listed order of the prints of its lot. */
    public Run stage(int number) {
      stage = number;
      return this;
    }

    /** Garments are in house from this minute on. */
    public Run from(int minute) {
      from = minute;
      return this;
    }

    /** The only presses that take it. */
    public Run on(int... numbers) {
      presses = numbers;
      return this;
    }

    /** Its screens, of which set they are, and the ink at each station. */
    public Run screens(int number, int... inkByStation) {
      set = number;
      inks = inkByStation;
      return this;
    }

    /** Belt length of a piece, and how fast the belt may run for it. */
    public Run belt(int perPiece, int limit) {
      beltPerPiece = perPiece;
      speedLimit = limit;
      return this;
    }
  }

  private final List<Run> runs = new ArrayList<>();
  private final List<OrderSpec> orders = new ArrayList<>();
  private final List<ScreenSetSpec> sets = new ArrayList<>();
  private final SetUpMinutes[] setUps;
  private StaffedTime staffed = StaffedTime.always(0);
  private DryerSpec dryer = new DryerSpec(ROOMY, ROOMY, 0, 0);
  private int[] lightness = {};
  private int finishPerMinute;

  private BareShop(SetUpMinutes[] setUps) {
    this.setUps = setUps;
  }

  public static BareShop presses(int count) {
    SetUpMinutes[] none = new SetUpMinutes[count];
    Arrays.fill(none, NO_SET_UP);
    return new BareShop(none);
  }

  public static BareShop presses(SetUpMinutes... setUps) {
    return new BareShop(setUps);
  }

  /** Shifts of all presses, starts and ends in turn, minutes; no run pauses between two. */
  public BareShop shifts(int... minutes) {
    return shiftsWithPause(0, minutes);
  }

  /** The same, where a run may pause over a gap of at most so many minutes. */
  public BareShop shiftsWithPause(int mostMinutes, int... minutes) {
    int n = minutes.length / 2;
    int[] start = new int[n];
    int[] end = new int[n];
    for (int i = 0; i < n; i++) {
      start[i] = minutes[2 * i] * MINUTE;
      end[i] = minutes[2 * i + 1] * MINUTE;
    }
    staffed = new StaffedTime(start, end, new boolean[n], mostMinutes * MINUTE);
    return this;
  }

  /** Fastest belt, minutes on it after the last stroke, and minutes to cool. */
  public BareShop dryer(int maxSpeed, int transit, int cool) {
    dryer = new DryerSpec(maxSpeed, ROOMY, transit * MINUTE, cool * MINUTE);
    return this;
  }

  public BareShop inks(int... lightnesses) {
    lightness = lightnesses;
    return this;
  }

  /** Each minute by which the whole plan ends later costs one. */
  public BareShop finishCosts() {
    finishPerMinute = 1;
    return this;
  }

  /** A new order; returns its number. */
  public int order(int dueMinute, int weight) {
    orders.add(new OrderSpec(dueMinute * MINUTE, weight));
    return orders.size() - 1;
  }

  /** A new set of finished screens; returns its number. */
  public int set(int screens, int readyMinute) {
    sets.add(new ScreenSetSpec(screens, 0, new int[0], new int[0], readyMinute * MINUTE, 0, 0, 0));
    return sets.size() - 1;
  }

  public Run run(int order, int pieces) {
    Run run = new Run(order, pieces);
    runs.add(run);
    return run;
  }

  public Problem problem() {
    return problem(null);
  }

  /**
   * @param measuredSetUpS set-ups between runs, s, as in {@link Problem#measuredSetUpS}
   */
  public Problem problem(int[][] measuredSetUpS) {
    int lots = runs.stream().mapToInt(run -> run.lot).max().orElse(-1) + 1;
    RunSpec[] specs = new RunSpec[runs.size()];
    for (int i = 0; i < specs.length; i++) {
      Run run = runs.get(i);
      specs[i] = spec(run, run.lot >= 0 ? run.lot : lots++);
    }
    int[] unpublished = new int[specs.length];
    Arrays.fill(unpublished, -1);
    return new Problem(
        specs.length,
        specs,
        Arrays.stream(setUps).map(this::press).toArray(PressSpec[]::new),
        new DryerSpec[] {dryer},
        Arrays.stream(lightness)
            .mapToObj(l -> new InkSpec(false, 0, 0, l, 0))
            .toArray(InkSpec[]::new),
        setSpecs(),
        orders.toArray(OrderSpec[]::new),
        lots,
        emptyScreenRoom(),
        new InkRoomSpec(StaffedTime.always(0), 1, 0, 0, ROOMY, 0),
        new CostSpec(0, 0, 0, 0, 0, 0, finishPerMinute * 60L, 0, 0, 0),
        new int[] {0},
        HORIZON,
        unpublished,
        unpublished,
        TakenOver.nothing(setUps.length, lots, orders.size(), sets.size()),
        measuredSetUpS,
        new int[0][]);
  }

  private RunSpec spec(Run run, int lot) {
    boolean[] allowed = new boolean[setUps.length];
    Arrays.fill(allowed, run.presses == null);
    for (int i = 0; run.presses != null && i < run.presses.length; i++) {
      allowed[run.presses[i]] = true;
    }
    int[] screens = new int[run.inks.length];
    for (int station = 0; station < screens.length; station++) {
      screens[station] = run.set * 100 + station;
    }
    return new RunSpec(
        run.order,
        lot,
        run.stage,
        run.set,
        run.pieces,
        run.from * MINUTE,
        50,
        screens,
        run.inks,
        new RunSpec.InkNeed[0],
        new RunSpec.BeltFeed[] {new RunSpec.BeltFeed(run.speedLimit, run.beltPerPiece, 0)},
        allowed);
  }

  private PressSpec press(SetUpMinutes setUp) {
    return new PressSpec(
        staffed,
        0,
        60,
        60,
        setUp.changeover() * MINUTE,
        setUp.perScreen() * MINUTE,
        setUp.tearDown() * MINUTE,
        setUp.toDarker() * MINUTE,
        setUp.toLighter() * MINUTE,
        setUp.firstPiece() * MINUTE,
        setUp.trialPieces(),
        0,
        -1);
  }

  private ScreenSetSpec[] setSpecs() {
    ScreenSetSpec[] specs = new ScreenSetSpec[sets.size()];
    for (int i = 0; i < specs.length; i++) {
      int set = i;
      ScreenSetSpec spec = sets.get(i);
      int uses = (int) runs.stream().filter(run -> run.set == set).count();
      specs[i] =
          new ScreenSetSpec(
              spec.screens(), 0, spec.meshes(), new int[0], spec.readyAt(), uses, 0, 0);
    }
    return specs;
  }

  private static ScreenRoomSpec emptyScreenRoom() {
    return new ScreenRoomSpec(
        StaffedTime.always(0),
        new int[ScreenRoomSpec.Place.values().length],
        new int[ScreenRoomSpec.HandStage.values().length],
        StaffedTime.NEVER,
        0,
        new ScreenRoomSpec.Cabinet[0],
        new int[0]);
  }
}
