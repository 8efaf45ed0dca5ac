package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.dryer.Dryer;
import org.potlife.floor.FloorReport;
import org.potlife.order.Order;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/** All that the rules may look at: what could be read of a plan, and the calendars of the rooms. */
final class Evidence {

  private static final Comparator<RunFacts> WORKING_ORDER =
      Comparator.comparingLong(RunFacts::setUpStart)
          .thenComparingLong(RunFacts::printEnd)
          .thenComparing(RunFacts::id);

  private final Shop shop;
  private final Map<String, Order> orders;
  private final PlanSheet sheet;
  private final Optional<Published> published;
  private final Set<String> frozen;
  private final Lines lines;
  private final Stretch window;
  private final RoomState rooms;
  private final ScreenReports reports;
  private final InkReports ink;
  private final FloorReport floor;
  private final FloorRuns floorRuns;
  private final Map<String, List<RunFacts>> sequences = new HashMap<>();
  private final Map<String, Staffed> pressTime = new HashMap<>();
  private Staffed screenRoomTime;
  private Staffed inkRoomTime;
  private final Map<String, ScreenFacts> screensById = new HashMap<>();
  private final Map<String, List<RunFacts>> runsByOrder;
  private final Map<String, List<RunFacts>> runsByDryer;
  private final Map<String, List<BeltFacts>> beltsByDryer;
  private final Map<String, List<BatchFacts.Use>> usesByRun;
  private List<TunnelMoment> tunnelMoments;
  private Map<BeltFacts, List<TunnelMoment>> momentsOfBelt;

  /** The lines that could be read. */
  record Lines(
      long plannedAt,
      long dayStart,
      List<RunFacts> runs,
      List<BatchFacts> batches,
      List<ScreenFacts> screens,
      List<BeltFacts> belts) {}

  Evidence(
      Shop shop,
      Map<String, Order> orders,
      PlanSheet sheet,
      Optional<Published> published,
      Set<String> frozen,
      Lines lines,
      Stretch window,
      RoomState rooms,
      ScreenReports reports,
      InkReports ink,
      FloorReport floor,
      FloorRuns floorRuns) {
    this.floor = floor;
    this.floorRuns = floorRuns;
    this.reports = reports;
    this.shop = shop;
    this.orders = orders;
    this.sheet = sheet;
    this.published = published;
    this.frozen = frozen;
    this.lines = lines;
    this.window = window;
    this.rooms = rooms;
    this.ink = ink;
    for (Press press : shop.presses()) {
      sequences.put(
          press.id(),
          lines.runs().stream()
              .filter(run -> run.press().id().equals(press.id()))
              .sorted(WORKING_ORDER)
              .toList());
    }
    lines.screens().forEach(screen -> screensById.putIfAbsent(screen.id(), screen));
    runsByOrder = by(lines.runs(), run -> run.order().reference());
    runsByDryer = by(lines.runs(), run -> run.dryer().id());
    beltsByDryer = by(lines.belts(), belt -> belt.dryer().id());
    usesByRun =
        by(
            lines.batches().stream().flatMap(batch -> batch.uses().stream()).toList(),
            use -> use.run().id());
  }

  private static <T> Map<String, List<T>> by(List<T> facts, Function<T, String> name) {
    return facts.stream().collect(Collectors.groupingBy(name));
  }

  Shop shop() {
    return shop;
  }

  /** What the rooms had reported when the plan was made. */
  RoomState rooms() {
    return rooms;
  }

  /** What they mean for the published screens. */
  ScreenReports reports() {
    return reports;
  }

  /** What the ink room had told when the plan was made. */
  InkReports ink() {
    return ink;
  }

  /** What the floor's report makes of the published runs. */
  FloorRuns floor() {
    return floorRuns;
  }

  /** Whether the run has begun and was told of, or goes otherwise than published. */
  boolean isFact(RunFacts run) {
    return floorRuns.isFact(run.id());
  }

  /** What is done of an order by its runs that have ended. */
  CountedLots countedLots(Order order) {
    return new CountedLots(order, floor, shop.cloth());
  }

  /** Whether the run is under way: what it draws is a fact. */
  boolean isUnderWay(RunFacts run) {
    return isFrozen(run.id()) && run.setUpStart() < plannedAt();
  }

  /** Whether the run goes on with this batch as it is: it is marked, or the run is a fact. */
  boolean isDrawnAsItIs(BatchFacts batch, RunFacts run) {
    return isFact(run) || ink.isMarked(batch.id()) && isUnderWay(run);
  }

  /** Open orders by reference. */
  Map<String, Order> orders() {
    return orders;
  }

  PlanSheet sheet() {
    return sheet;
  }

  Optional<Published> published() {
    return published;
  }

  /** Whether the run is inside the freeze window of the published plan. */
  boolean isFrozen(String run) {
    return frozen.contains(run);
  }

  /** Whether a screen or kept stencil of this name is reported broken. */
  boolean isBroken(String screen) {
    return rooms.broken().stream().anyMatch(broken -> broken.screen().equals(screen));
  }

  /** Whether the published plan has this step at this place and time. */
  boolean isPublishedStep(ScreenFacts.Step step) {
    return published.flatMap(plan -> plan.screen(step.screen().id())).stream()
        .flatMap(line -> Completeness.there(line.steps()).stream())
        .filter(before -> before.from() != null && before.to() != null)
        .anyMatch(
            before ->
                before.from().toEpochSecond() == step.from()
                    && before.to().toEpochSecond() == step.to()
                    && step.where().equals(before.where()));
  }

  /** The screen of this name on the sheet. */
  Optional<ScreenFacts> screen(String id) {
    return Optional.ofNullable(screensById.get(id));
  }

  /** Whether a screen of the published plan was begun before the planning. */
  boolean isBegun(String screen) {
    return published
        .flatMap(plan -> plan.screen(screen))
        .flatMap(Published::begunAt)
        .filter(at -> at < plannedAt())
        .isPresent();
  }

  /** Whether a batch of the published plan serves a frozen run or was begun before the planning. */
  boolean isTakenOver(BatchFacts batch) {
    return published
        .flatMap(plan -> plan.batch(batch.id()))
        .filter(
            before ->
                ink.isMarked(batch.id())
                    || !batch.fromStock()
                        && before.mixFrom() != null
                        && before.mixFrom().toEpochSecond() < plannedAt()
                    || batch.uses().stream().anyMatch(use -> isFrozen(use.run().id())))
        .isPresent();
  }

  /** The batch as it was published, if it serves a frozen run or was begun before the planning. */
  Optional<BatchLine> madeBefore(BatchFacts batch) {
    return isTakenOver(batch)
        ? published.flatMap(plan -> plan.batch(batch.id()))
        : Optional.empty();
  }

  /** Runs that must stay as published. */
  Set<String> frozen() {
    return frozen;
  }

  /** Epoch second from which the plan counts. */
  long plannedAt() {
    return lines.plannedAt();
  }

  /** Epoch second from which presses may work: the later of planning and the start of the day. */
  long pressesOpenFrom() {
    return Math.max(lines.plannedAt(), lines.dayStart());
  }

  List<RunFacts> runs() {
    return lines.runs();
  }

  /** The runs of an order. */
  List<RunFacts> runs(Order order) {
    return runsByOrder.getOrDefault(order.reference(), List.of());
  }

  /** The runs that go through a dryer. */
  List<RunFacts> runs(Dryer dryer) {
    return runsByDryer.getOrDefault(dryer.id(), List.of());
  }

  List<BatchFacts> batches() {
    return lines.batches();
  }

  /** What a run draws of all batches, in the sheet's order. */
  List<BatchFacts.Use> uses(RunFacts run) {
    return usesByRun.getOrDefault(run.id(), List.of());
  }

  List<ScreenFacts> screens() {
    return lines.screens();
  }

  List<BeltFacts> belts() {
    return lines.belts();
  }

  /** The settings of a dryer's belt. */
  List<BeltFacts> belts(Dryer dryer) {
    return beltsByDryer.getOrDefault(dryer.id(), List.of());
  }

  /** The runs of a press in working order. */
  List<RunFacts> sequence(Press press) {
    return sequences.get(press.id());
  }

  /** The run before on the same press. */
  Optional<RunFacts> before(RunFacts run) {
    List<RunFacts> sequence = sequence(run.press());
    int at = sequence.indexOf(run);
    return at > 0 ? Optional.of(sequence.get(at - 1)) : Optional.empty();
  }

  /** The run after on the same press. */
  Optional<RunFacts> after(RunFacts run) {
    List<RunFacts> sequence = sequence(run.press());
    int at = sequence.indexOf(run);
    return at + 1 < sequence.size() ? Optional.of(sequence.get(at + 1)) : Optional.empty();
  }

  Staffed staffed(Press press) {
    return pressTime.computeIfAbsent(press.id(), id -> Staffed.of(press, shop.timeZone(), window));
  }

  Staffed screenRoom() {
    if (screenRoomTime == null) {
      screenRoomTime =
          Staffed.of(
              shop.screenRoom().shifts(), shop.screenRoom().closures(), shop.timeZone(), window);
    }
    return screenRoomTime;
  }

  Staffed inkRoom() {
    if (inkRoomTime == null) {
      inkRoomTime =
          Staffed.of(shop.inkRoom().shifts(), shop.inkRoom().closures(), shop.timeZone(), window);
    }
    return inkRoomTime;
  }

  /** What goes through the dryers, moment by moment. */
  List<TunnelMoment> tunnelMoments() {
    if (tunnelMoments == null) {
      tunnelMoments = Tunnel.moments(this);
    }
    return tunnelMoments;
  }

  /** The moments in which this setting holds. */
  List<TunnelMoment> tunnelMoments(BeltFacts belt) {
    if (momentsOfBelt == null) {
      momentsOfBelt = new IdentityHashMap<>();
      for (TunnelMoment moment : tunnelMoments()) {
        for (BeltFacts setting : moment.belts()) {
          momentsOfBelt.computeIfAbsent(setting, same -> new ArrayList<>()).add(moment);
        }
      }
    }
    return momentsOfBelt.getOrDefault(belt, List.of());
  }

  /** A moment in words. */
  Moment at(long second) {
    return new Moment(second, shop.timeZone());
  }
}
