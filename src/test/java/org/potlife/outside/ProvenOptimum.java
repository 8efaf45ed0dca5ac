package org.potlife.outside;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.potlife.outside.BareShop.SetUpMinutes;
import org.potlife.simulation.Trace;

/**
 * The least weighted lateness of a {@link CompleteCase}, proven by CP-SAT on a model that is
 * written from docs/model.md alone. It knows nothing of sequences that are played through: starts
 * are free, and the rules forbid what must not be.
 */
public final class ProvenOptimum {

  private static final int RATE = 60;
  private static final double MOST_SECONDS = 120;

  static {
    Loader.loadNativeLibraries();
  }

  /** Arc of a press's round: {@code before} (-1 for none) is followed by {@code run}. */
  private record Arc(int press, int before, int run, Literal taken) {}

  private final CompleteCase shop;
  private final CpModel model = new CpModel();
  private final List<Arc> arcs = new ArrayList<>();
  private final int n;
  private final int horizon;
  private final IntVar[] start;
  private final IntVar[] first;
  private final IntVar[] print;
  private final IntVar[] end;
  private final LinearExpr[] tearDown;

  private ProvenOptimum(CompleteCase shop) {
    this.shop = shop;
    n = shop.runs().size();
    horizon = shop.shifts()[shop.shifts().length - 1];
    start = times("start");
    first = times("first piece");
    print = times("print");
    end = times("end");
    tearDown = new LinearExpr[n];
  }

  static long weightedLateMinutes(CompleteCase shop) {
    return new ProvenOptimum(shop).solve();
  }

  private IntVar[] times(String name) {
    IntVar[] vars = new IntVar[n];
    for (int run = 0; run < n; run++) {
      vars[run] = model.newIntVar(0, horizon, name + " " + run);
    }
    return vars;
  }

  /**
   * What CP-SAT found within a time.
   *
   * @param found weighted late minutes; empty if it found no plan
   * @param proven whether nothing better exists
   * @param curve seconds and weighted late minutes of each better plan
   */
  public record Answer(OptionalLong found, boolean proven, List<double[]> curve) {}

  /**
   * Lets CP-SAT search for a time, with two workers.
   *
   * @param hint a plan to start from, or none
   */
  public static Answer within(CompleteCase shop, double seconds, Optional<Trace> hint) {
    ProvenOptimum model = new ProvenOptimum(shop);
    model.rules();
    hint.ifPresent(model::hint);
    List<double[]> curve = new ArrayList<>();
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(2).setMaxTimeInSeconds(seconds).setRepairHint(true);
    CpSolverStatus status =
        solver.solve(
            model.model,
            new CpSolverSolutionCallback() {
              @Override
              public void onSolutionCallback() {
                curve.add(new double[] {wallTime(), objectiveValue()});
              }
            });
    boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new Answer(
        any ? OptionalLong.of(Math.round(solver.objectiveValue())) : OptionalLong.empty(),
        status == CpSolverStatus.OPTIMAL,
        curve);
  }

  /** Times are given to the minute above: a plan of whole minutes is taken as it is. */
  private void hint(Trace trace) {
    int[] last = new int[shop.presses().length];
    Arrays.fill(last, -1);
    Set<Long> follows = new HashSet<>();
    for (Trace.Placed placed : trace.placed()) {
      int run = placed.run();
      model.addHint(start[run], placed.start() / 60);
      model.addHint(first[run], placed.firstPiece() / 60);
      model.addHint(print[run], placed.print() / 60);
      model.addHint(end[run], placed.end() / 60);
      follows.add(key(placed.press(), last[placed.press()], run));
      last[placed.press()] = run;
    }
    for (Arc arc : arcs) {
      model.addHint(
          (BoolVar) arc.taken(), follows.contains(key(arc.press(), arc.before(), arc.run())));
    }
  }

  private long key(int press, int before, int run) {
    return ((long) press * (n + 1) + before + 1) * n + run;
  }

  private void rules() {
    oneRunAtATimeOnEachPress();
    setUpsBySequence();
    withinOneShift();
    screensAtOnePlace();
    garmentsInHouseAndCool();
    beltArea();
    model.minimize(lateness());
  }

  private long solve() {
    rules();
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(2).setMaxTimeInSeconds(MOST_SECONDS);
    CpSolverStatus status = solver.solve(model);
    if (status != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException("no proof within " + MOST_SECONDS + " s: " + status);
    }
    return Math.round(solver.objectiveValue());
  }

  /** R2: a round over the runs of each press; node 0 is the empty press. */
  private void oneRunAtATimeOnEachPress() {
    Literal[][] on = new Literal[n][shop.presses().length];
    for (int press = 0; press < shop.presses().length; press++) {
      CircuitConstraint round = model.addCircuit();
      round.addArc(0, 0, model.newBoolVar("idle " + press));
      for (int run = 0; run < n; run++) {
        on[run][press] = model.newBoolVar("run " + run + " on " + press);
        round.addArc(run + 1, run + 1, on[run][press].not());
        round.addArc(run + 1, 0, model.newBoolVar("last " + run));
        for (int before = -1; before < n; before++) {
          if (before != run) {
            BoolVar taken = model.newBoolVar(before + " then " + run);
            round.addArc(before + 1, run + 1, taken);
            arcs.add(new Arc(press, before, run, taken));
            if (before >= 0) {
              model.addGreaterOrEqual(start[run], end[before]).onlyEnforceIf(taken);
            }
          }
        }
      }
    }
    busyTimes(on);
    for (int run = 0; run < n; run++) {
      model.addExactlyOne(on[run]);
      LinearExprBuilder minutes = LinearExpr.newBuilder();
      for (int press = 0; press < on[run].length; press++) {
        int screens = shop.sets().get(shop.runs().get(run).set()).inks().length;
        minutes.addTerm(on[run][press], (long) shop.presses()[press].tearDown() * screens);
      }
      tearDown[run] = minutes.build();
    }
  }

  /** Follows from the rounds; said again as times that do not overlap, it speeds the proof. */
  private void busyTimes(Literal[][] on) {
    IntVar[] length = times("busy");
    CumulativeConstraint presses = model.addCumulative(shop.presses().length);
    for (int run = 0; run < n; run++) {
      presses.addDemand(model.newIntervalVar(start[run], length[run], end[run], "busy"), 1);
    }
    for (int press = 0; press < shop.presses().length; press++) {
      List<IntervalVar> busy = new ArrayList<>();
      for (int run = 0; run < n; run++) {
        busy.add(
            model.newOptionalIntervalVar(
                start[run], length[run], end[run], on[run][press], "busy on " + press));
      }
      model.addNoOverlap(busy);
    }
  }

  /** R2: length of set-up, of the first piece in it, and of what is left to print after it. */
  private void setUpsBySequence() {
    for (int run = 0; run < n; run++) {
      LinearExprBuilder setUp = LinearExpr.newBuilder();
      LinearExprBuilder beforeFirst = LinearExpr.newBuilder();
      LinearExprBuilder printing = LinearExpr.newBuilder();
      for (Arc arc : arcs) {
        if (arc.run() == run) {
          SetUpMinutes press = shop.presses()[arc.press()];
          int minutes = setUpMinutes(arc);
          int pieces = shop.runs().get(run).pieces();
          setUp.addTerm(arc.taken(), minutes);
          beforeFirst.addTerm(arc.taken(), minutes == 0 ? 0 : minutes - press.firstPiece());
          printing.addTerm(
              arc.taken(), minutes == 0 ? pieces : pieces - Math.min(press.trialPieces(), pieces));
        }
      }
      model.addEquality(print[run], setUp.add(start[run]));
      model.addEquality(first[run], beforeFirst.add(start[run]));
      model.addEquality(end[run], printing.add(print[run]));
    }
  }

  private int setUpMinutes(Arc arc) {
    SetUpMinutes press = shop.presses()[arc.press()];
    int set = shop.runs().get(arc.run()).set();
    int[] needs = shop.sets().get(set).inks();
    int setBefore = arc.before() < 0 ? -1 : shop.runs().get(arc.before()).set();
    if (setBefore == set) {
      return 0;
    }
    int minutes = press.changeover() + press.perScreen() * needs.length + press.firstPiece();
    if (setBefore < 0) {
      return minutes;
    }
    int[] had = shop.sets().get(setBefore).inks();
    minutes += press.tearDown() * had.length;
    for (int station = 0; station < Math.min(had.length, needs.length); station++) {
      if (had[station] != needs[station]) {
        boolean darker = shop.lightness()[needs[station]] < shop.lightness()[had[station]];
        minutes += darker ? press.toDarker() : press.toLighter();
      }
    }
    return minutes;
  }

  /** R3: set-up and print lie in one span. */
  private void withinOneShift() {
    for (int run = 0; run < n; run++) {
      Literal[] inShift = new Literal[shop.shifts().length / 2];
      for (int shift = 0; shift < inShift.length; shift++) {
        inShift[shift] = model.newBoolVar("run " + run + " in shift " + shift);
        model.addGreaterOrEqual(start[run], shop.shifts()[2 * shift]).onlyEnforceIf(inShift[shift]);
        model.addLessOrEqual(end[run], shop.shifts()[2 * shift + 1]).onlyEnforceIf(inShift[shift]);
      }
      model.addExactlyOne(inShift);
    }
  }

  /** R4: a set is ready, and goes on only when the run before has released it. */
  private void screensAtOnePlace() {
    for (int one = 0; one < n; one++) {
      model.addGreaterOrEqual(start[one], shop.sets().get(shop.runs().get(one).set()).ready());
      for (int other = one + 1; other < n; other++) {
        if (shop.runs().get(one).set() == shop.runs().get(other).set()) {
          BoolVar oneFirst = model.newBoolVar(one + " has the screens before " + other);
          releases(one, other, oneFirst);
          releases(other, one, oneFirst.not());
        }
      }
    }
  }

  /** Unless the runs follow on one press: then there is no set-up, and the screens stay. */
  private void releases(int before, int after, Literal inThisOrder) {
    List<Literal> elsewhere = new ArrayList<>();
    elsewhere.add(inThisOrder);
    for (Arc arc : arcs) {
      if (arc.before() == before && arc.run() == after) {
        elsewhere.add(arc.taken().not());
        model.addImplication(arc.taken(), inThisOrder);
      }
    }
    LinearExpr released = LinearExpr.newBuilder().add(end[before]).add(tearDown[before]).build();
    model
        .addGreaterOrEqual(start[after], released)
        .onlyEnforceIf(elsewhere.toArray(Literal[]::new));
  }

  /** R18 and R17. */
  private void garmentsInHouseAndCool() {
    for (int one = 0; one < n; one++) {
      CompleteCase.Run run = shop.runs().get(one);
      model.addGreaterOrEqual(first[one], run.from());
      for (int other = one + 1; other < n; other++) {
        if (run.order() == shop.runs().get(other).order()) {
          BoolVar oneFirst = model.newBoolVar(one + " before " + other);
          cools(one, other, oneFirst);
          cools(other, one, oneFirst.not());
          if (run.stage() >= 0) {
            model.addEquality(oneFirst, run.stage() < shop.runs().get(other).stage() ? 1 : 0);
          }
        }
      }
    }
  }

  private void cools(int before, int after, Literal inThisOrder) {
    model
        .addGreaterOrEqual(
            first[after],
            LinearExpr.newBuilder().add(end[before]).add(shop.transit() + shop.cool()).build())
        .onlyEnforceIf(inThisOrder);
  }

  /** R15 at the fastest belt, and R14 with it while a run with a longer dwell is in the tunnel. */
  private void beltArea() {
    feeds(model.addCumulative(shop.belt()));
    for (int run = 0; run < n; run++) {
      int limit = shop.runs().get(run).speedLimit();
      if (limit < shop.belt()) {
        CumulativeConstraint slow = model.addCumulative(shop.belt());
        feeds(slow);
        IntVar inTunnel = model.newIntVar(0, horizon, "in tunnel");
        IntVar off = model.newIntVar(0, horizon + shop.transit(), "off");
        model.addEquality(off, LinearExpr.newBuilder().add(end[run]).add(shop.transit()).build());
        slow.addDemand(
            model.newIntervalVar(first[run], inTunnel, off, "tunnel " + run),
            (long) shop.belt() - limit);
      }
    }
  }

  private void feeds(CumulativeConstraint belt) {
    for (int run = 0; run < n; run++) {
      int perPiece = shop.runs().get(run).beltPerPiece();
      if (perPiece > 0) {
        SetUpMinutes press = shop.presses()[0];
        int trialRate = press.trialPieces() * 60 / press.firstPiece();
        belt.addDemand(between(first[run], print[run]), (long) trialRate * perPiece);
        belt.addDemand(between(print[run], end[run]), (long) RATE * perPiece);
      }
    }
  }

  private IntervalVar between(IntVar from, IntVar to) {
    return model.newIntervalVar(from, model.newIntVar(0, horizon, "length"), to, "feed");
  }

  /** R21. */
  private LinearExpr lateness() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int order = 0; order < shop.orders().size(); order++) {
      IntVar late = model.newIntVar(0, 2L * horizon, "late " + order);
      for (int run = 0; run < n; run++) {
        if (shop.runs().get(run).order() == order) {
          model.addGreaterOrEqual(
              late,
              LinearExpr.newBuilder()
                  .add(end[run])
                  .add(shop.transit() - shop.orders().get(order).due())
                  .build());
        }
      }
      sum.addTerm(late, shop.orders().get(order).weight());
    }
    return sum.build();
  }
}
