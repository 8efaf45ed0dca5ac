package org.potlife.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.potlife.floor.FloorReport;
import org.potlife.ink.InkReport;
import org.potlife.order.Order;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Shop;

/**
 * R0: the sheet can be read and agrees with itself. Reads the lines of a sheet into evidence; a
 * line that cannot be read is a finding here and is left out for the other rules.
 */
final class EvidenceReader {

  static final String NUMBER = "R0";
  static final String TITLE = "The sheet can be read and agrees with itself";

  private final Shop shop;
  private final Map<String, Order> orders = new LinkedHashMap<>();
  private final PlanSheet sheet;
  private final Optional<PlanSheet> published;
  private final RoomState rooms;
  private final Notes notes;
  private final InkReport inkReport;
  private final InkReports inkReports;
  private final FloorReport floor;
  private final Map<String, RunFacts> runs = new LinkedHashMap<>();
  private LineReader reader;

  EvidenceReader(
      Shop shop,
      List<Order> orders,
      PlanSheet sheet,
      Optional<PlanSheet> published,
      RoomState rooms,
      InkReport ink,
      FloorReport floor,
      Notes notes) {
    this.floor = floor;
    this.shop = shop;
    this.sheet = sheet;
    this.published = published;
    this.rooms = rooms;
    this.notes = notes;
    inkReport = ink;
    inkReports = new InkReports(ink);
    orders.forEach(order -> this.orders.put(order.reference(), order));
  }

  Evidence read() {
    Optional<Published> before = published.map(Published::new);
    if (!headerLegible()) {
      return new Evidence(
          shop,
          orders,
          sheet,
          before,
          Set.of(),
          new Evidence.Lines(0, 0, List.of(), List.of(), List.of(), List.of()),
          new Stretch(0, 0),
          rooms,
          new ScreenReports(shop, rooms, 0, List.of(), Set.of()),
          inkReports,
          floor,
          new FloorRuns(shop, orders, Optional.empty(), floor, 0, 0));
    }
    long plannedAt = sheet.plannedAt().toEpochSecond();
    reader = new LineReader(notes, plannedAt);
    reader.legible(sheet.horizonEnd(), "plan", "end of its horizon");
    reader.given(sheet.score(), "plan", "score");
    reader.lines(sheet.late(), "plan", "late orders");
    reader.lines(sheet.unplaced(), "plan", "unplaced runs");
    reader.lines(sheet.frozen(), "plan", "frozen runs");
    RunReader runReader = new RunReader(shop, orders, inkReport.learned(), reader);
    for (RunLine line : reader.lines(sheet.runs(), "plan", "runs")) {
      if (named(line.id(), runs.containsKey(line.id()), "run")) {
        runReader.read(line).ifPresent(run -> runs.put(run.id(), run));
      }
    }
    List<BatchFacts> batches = batches();
    List<ScreenFacts> screens = screens();
    List<BeltFacts> belts = belts();
    FloorRuns floorRuns =
        new FloorRuns(
            shop,
            orders,
            before,
            floor,
            plannedAt,
            sheet.horizonEnd() == null ? plannedAt : sheet.horizonEnd().toEpochSecond());
    ScreenReports reports = reports(before, floorRuns);
    new CrossReferences(reader, runs.values(), batches, screens).check();
    return new Evidence(
        shop,
        orders,
        sheet,
        before,
        frozen(before, reports, floorRuns),
        new Evidence.Lines(
            plannedAt,
            sheet.day().atStartOfDay(shop.timeZone()).toEpochSecond(),
            List.copyOf(runs.values()),
            batches,
            screens,
            belts),
        reader.window(),
        rooms,
        reports,
        inkReports,
        floor,
        floorRuns);
  }

  private boolean headerLegible() {
    boolean legible =
        notes.check(sheet.plannedAt() != null, "plan", "does not say when it was planned")
            & notes.check(sheet.day() != null, "plan", "does not say for which day it is");
    notes.check(
        shop.timeZone().getId().equals(sheet.timeZone()),
        "plan",
        "is written for the time zone %s, the plant's is %s",
        sheet.timeZone(),
        shop.timeZone());
    return legible
        && notes.check(
            sheet.plannedAt().getYear() >= 1970 && sheet.plannedAt().getYear() < 9000,
            "plan",
            "was planned at %s, which is no working time",
            sheet.plannedAt())
        && notes.check(
            Math.abs(sheet.day().toEpochDay() - sheet.plannedAt().toLocalDate().toEpochDay())
                <= LineReader.REACH_DAYS,
            "plan",
            "is for %s, too far from its planning at %s",
            sheet.day(),
            sheet.plannedAt());
  }

  private boolean named(String id, boolean taken, String what) {
    return notes.check(id != null && !id.isBlank(), "plan", "has a %s without a name", what)
        && notes.check(!taken, id, "stands on the sheet twice as a %s", what);
  }

  private ScreenReports reports(Optional<Published> before, FloorRuns floorRuns) {
    return new ScreenReports(
        shop,
        rooms,
        sheet.plannedAt().toEpochSecond(),
        before.map(Published::screens).orElse(List.of()),
        before.map(plan -> floorRuns.begunAmong(plan.runs())).orElse(Set.of()));
  }

  private Set<String> frozen(
      Optional<Published> before, ScreenReports reports, FloorRuns floorRuns) {
    Set<String> ids = new LinkedHashSet<>();
    before.ifPresent(
        plan ->
            plan
                .frozen(
                    sheet.plannedAt().plusMinutes(shop.settings().freezeMinutes()), orders.keySet())
                .stream()
                .filter(run -> !floorRuns.cannotStay(run.id()))
                .filter(
                    run -> Completeness.there(run.screens()).stream().noneMatch(reports::isChanged))
                .forEach(run -> ids.add(run.id())));
    before.ifPresent(
        plan ->
            inkReports
                .withoutInk(plan.runs(), plan.batches(), sheet.plannedAt().toInstant())
                .forEach(ids::remove));
    ids.addAll(floorRuns.begun());
    return ids;
  }

  private List<BatchFacts> batches() {
    Map<String, BatchFacts> read = new LinkedHashMap<>();
    for (BatchLine line : reader.lines(sheet.batches(), "plan", "batches")) {
      if (named(line.id(), read.containsKey(line.id()), "batch")) {
        readBatch(line).ifPresent(batch -> read.put(batch.id(), batch));
      }
    }
    return List.copyOf(read.values());
  }

  private Optional<BatchFacts> readBatch(BatchLine line) {
    var ink = shop.findInk(line.ink());
    var system = ink.flatMap(i -> shop.findInkSystem(i.system()));
    boolean legible =
        notes.check(system.isPresent(), line.id(), "is of the unknown ink %s", line.ink())
            & reader.inOrder(
                line.id(),
                List.of("start of mixing", "activation", "end of activation", "ready time"),
                Arrays.asList(
                    line.mixFrom(), line.activateFrom(), line.activatedAt(), line.readyAt()));
    reader.lines(line.components(), line.id(), "components");
    if (line.useBy() != null) {
      legible &= reader.legible(line.useBy(), line.id(), "use-by time");
    }
    List<BatchFacts.Use> uses = new ArrayList<>();
    for (UseLine use : reader.lines(line.uses(), line.id(), "uses")) {
      RunFacts run = runs.get(use.run());
      boolean times =
          reader.inOrder(
              line.id(),
              List.of("first stroke", "last stroke"),
              Arrays.asList(use.from(), use.to()));
      if (notes.check(run != null, line.id(), "is used by the unknown run %s", use.run())
          && times) {
        uses.add(
            new BatchFacts.Use(
                new BatchFacts.Id(line.id(), line.ink()),
                run,
                use.from().toEpochSecond(),
                use.to().toEpochSecond(),
                use.printG(),
                use.chargeG()));
      }
    }
    return legible
        ? Optional.of(
            new BatchFacts(
                line,
                ink.orElseThrow(),
                system.orElseThrow(),
                line.mixFrom().toEpochSecond(),
                line.activateFrom().toEpochSecond(),
                line.activatedAt().toEpochSecond(),
                line.readyAt().toEpochSecond(),
                line.useBy() == null ? null : line.useBy().toEpochSecond(),
                uses))
        : Optional.empty();
  }

  private List<ScreenFacts> screens() {
    Map<String, ScreenFacts> read = new LinkedHashMap<>();
    for (ScreenLine line : reader.lines(sheet.screens(), "plan", "screens")) {
      if (named(line.id(), read.containsKey(line.id()), "screen")) {
        read.put(line.id(), readScreen(line));
      }
    }
    return List.copyOf(read.values());
  }

  private ScreenFacts readScreen(ScreenLine line) {
    List<RunFacts> used =
        reader.lines(line.runs(), line.id(), "runs").stream()
            .filter(
                id -> notes.check(runs.containsKey(id), line.id(), "is for the unknown run %s", id))
            .distinct()
            .map(runs::get)
            .sorted(Comparator.comparingLong(RunFacts::setUpStart))
            .toList();
    List<ScreenFacts.Step> steps = new ArrayList<>();
    for (StepLine step : reader.lines(line.steps(), line.id(), "steps")) {
      Optional<Stage> stage = Stage.find(step.step());
      if (notes.check(stage.isPresent(), line.id(), "has the unknown step %s", step.step())
          & reader.inOrder(
              line.id(),
              List.of("start of " + step.step(), "end of " + step.step()),
              Arrays.asList(step.from(), step.to()))) {
        steps.add(
            new ScreenFacts.Step(
                new ScreenFacts.Name(line.id()),
                stage.orElseThrow(),
                step.from().toEpochSecond(),
                step.to().toEpochSecond(),
                step.where()));
      }
    }
    return new ScreenFacts(
        line,
        ScreenKey.of(line),
        line.kept() && line.readyAt() == null
                || !reader.legible(line.readyAt(), line.id(), "ready time")
            ? null
            : Long.valueOf(line.readyAt().toEpochSecond()),
        reader.legible(line.releasedAt(), line.id(), "release time")
            ? Long.valueOf(line.releasedAt().toEpochSecond())
            : null,
        used,
        steps);
  }

  private List<BeltFacts> belts() {
    List<BeltFacts> read = new ArrayList<>();
    for (BeltLine line : reader.lines(sheet.belts(), "plan", "belt settings")) {
      var dryer = shop.findDryer(line.dryer());
      boolean legible =
          notes.check(dryer.isPresent(), "belts", "names the unknown dryer %s", line.dryer())
              & reader.inOrder(
                  "belt " + line.dryer(),
                  List.of("start", "end"),
                  Arrays.asList(line.from(), line.to()))
              & notes.check(
                  Double.isFinite(line.speedMPerMin()) && line.speedMPerMin() >= 0,
                  "belt " + line.dryer(),
                  "has the impossible speed %s m/min",
                  line.speedMPerMin());
      reader.lines(line.runs(), "belt " + line.dryer(), "runs");
      notes.check(
          line.bound() != null && line.bound().matches("dwell|area|heat|none"),
          "belt " + line.dryer(),
          "is said to be bound by %s",
          line.bound());
      if (legible) {
        read.add(
            new BeltFacts(
                line,
                dryer.orElseThrow(),
                line.from().toEpochSecond(),
                line.to().toEpochSecond(),
                line.speedMPerMin()));
      }
    }
    return read;
  }
}
