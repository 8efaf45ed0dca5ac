package org.potlife.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.potlife.floor.OrderProgress;
import org.potlife.ink.Ink;
import org.potlife.ink.PrintMass;
import org.potlife.ink.StockInk;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.OrderSpec;
import org.potlife.simulation.Problem;
import org.potlife.simulation.RunSpec;
import org.potlife.simulation.StaffedTime;
import org.potlife.simulation.TakenOver;

/** Maps a request to the engine's problem: what is to be printed, where it may be, what it uses. */
final class ProblemMapper {

  /**
   * A run whose press opens later than this after its published time may go anywhere, s; our own
   * choice.
   */
  private static final int DISPLACED_AFTER_S = 3600;

  private final PlanRequest request;
  private final Shop shop;
  private final Horizon horizon;
  private final List<StaffedTime> staffed;
  private final RunLoad load;
  private final Fit fit;
  private final Lots lots;
  private final Frozen frozen;
  private final BatchNews batchNews;
  private final List<StockInk> stock;
  private final List<PlanSheet.UnplacedLine> unplaced = new ArrayList<>();
  private final Map<String, Integer> inkIndex = new HashMap<>();
  private final Set<List<String>> closed = new HashSet<>();
  private final List<PlannedRun> movable = new ArrayList<>();
  private final List<PlannedRun> taken = new ArrayList<>();
  private final Map<String, Integer> lotIndex = new LinkedHashMap<>();

  ProblemMapper(PlanRequest request) {
    this.request = request;
    shop = request.shop();
    LocalDate day = request.day();
    horizon = Horizon.from(request.plannedAt(), shop.timeZone(), day, HorizonDays.needed(request));
    staffed =
        shop.presses().stream()
            .map(press -> Calendars.staffed(press, horizon, press.maxPauseMinutes() * 60))
            .toList();
    load = new RunLoad(request);
    fit = new Fit(shop, load);
    lots = new Lots(shop, load, fit, staffed);
    FloorNews floorNews = new FloorNews(request, horizon);
    PlanRequest asItStands = floorNews.request();
    closed.addAll(floorNews.reclaimed());
    batchNews = new BatchNews(asItStands);
    frozen = Frozen.from(asItStands, new ScreenNews(asItStands, horizon), batchNews);
    stock = batchNews.offered(frozen.batches());
    for (Ink ink : shop.inks()) {
      inkIndex.put(ink.id(), inkIndex.size());
    }
  }

  MappedProblem map() {
    List<Order> orders =
        request.orders().stream().sorted(Comparator.comparing(Order::reference)).toList();
    for (Order order : orders) {
      split(order);
    }
    List<PlannedRun> runs = new ArrayList<>(movable);
    runs.addAll(taken);
    Map<String, Integer> orderIndex = new HashMap<>();
    orders.forEach(order -> orderIndex.put(order.reference(), orderIndex.size()));
    ScreenSets sets;
    RunSpec[] specs;
    TakeOver takeOver;
    TakenOver takenOver;
    do {
      ScreenSets tried = new ScreenSets(shop, frozen, runs, movable.size(), closed);
      sets = tried;
      specs = runs.stream().map(run -> spec(run, orderIndex, tried)).toArray(RunSpec[]::new);
      takeOver =
          new TakeOver(
              shop,
              horizon,
              frozen,
              new InkInHand(shop, horizon, frozen, batchNews, stock),
              runs,
              movable.size(),
              sets,
              lotIndex,
              orderIndex);
      takenOver = takeOver.bookings(specs);
    } while (closed.addAll(takeOver.closed()));
    ShopMapper shopMapper = new ShopMapper(shop, horizon, staffed, request.day(), request.rooms());
    Problem problem =
        new Problem(
            movable.size(),
            specs,
            shopMapper.presses(takeOver.lastRunByPress()),
            shopMapper.dryers(specs),
            shopMapper.inks(),
            sets.specs(horizon),
            orders.stream().map(this::orderSpec).toArray(OrderSpec[]::new),
            lotIndex.size(),
            shopMapper.screenRoom(),
            shopMapper.inkRoom(),
            shopMapper.costs(),
            horizon.dayStarts(),
            horizon.end(),
            published(line -> isDisplaced(line) ? -1 : horizon.seconds(line.setUpStart())),
            published(line -> isDisplaced(line) ? Problem.DISPLACED : press(line)),
            takenOver,
            null,
            WishedOrder.pairs(request.instructions(), runs, specs, movable.size()));
    return new MappedProblem(request, horizon, problem, runs, sets.list(), unplaced, frozen, stock);
  }

  private int[] published(java.util.function.ToIntFunction<RunLine> value) {
    Map<String, RunLine> lines = new HashMap<>();
    request.published().ifPresent(sheet -> sheet.runs().forEach(run -> lines.put(run.id(), run)));
    int[] values = new int[movable.size() + taken.size()];
    for (int i = 0; i < values.length; i++) {
      RunLine line = i < movable.size() ? lines.get(movable.get(i).id()) : null;
      values[i] = line == null ? -1 : value.applyAsInt(line);
    }
    return values;
  }

  private int press(RunLine line) {
    return shop.presses().indexOf(shop.findPress(line.press()).orElse(null));
  }

  /** Whether the press of a run is closed by now at its published time and for long after it. */
  private boolean isDisplaced(RunLine line) {
    int press = press(line);
    int start = Math.max(0, horizon.seconds(line.setUpStart()));
    return press >= 0 && staffed.get(press).next(start) > start + DISPLACED_AFTER_S;
  }

  private OrderSpec orderSpec(Order order) {
    return new OrderSpec(
        horizon.seconds(order.dueAt()), shop.settings().lateWeight(order.priority()));
  }

  /** Lots of an order; one that is frozen or begun keeps its number, others share what is left. */
  private void split(Order order) {
    Map<Integer, Integer> sizes = new TreeMap<>(frozen.lotPieces(order.reference()));
    OrderProgress progress =
        OrderProgress.of(order, request.floor().runs(), shop.cloth().spoilagePercent());
    int left = left(order, progress, sizes);
    List<Print> possible = new ArrayList<>();
    List<Print> blocked = new ArrayList<>();
    boolean stuck = false;
    for (Print print : order.prints()) {
      Fit.Obstacle obstacle = obstacle(order, print);
      if (obstacle == null && stuck) {
        obstacle = new Fit.Obstacle("R17", "a print that must come first has no place");
      }
      if (obstacle == null) {
        possible.add(print);
      } else {
        blocked.add(print);
        stuck |= order.printsInListedOrder();
        unplaced.add(line(order, print, obstacle));
      }
    }
    if (left > 0) {
      int number = 1;
      for (int size : lots.sizes(order, possible, left, leastLots(order, sizes.size()))) {
        while (sizes.containsKey(number)) {
          number++;
        }
        sizes.put(number, size);
      }
    }
    addRuns(order, sizes, blocked, progress);
  }

  /** Lots that are still to be made for the planner's wish. */
  private int leastLots(Order order, int made) {
    return Math.max(1, request.instructions().leastLots(order.reference()) - made);
  }

  /** Pieces for further lots; what nothing will bring is listed (R20). */
  private int left(Order order, OrderProgress progress, Map<Integer, Integer> sizes) {
    if (progress.lots().isEmpty()) {
      miss(order, order.garments().quantity() - order.garments().blanks());
      return Lots.pieces(order, shop.cloth()) - sum(sizes);
    }
    progress.lots().forEach(lot -> sizes.remove(lot.number()));
    int underWay = sum(sizes);
    progress.lots().forEach(lot -> sizes.put(lot.number(), progress.piecesToCome(lot)));
    miss(order, progress.missing(underWay));
    return progress.further(underWay);
  }

  private void miss(Order order, int missing) {
    if (missing > 0) {
      String cause =
          "%d pieces are missing: there are no blanks for them, or those that there were are spoiled"
              .formatted(missing);
      unplaced.add(line(order, order.prints().get(0), new Fit.Obstacle("R20", cause)));
    }
  }

  private static int sum(Map<Integer, Integer> sizes) {
    return sizes.values().stream().mapToInt(Integer::intValue).sum();
  }

  private void addRuns(
      Order order, Map<Integer, Integer> sizes, List<Print> blocked, OrderProgress progress) {
    Set<String> frozenIds = frozen.runIds();
    Map<Integer, Set<Print>> done = new HashMap<>();
    progress.lots().forEach(lot -> done.put(lot.number(), lot.printsDone()));
    for (Map.Entry<Integer, Integer> lot : sizes.entrySet()) {
      lotIndex.put(lotKey(order.reference(), lot.getKey()), lotIndex.size());
      for (int number = 0; number < order.prints().size(); number++) {
        Print print = order.prints().get(number);
        PlannedRun run =
            new PlannedRun(order, print, number, lot.getKey(), sizes.size(), lot.getValue());
        if (frozenIds.contains(run.id()) && inksKnown(print)) {
          taken.add(run);
        } else if (!blocked.contains(print)
            && run.pieces() > 0
            && !done.getOrDefault(run.lot(), Set.of()).contains(print)) {
          movable.add(run);
        }
      }
    }
  }

  private boolean inksKnown(Print print) {
    return print.colours().stream().allMatch(colour -> inkIndex.containsKey(colour.ink()));
  }

  static String lotKey(String order, int lot) {
    return order + ":" + lot;
  }

  private Fit.Obstacle obstacle(Order order, Print print) {
    if (request.instructions().holds(order.reference())) {
      return new Fit.Obstacle("R21", "the planner holds the order back");
    }
    List<Fit.Obstacle> obstacles = fit.obstacles(order, print);
    if (!obstacles.isEmpty()) {
      return obstacles.get(0);
    }
    List<Fit.Obstacle> byPress = new ArrayList<>();
    for (int i = 0; i < shop.presses().size(); i++) {
      Press press = shop.presses().get(i);
      Fit.Obstacle obstacle = fit.obstacle(order, print, press);
      if (obstacle == null) {
        if (lots.capacity(order, print, i) > 0) {
          return null;
        }
        obstacle = new Fit.Obstacle("R3", "its set-up is longer than any shift of " + press.id());
      }
      byPress.add(obstacle);
    }
    String causes =
        byPress.stream().map(Fit.Obstacle::cause).distinct().reduce((a, b) -> a + "; " + b).get();
    return new Fit.Obstacle(byPress.get(0).rule(), "no press takes it: " + causes);
  }

  private static PlanSheet.UnplacedLine line(Order order, Print print, Fit.Obstacle obstacle) {
    return new PlanSheet.UnplacedLine(
        order.reference(), print.design(), print.position(), 0, obstacle.rule(), obstacle.cause());
  }

  private RunSpec spec(PlannedRun run, Map<String, Integer> orderIndex, ScreenSets sets) {
    Order order = run.order();
    Print print = run.print();
    int charge = shop.inkRoom().screenChargeG();
    List<RunSpec.InkNeed> needs = new ArrayList<>();
    load.gramsPerPiece(print)
        .forEach(
            (ink, grams) -> {
              long stations = print.colours().stream().filter(c -> c.ink().equals(ink)).count();
              needs.add(
                  new RunSpec.InkNeed(
                      inkIndex.get(ink),
                      PrintMass.runMassG(run.pieces(), grams, shop.inkRoom().lossPercent()),
                      (int) stations * charge));
            });
    // what stands longest is activated first
    needs.sort(Comparator.comparingInt(need -> -standS(need.ink())));
    return new RunSpec(
        orderIndex.get(order.reference()),
        lotIndex.get(lotKey(order.reference(), run.lot())),
        order.printsInListedOrder() ? stage(run) : -1,
        sets.indexOf(run),
        run.pieces(),
        Math.max(horizon.secondsUp(order.garments().availableFrom()), notBefore(run)),
        order.garments().lightness(),
        sets.screenNumbers(print),
        print.colours().stream().mapToInt(colour -> inkIndex.get(colour.ink())).toArray(),
        needs.toArray(RunSpec.InkNeed[]::new),
        shop.dryers().stream()
            .map(dryer -> load.feed(print, order.garments(), dryer))
            .toArray(RunSpec.BeltFeed[]::new),
        presses(run));
  }

  /** Prints of its lot that come before it; the crew may have begun with another one. */
  private int stage(PlannedRun run) {
    Set<String> begun =
        frozen.runs().stream()
            .filter(line -> horizon.seconds(line.setUpStart()) < 0)
            .map(RunLine::id)
            .collect(Collectors.toSet());
    int stage = run.number();
    for (int number = 0; number < run.order().prints().size(); number++) {
      Print print = run.order().prints().get(number);
      String id =
          PlannedRun.id(run.order().reference(), print.design(), print.position(), run.lot());
      if (number > run.number() && begun.contains(id)) {
        stage++;
      } else if (number < run.number() && !frozen.runIds().contains(id) && isDone(id)) {
        stage--;
      }
    }
    return stage;
  }

  private boolean isDone(String run) {
    return request.floor().runs().stream()
        .anyMatch(report -> report.run().equals(run) && report.ended());
  }

  private int standS(int ink) {
    var system = shop.findInkSystem(shop.inks().get(ink).system()).orElseThrow();
    return system.activated() ? system.standMinutes() * 60 : 0;
  }

  private int notBefore(PlannedRun run) {
    return request
        .instructions()
        .findRun(run.id())
        .map(Instructions.RunWish::notBefore)
        .map(horizon::secondsUp)
        .orElse(-StaffedTime.NEVER);
  }

  private boolean[] presses(PlannedRun run) {
    boolean[] allowed = new boolean[shop.presses().size()];
    boolean any = false;
    for (int i = 0; i < allowed.length; i++) {
      allowed[i] = lots.capacity(run.order(), run.print(), i) >= run.pieces();
      any |= allowed[i];
    }
    for (int i = 0; i < allowed.length && !any; i++) {
      allowed[i] = lots.capacity(run.order(), run.print(), i) > 0;
    }
    wishedPress(run).filter(press -> allowed[press]).ifPresent(press -> only(allowed, press));
    return allowed;
  }

  /** The press that the planner wants, as long as the shop has it. */
  private Optional<Integer> wishedPress(PlannedRun run) {
    return request
        .instructions()
        .findPress(run.id())
        .flatMap(shop::findPress)
        .map(shop.presses()::indexOf);
  }

  private static void only(boolean[] allowed, int press) {
    Arrays.fill(allowed, false);
    allowed[press] = true;
  }
}
