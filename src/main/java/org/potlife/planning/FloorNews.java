package org.potlife.planning;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.potlife.dryer.Dryer;
import org.potlife.floor.Downtime;
import org.potlife.floor.FloorReport;
import org.potlife.floor.OrderProgress;
import org.potlife.floor.RunReport;
import org.potlife.floor.Staffing;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.StaffedTime;

/**
 * The published plan as the floor has it (R22): runs that have begun with their real times, and
 * without the runs inside the freeze window that cannot stay as they are. The definitions are in
 * docs/model.md, "The day as it goes".
 */
final class FloorNews {

  /** Longer than a run may stand on a press. */
  private static final int DAYS_BEFORE = 7;

  /**
   * A press that is free by more than this before its time takes its next run sooner, s; our own
   * choice.
   */
  private static final int FREE_EARLY_S = 300;

  private final PlanRequest request;
  private final Shop shop;
  private final FloorReport report;
  private final Horizon past;
  private final int now;
  private final RunLoad load;
  private final Map<String, Order> orders = new HashMap<>();
  private final Map<String, RunReport> told = new HashMap<>();
  private final Map<String, RunLine> standing = new LinkedHashMap<>();
  private final Map<String, OffsetDateTime> publishedStart = new HashMap<>();
  private final Map<String, OffsetDateTime> publishedEnd = new HashMap<>();
  private final Map<String, OnPress> onPress = new HashMap<>();
  private final Set<String> changed = new HashSet<>();
  private final Set<String> replanned = new HashSet<>();

  FloorNews(PlanRequest request, Horizon horizon) {
    this.request = request;
    shop = request.shop();
    report = request.floor();
    past = horizon.earlier(DAYS_BEFORE);
    now = past.seconds(horizon.origin());
    load = new RunLoad(request);
    request.orders().forEach(order -> orders.put(order.reference(), order));
    report.runs().forEach(run -> told.put(run.run(), run));
    request.published().ifPresent(this::read);
  }

  /** The request with the published plan as the floor has it. */
  PlanRequest request() {
    return request
        .published()
        .map(new StandingSheet(past, standing, changed, replanned)::of)
        .map(request::from)
        .orElse(request);
  }

  /**
   * Sets, each by the ids of its screens, that by the published plan were taken down and reclaimed
   * before now. Where a run turns out not to have been printed with them, they are gone.
   */
  List<List<String>> reclaimed() {
    if (report.isEmpty() || request.published().isEmpty()) {
      return List.of();
    }
    OffsetDateTime at = past.time(now);
    double minutes = shop.screenRoom().stages().reclaim();
    return Frozen.bySet(request.published().get().screens()).stream()
        .filter(set -> set.stream().anyMatch(screen -> !screen.kept()))
        .filter(
            set -> {
              long seconds = (long) Math.ceil(60 * minutes * set.size());
              return !set.get(0).releasedAt().plusSeconds(seconds).isAfter(at);
            })
        .map(set -> set.stream().map(PlanSheet.ScreenLine::id).toList())
        .toList();
  }

  private void read(PlanSheet sheet) {
    List<RunLine> lines =
        sheet.runs().stream()
            .filter(line -> orders.containsKey(line.order()))
            .filter(line -> shop.findPress(line.press()).isPresent())
            .sorted(
                Comparator.comparing((RunLine line) -> line.setUpStart().toInstant())
                    .thenComparing(RunLine::id))
            .toList();
    lines.forEach(line -> publishedStart.put(line.id(), line.setUpStart()));
    lines.forEach(line -> publishedEnd.put(line.id(), line.printEnd()));
    for (Press press : shop.presses()) {
      toldOn(press, lines.stream().filter(line -> line.press().equals(press.id())).toList());
    }
    for (RunLine line : lines) {
      OnPress press = onPress.get(line.press());
      int start = past.seconds(line.setUpStart());
      if (!told.containsKey(line.id())
          && start < now
          && start >= press.busyUntil
          && hasBegunUntold(line, press)) {
        untold(line, press);
      }
    }
    int until = past.seconds(request.frozenUntil());
    for (RunLine line : lines) {
      if (!standing.containsKey(line.id())
          && past.seconds(line.setUpStart()) < until
          && !stays(line, lines)) {
        replanned.add(line.id());
      }
    }
  }

  /** What is known of one press while its runs are looked at in order. */
  private static final class OnPress {
    private final Press press;
    private final StaffedTime staffed;
    private final List<RunLine> lines;
    private final List<Integer> toldStarts = new ArrayList<>();
    private final List<FloorRun> toldRuns = new ArrayList<>();
    private int busyUntil = Integer.MIN_VALUE;

    private OnPress(Press press, StaffedTime staffed, List<RunLine> lines) {
      this.press = press;
      this.staffed = staffed;
      this.lines = lines;
    }
  }

  private void toldOn(Press press, List<RunLine> lines) {
    OnPress at = new OnPress(press, Calendars.staffed(press, past, 0), lines);
    onPress.put(press.id(), at);
    for (RunLine line : lines) {
      if (told.containsKey(line.id())) {
        at.toldStarts.add(FloorRun.begunAt(line, told.get(line.id()), past));
      }
    }
    for (RunLine line : lines) {
      RunReport of = told.get(line.id());
      if (of != null) {
        int next = after(at.toldStarts, FloorRun.begunAt(line, of, past));
        FloorRun run = new FloorRun(line, of, press, at.staffed, past, next, now);
        at.toldRuns.add(run);
        stand(line, run, press);
      }
    }
  }

  private void untold(RunLine line, OnPress at) {
    int next = after(at.toldStarts, past.seconds(line.setUpStart()));
    if (next >= past.seconds(line.printEnd())
        && !isCalendarChanged(at.press, line.setUpStart(), line.printEnd())) {
      standing.put(line.id(), line);
      at.busyUntil = past.seconds(line.printEnd());
      return;
    }
    FloorRun run = new FloorRun(line, null, at.press, at.staffed, past, next, now);
    stand(line, run, at.press);
    at.busyUntil = run.end();
  }

  private static int after(List<Integer> starts, int start) {
    return starts.stream()
        .filter(other -> other > start)
        .min(Integer::compare)
        .orElse(StaffedTime.NEVER);
  }

  private void stand(RunLine line, FloorRun run, Press press) {
    if (run.isAsPublished()) {
      standing.put(line.id(), line);
      return;
    }
    Dryer dryer = shop.findDryer(press.dryer()).orElseThrow();
    standing.put(line.id(), run.standing(transitS(dryer), dryer.coolMinutes() * 60));
    changed.add(line.id());
  }

  /** The way over the belt at the slowest speed that any print of the open orders may ask for. */
  private int transitS(Dryer dryer) {
    int slowest = (int) Math.floor(dryer.maxSpeedMPerMin() * 1e6);
    for (Order order : request.orders()) {
      for (Print print : order.prints()) {
        boolean known =
            print.colours().stream().allMatch(colour -> shop.findInk(colour.ink()).isPresent());
        if (known) {
          slowest = Math.min(slowest, load.speedLimit(print, dryer));
        }
      }
    }
    return (int) Math.ceil(dryer.beltLengthMm() * 1000.0 * 60 / slowest);
  }

  /** Without a word a run has begun as published, unless the floor says otherwise. */
  private boolean hasBegunUntold(RunLine line, OnPress at) {
    int start = past.seconds(line.setUpStart());
    int end = past.seconds(line.printEnd());
    int next = after(at.toldStarts, start);
    boolean another =
        at.toldRuns.stream().anyMatch(run -> run.start() <= start && start < run.end());
    boolean crowdedOut = next < end && (next - start) * 2L < end - start;
    return !another
        && !crowdedOut
        && !isCrewTelling(line, at.lines)
        && !isDownAt(line)
        && standing.values().stream()
            .noneMatch(
                begun ->
                    holdsGarments(begun, line)
                        || changed.contains(begun.id()) && holdsScreens(begun, line));
  }

  /** Whether the crew of the press had told something that day before the run was to begin. */
  private boolean isCrewTelling(RunLine line, List<RunLine> lines) {
    LocalDate day = day(line.setUpStart());
    return lines.stream()
        .map(other -> told.get(other.id()))
        .anyMatch(
            run ->
                run != null
                    && run.firstToldAt().isBefore(line.setUpStart())
                    && day(run.firstToldAt()).equals(day));
  }

  private LocalDate day(OffsetDateTime time) {
    return time.atZoneSameInstant(shop.timeZone()).toLocalDate();
  }

  private boolean isDownAt(RunLine line) {
    return report.down().stream()
        .filter(down -> down.stops(line.press(), line.dryer()))
        .anyMatch(
            down ->
                !down.from().isAfter(line.setUpStart()) && down.to().isAfter(line.setUpStart()));
  }

  private boolean isCalendarChanged(Press press, OffsetDateTime from, OffsetDateTime to) {
    for (Downtime down : report.down()) {
      if (down.stops(press.id(), press.dryer())
          && down.from().isBefore(to)
          && down.to().isAfter(from)) {
        return true;
      }
    }
    for (Staffing staffing : report.staffing()) {
      if (press.id().equals(staffing.press())
          && staffing.from().isBefore(to)
          && staffing.to().isAfter(from)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a run that has not begun can stay as published; those before it are judged already. */
  private boolean stays(RunLine line, List<RunLine> lines) {
    Press press = shop.findPress(line.press()).orElseThrow();
    Order order = orders.get(line.order());
    return past.seconds(line.setUpStart()) >= now
        && isReleased(line, order)
        && isOfTheSameSize(line, order)
        && !isCalendarChanged(press, line.setUpStart(), line.offBelt())
        && !isFreeEarly(press)
        && standing.values().stream().noneMatch(begun -> isInTheWay(begun, line))
        && lines.stream()
            .filter(other -> replanned.contains(other.id()))
            .noneMatch(
                other ->
                    other.press().equals(line.press())
                        || other.order().equals(line.order()) && other.lot() == line.lot());
  }

  /** Whether the last run that has begun on a press ends earlier than published. */
  private boolean isFreeEarly(Press press) {
    return standing.values().stream()
        .filter(begun -> begun.press().equals(press.id()))
        .max(
            Comparator.comparing((RunLine begun) -> begun.printEnd().toInstant())
                .thenComparing(RunLine::id))
        .filter(
            last -> last.printEnd().plusSeconds(FREE_EARLY_S).isBefore(publishedEnd.get(last.id())))
        .isPresent();
  }

  private static boolean isReleased(RunLine line, Order order) {
    return !order.garments().availableFrom().isAfter(line.firstPieceAt())
        && order.prints().stream().filter(print -> isOf(print, line)).allMatch(Fit::isReleased);
  }

  private static boolean isOf(Print print, RunLine line) {
    return print.design().equals(line.design()) && print.position().equals(line.position());
  }

  private boolean isOfTheSameSize(RunLine line, Order order) {
    OrderProgress progress = OrderProgress.of(order, report.runs(), shop.cloth().spoilagePercent());
    return progress.lots().stream()
        .filter(lot -> lot.number() == line.lot())
        .allMatch(lot -> progress.piecesToCome(lot) == line.quantity());
  }

  private boolean isInTheWay(RunLine begun, RunLine line) {
    boolean samePress = begun.press().equals(line.press());
    boolean passed = publishedStart.get(begun.id()).isAfter(line.setUpStart());
    if (samePress && (passed || begun.printEnd().isAfter(line.setUpStart()))
        || holdsGarments(begun, line)) {
      return true;
    }
    if (!changed.contains(begun.id())) {
      return false;
    }
    boolean inTheTunnel =
        begun.dryer().equals(line.dryer())
            && begun.firstPieceAt().isBefore(line.offBelt())
            && begun.offBelt().isAfter(line.firstPieceAt());
    return inTheTunnel || holdsScreens(begun, line);
  }

  private static boolean holdsGarments(RunLine begun, RunLine line) {
    return begun.order().equals(line.order())
        && begun.lot() == line.lot()
        && begun.coolAt().isAfter(line.firstPieceAt());
  }

  private boolean holdsScreens(RunLine begun, RunLine line) {
    Press press = shop.findPress(begun.press()).orElseThrow();
    return begun.screens().stream().anyMatch(line.screens()::contains)
        && begun
            .printEnd()
            .plusSeconds(press.tearDownS(begun.screens().size()))
            .isAfter(line.setUpStart());
  }
}
