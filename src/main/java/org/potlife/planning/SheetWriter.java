package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.sheet.PlanSheet.WaitLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.Cause;
import org.potlife.simulation.CostKind;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.PressSpec;
import org.potlife.simulation.Refusal;
import org.potlife.simulation.Simulation;
import org.potlife.simulation.Trace;

/** Writes a simulated plan down in the shop's words. */
final class SheetWriter {

  private final MappedProblem mapped;
  private final Shop shop;
  private final Horizon horizon;
  private final RunLoad load;

  SheetWriter(MappedProblem mapped) {
    this.mapped = mapped;
    shop = mapped.request().shop();
    horizon = mapped.horizon();
    load = new RunLoad(mapped.request());
  }

  /** Simulates the sequences once more, writing down all that happens. */
  PlanSheet write(int[][] sequences, int[] lengths) {
    Simulation simulation = new Simulation(mapped.problem());
    Trace trace = new Trace();
    Outcome outcome = simulation.run(sequences, lengths, trace);
    BatchSheet batchSheet = new BatchSheet(mapped, trace);
    List<BatchLine> batches = batchSheet.lines();
    Map<String, List<String>> batchesByRun = batchSheet.byRun(batches);
    List<RunLine> runs = new ArrayList<>(mapped.frozen().runs());
    for (Trace.Placed placed : trace.placed()) {
      runs.add(runLine(placed, trace, batchesByRun));
    }
    runs.sort(
        Comparator.comparingLong((RunLine run) -> run.setUpStart().toEpochSecond())
            .thenComparing(RunLine::press));
    Map<String, Order> orders = new HashMap<>();
    mapped.request().orders().forEach(order -> orders.put(order.reference(), order));
    List<LateLine> late = late(runs, orders);
    List<UnplacedLine> unplaced = unplaced(trace);
    return new PlanSheet(
        horizon.time(0),
        mapped.request().day(),
        shop.timeZone().getId(),
        horizon.time(horizon.end()),
        score(simulation, outcome, late, unplaced),
        runs,
        batches,
        new ScreenSheet(mapped, trace).lines(runs),
        new BeltSheet(shop, horizon, load, orders).lines(runs),
        late,
        unplaced,
        mapped.frozen().runs().stream().map(RunLine::id).toList());
  }

  private static PlanSheet.PlanScore score(
      Simulation simulation, Outcome outcome, List<LateLine> late, List<UnplacedLine> unplaced) {
    Map<String, Double> cost = new LinkedHashMap<>();
    for (CostKind kind : CostKind.values()) {
      cost.put(kind.toString(), Math.round(simulation.costMilli(kind) / 10.0) / 100.0);
    }
    double total = Math.round(outcome.costMilli() / 10.0) / 100.0;
    return new PlanSheet.PlanScore(
        unplaced.size(),
        late.stream().mapToLong(LateLine::weightedMinutes).sum(),
        late.stream().mapToLong(LateLine::minutes).sum(),
        total,
        cost);
  }

  private RunLine runLine(
      Trace.Placed placed, Trace trace, Map<String, List<String>> batchesByRun) {
    PlannedRun run = mapped.runs().get(placed.run());
    Press press = shop.presses().get(placed.press());
    PressSpec spec = mapped.problem().presses()[placed.press()];
    ScreenSet set = mapped.sets().get(mapped.problem().runs()[placed.run()].screenSet());
    int trial =
        placed.firstPiece() < placed.print() ? Math.min(spec.trialPieces(), run.pieces()) : 0;
    int freeS = mapped.problem().dryers()[spec.dryer()].garmentsFreeS();
    List<RateLine> rates =
        placed.rates().stream()
            .map(
                rate ->
                    new RateLine(
                        horizon.time(rate.from()), horizon.time(rate.to()), rate.perHour()))
            .toList();
    boolean byDryer = placed.rates().stream().anyMatch(rate -> rate.perHour() < spec.rate());
    return new RunLine(
        run.id(),
        run.order().reference(),
        run.order().customer(),
        run.print().design(),
        run.print().position(),
        run.print().process().toString(),
        run.lot(),
        run.lots(),
        press.id(),
        press.dryer(),
        run.pieces(),
        trial,
        horizon.time(placed.start()),
        horizon.time(placed.firstPiece()),
        horizon.time(placed.print()),
        horizon.time(placed.end()),
        horizon.time(placed.off()),
        horizon.time(placed.end() + freeS),
        (placed.setUpS() + 30) / 60,
        placed.mounted(),
        meanRate(placed, run.pieces() - trial),
        byDryer ? "dryer" : "press",
        rates,
        set.ids(),
        run.print().colours().stream().map(colour -> colour.ink()).toList(),
        batchesByRun.getOrDefault(run.id(), List.of()),
        waits(placed, trace));
  }

  private static int meanRate(Trace.Placed placed, int pieces) {
    long seconds = placed.rates().stream().mapToLong(rate -> rate.to() - rate.from()).sum();
    return seconds == 0 ? 0 : (int) Math.round(pieces * 3600.0 / seconds);
  }

  private List<WaitLine> waits(Trace.Placed placed, Trace trace) {
    return placed.waits().stream()
        .map(
            wait ->
                new WaitLine(
                    wait.cause().toString(),
                    Math.round((wait.to() - wait.from()) / 60.0),
                    behindWhat(placed, wait, trace)))
        .toList();
  }

  private String behindWhat(Trace.Placed placed, Trace.Wait wait, Trace trace) {
    return wait.cause() == Cause.GARMENTS && isPutOff(mapped.runs().get(placed.run()))
        ? Instructions.BEHIND
        : behind(placed, wait, trace);
  }

  /** Whether the planner wants a run later than its garments would allow. */
  private boolean isPutOff(PlannedRun run) {
    return mapped
        .request()
        .instructions()
        .findRun(run.id())
        .map(Instructions.RunWish::notBefore)
        .filter(time -> time.isAfter(run.order().garments().availableFrom()))
        .isPresent();
  }

  /** The run that holds what this one waits for, where a run holds it. */
  private String behind(Trace.Placed placed, Trace.Wait wait, Trace trace) {
    var spec = mapped.problem().runs()[placed.run()];
    int dryer = mapped.problem().presses()[placed.press()].dryer();
    Trace.Placed found = null;
    for (Trace.Placed other : trace.placed()) {
      if (other == placed) {
        break;
      }
      var otherSpec = mapped.problem().runs()[other.run()];
      boolean holds =
          switch (wait.cause()) {
            case SAME_GARMENTS -> otherSpec.garmentLot() == spec.garmentLot();
            case SAME_SCREENS -> otherSpec.screenSet() == spec.screenSet();
            case DRYER ->
                other.press() != placed.press()
                    && mapped.problem().presses()[other.press()].dryer() == dryer
                    && other.off() > wait.from();
            default -> false;
          };
      if (holds && (found == null || other.off() > found.off())) {
        found = other;
      }
    }
    return found == null ? null : mapped.runs().get(found.run()).id();
  }

  private List<LateLine> late(List<RunLine> runs, Map<String, Order> orders) {
    Map<String, RunLine> last = new TreeMap<>();
    for (RunLine run : runs) {
      last.merge(run.order(), run, (a, b) -> a.offBelt().isBefore(b.offBelt()) ? b : a);
    }
    List<LateLine> late = new ArrayList<>();
    for (RunLine run : last.values()) {
      Order order = orders.get(run.order());
      OffsetDateTime due = order.dueAt();
      long seconds = run.offBelt().toEpochSecond() - due.toEpochSecond();
      if (seconds > 0) {
        long minutes = (seconds + 59) / 60;
        int weight = shop.settings().lateWeight(order.priority());
        late.add(
            new LateLine(
                order.reference(),
                order.customer(),
                due,
                run.offBelt(),
                minutes,
                minutes * weight,
                LateCause.of(run, order, runs, horizon.time(0), mapped.request().instructions())));
      }
    }
    late.sort(Comparator.comparingLong(LateLine::weightedMinutes).reversed());
    return late;
  }

  private List<UnplacedLine> unplaced(Trace trace) {
    List<UnplacedLine> lines = new ArrayList<>(mapped.unplaced());
    for (Trace.Refused refused : trace.refused()) {
      PlannedRun run = mapped.runs().get(refused.run());
      lines.add(
          new UnplacedLine(
              run.order().reference(),
              run.print().design(),
              run.print().position(),
              run.lot(),
              rule(refused.refusal()),
              cause(refused)));
    }
    return lines;
  }

  private static String rule(Refusal refusal) {
    return switch (refusal) {
      case SCREENS -> "R8";
      case HORIZON -> "R3";
      case EARLIER_PRINT -> "R17";
    };
  }

  private String cause(Trace.Refused refused) {
    String press = shop.presses().get(refused.press()).id();
    return switch (refused.refusal()) {
      case SCREENS ->
          "its screens cannot be made: the frames of its mesh do not come free in time, or nothing"
              + " dries in the cabinets' climate";
      case HORIZON ->
          "no shift of %s until %s takes it".formatted(press, horizon.time(horizon.end()));
      case EARLIER_PRINT -> "a print that must come first has no place";
    };
  }
}
