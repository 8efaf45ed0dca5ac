package org.potlife.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.audit.RealTimes.Times;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.ink.Process;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.order.TrialPrint;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * What the floor's report makes of the published runs, stated anew from docs/model.md: which have
 * begun and when, which are facts, and which of the freeze window cannot stay.
 */
final class FloorRuns {

  private static final long FREE_EARLY_S = 300;

  /** Longer than any plan: a sheet may name any time as its end. */
  private static final long LONGEST_PLAN_S = 400 * RealTimes.A_DAY;

  private final Shop shop;
  private final Map<String, Order> orders;
  private final FloorReport report;
  private final long now;
  private final Stretch window;
  private final long publishedPlannedAt;
  private final Map<String, RunReport> told = new HashMap<>();
  private final RealTimes real;
  private final Map<String, RunLine> published = new HashMap<>();
  private final Map<String, Staffed> hours = new HashMap<>();
  private final Map<String, TreeMap<Long, String>> starts = new HashMap<>();
  private final Map<String, List<Stretch>> occupied = new HashMap<>();
  private final Map<String, Long> free = new HashMap<>();
  private final Map<String, Times> begun = new TreeMap<>();
  private final Set<String> cannotStay = new HashSet<>();

  FloorRuns(
      Shop shop,
      Map<String, Order> orders,
      Optional<Published> plan,
      FloorReport report,
      long now,
      long horizonEnd) {
    this.shop = shop;
    this.orders = orders;
    this.report = report;
    this.now = now;
    window =
        new Stretch(
            now - RealTimes.LONG_AGO_S, Math.max(now, Math.min(horizonEnd, now + LONGEST_PLAN_S)));
    report.runs().forEach(run -> told.put(run.run(), run));
    real = new RealTimes(shop, orders, told, window, now);
    publishedPlannedAt = plan.map(Published::plannedAt).orElse(Long.MIN_VALUE);
    List<RunLine> legible =
        plan.map(Published::runs).orElse(List.of()).stream()
            .filter(this::isLegible)
            .sorted(
                Comparator.comparing((RunLine run) -> run.setUpStart().toInstant())
                    .thenComparing(RunLine::id))
            .toList();
    legible.forEach(run -> published.put(run.id(), run));
    for (Press press : shop.presses()) {
      told(press, legible.stream().filter(run -> run.press().equals(press.id())).toList());
    }
    legible.stream()
        .filter(run -> !told.containsKey(run.id()))
        .forEach(run -> untold(run, legible));
    long freezeEnd = now + 60L * shop.settings().freezeMinutes();
    for (RunLine run : legible) {
      boolean inWindow = run.setUpStart().toEpochSecond() < freezeEnd;
      if (!begun.containsKey(run.id()) && inWindow && !canStay(run, legible)) {
        cannotStay.add(run.id());
      }
    }
  }

  private boolean isLegible(RunLine run) {
    return orders.containsKey(run.order())
        && shop.findPress(run.press()).isPresent()
        && run.design() != null
        && run.position() != null
        && run.screens() != null
        && times(run).stream()
            .allMatch(at -> at != null && at.getYear() > 1970 && at.getYear() < 9000);
  }

  private static List<OffsetDateTime> times(RunLine run) {
    List<OffsetDateTime> times = new ArrayList<>();
    times.add(run.setUpStart());
    times.add(run.firstPieceAt());
    times.add(run.printStart());
    times.add(run.printEnd());
    times.add(run.offBelt());
    times.add(run.coolAt());
    return times;
  }

  /** Whether the run has begun, as told or without a word. */
  boolean hasBegun(String run) {
    return begun.containsKey(run);
  }

  /** Runs that have begun. */
  Set<String> begun() {
    return begun.keySet();
  }

  /** Runs that have begun, those of orders that are no longer open as published. */
  Set<String> begunAmong(List<RunLine> runs) {
    Set<String> ids = new HashSet<>(begun.keySet());
    for (RunLine run : runs) {
      if (!published.containsKey(run.id()) && run.setUpStart().toEpochSecond() < now) {
        ids.add(run.id());
      }
    }
    return ids;
  }

  /** Whether it has begun and was told of, goes otherwise than published, or had begun before. */
  boolean isFact(String run) {
    return isNews(run)
        || hasReport()
            && begun.containsKey(run)
            && published.get(run).setUpStart().toEpochSecond() < publishedPlannedAt;
  }

  /** Whether it has begun and was told of, or goes otherwise than published. */
  boolean isNews(String run) {
    return begun.containsKey(run) && (told.containsKey(run) || isMoved(run));
  }

  /** Whether the floor has reported anything. */
  boolean hasReport() {
    return !report.isEmpty();
  }

  private boolean isMoved(String run) {
    return !begun.get(run).areOf(published.get(run));
  }

  /** The real times of a run that has begun. */
  Optional<Times> times(String run) {
    return Optional.ofNullable(begun.get(run));
  }

  /** Whether a run inside the freeze window cannot stay as published. */
  boolean cannotStay(String run) {
    return cannotStay.contains(run);
  }

  private void told(Press press, List<RunLine> runs) {
    Staffed staffed = Staffed.of(press, shop.timeZone(), window);
    TreeMap<Long, String> from = new TreeMap<>();
    for (RunLine run : runs) {
      if (told.containsKey(run.id())) {
        from.put(real.beginning(run), run.id());
      }
    }
    List<Stretch> busy = new ArrayList<>();
    for (RunLine run : runs) {
      if (told.containsKey(run.id())) {
        Times times = real.reckon(run, press, staffed, from.higherKey(real.beginning(run)));
        begun.put(run.id(), times);
        busy.add(new Stretch(times.start(), times.end()));
      }
    }
    hours.put(press.id(), staffed);
    starts.put(press.id(), from);
    occupied.put(press.id(), busy);
  }

  /** A run of which nothing is told; those before it in time are judged already. */
  private void untold(RunLine run, List<RunLine> runs) {
    long start = run.setUpStart().toEpochSecond();
    Long next = starts.get(run.press()).higherKey(start);
    if (start >= now
        || start < free.getOrDefault(run.press(), Long.MIN_VALUE)
        || !beganWithoutAWord(run, runs, next)) {
      return;
    }
    Press press = shop.findPress(run.press()).orElseThrow();
    long end = run.printEnd().toEpochSecond();
    boolean cut = next != null && next < end;
    Times times =
        cut || hoursReported(press, run.setUpStart(), run.printEnd())
            ? real.reckon(run, press, hours.get(press.id()), next)
            : new Times(
                start, run.firstPieceAt().toEpochSecond(), run.printStart().toEpochSecond(), end);
    begun.put(run.id(), times);
    free.put(press.id(), times.end());
  }

  private boolean beganWithoutAWord(RunLine run, List<RunLine> runs, Long next) {
    OffsetDateTime at = run.setUpStart();
    long start = at.toEpochSecond();
    long length = run.printEnd().toEpochSecond() - start;
    if (next != null && next < start + length && (next - start) * 2 < length) {
      return false;
    }
    boolean another =
        occupied.get(run.press()).stream().anyMatch(o -> o.from() <= start && start < o.to());
    boolean crewTells =
        runs.stream()
            .filter(other -> other.press().equals(run.press()) && told.containsKey(other.id()))
            .map(other -> told.get(other.id()).firstToldAt())
            .anyMatch(first -> first.isBefore(at) && day(first).equals(day(at)));
    boolean down =
        report.down().stream()
            .filter(d -> run.press().equals(d.press()) || dryerOf(run).equals(d.dryer()))
            .anyMatch(d -> !at.isBefore(d.from()) && at.isBefore(d.to()));
    boolean withoutMeans =
        runs.stream()
            .filter(other -> begun.containsKey(other.id()))
            .anyMatch(
                other ->
                    cool(other) > run.firstPieceAt().toEpochSecond() && sameGarments(other, run)
                        || isMoved(other.id()) && holdsScreens(other, run));
    return !another && !crewTells && !down && !withoutMeans;
  }

  private static boolean sameGarments(RunLine one, RunLine other) {
    return one.order().equals(other.order()) && one.lot() == other.lot();
  }

  private String dryerOf(RunLine run) {
    return shop.findPress(run.press()).orElseThrow().dryer();
  }

  private LocalDate day(OffsetDateTime at) {
    return Instant.ofEpochSecond(at.toEpochSecond()).atZone(shop.timeZone()).toLocalDate();
  }

  private boolean hoursReported(Press press, OffsetDateTime from, OffsetDateTime to) {
    return report.down().stream()
            .filter(d -> press.id().equals(d.press()) || press.dryer().equals(d.dryer()))
            .anyMatch(d -> d.from().isBefore(to) && from.isBefore(d.to()))
        || report.staffing().stream()
            .filter(s -> press.id().equals(s.press()))
            .anyMatch(s -> s.from().isBefore(to) && from.isBefore(s.to()));
  }

  private boolean canStay(RunLine run, List<RunLine> runs) {
    Press press = shop.findPress(run.press()).orElseThrow();
    Order order = orders.get(run.order());
    if (run.setUpStart().toEpochSecond() < now
        || !isReleased(run, order)
        || hoursReported(press, run.setUpStart(), run.offBelt())
        || isFreeEarly(press)) {
      return false;
    }
    Integer counted = new CountedLots(order, report, shop.cloth()).piecesOf(run.lot());
    if (counted != null && counted != run.quantity()) {
      return false;
    }
    for (RunLine other : runs) {
      boolean before = other.press().equals(run.press()) || sameGarments(other, run);
      if (cannotStay.contains(other.id()) && before) {
        return false;
      }
      if (begun.containsKey(other.id()) && isInTheWay(other, run)) {
        return false;
      }
    }
    return true;
  }

  private boolean isFreeEarly(Press press) {
    String last = null;
    for (String run : begun.keySet()) {
      boolean later = last == null || begun.get(run).end() >= begun.get(last).end();
      if (published.get(run).press().equals(press.id()) && later) {
        last = run;
      }
    }
    return last != null
        && begun.get(last).end() + FREE_EARLY_S < published.get(last).printEnd().toEpochSecond();
  }

  private static boolean isReleased(RunLine run, Order order) {
    boolean inHouse = !run.firstPieceAt().isBefore(order.garments().availableFrom());
    for (Print print : order.prints()) {
      if (print.design().equals(run.design()) && print.position().equals(run.position())) {
        boolean proved =
            print.process() != Process.DISCHARGE || print.trialPrint() == TrialPrint.PASSED;
        inHouse &= print.artworkApproved() && proved;
      }
    }
    return inHouse;
  }

  private boolean isInTheWay(RunLine other, RunLine run) {
    Times times = begun.get(other.id());
    boolean samePress = other.press().equals(run.press());
    boolean passed = samePress && other.setUpStart().isAfter(run.setUpStart());
    if (passed
        || samePress && times.end() > run.setUpStart().toEpochSecond()
        || sameGarments(other, run) && cool(other) > run.firstPieceAt().toEpochSecond()) {
      return true;
    }
    if (!isMoved(other.id())) {
      return false;
    }
    boolean inTheTunnel =
        dryerOf(other).equals(dryerOf(run))
            && new Stretch(times.firstPiece(), offBelt(other))
                .overlaps(
                    new Stretch(run.firstPieceAt().toEpochSecond(), run.offBelt().toEpochSecond()));
    return inTheTunnel || holdsScreens(other, run);
  }

  private boolean holdsScreens(RunLine other, RunLine run) {
    int minutes = shop.findPress(other.press()).orElseThrow().tearDownMinutesPerScreen();
    long down = begun.get(other.id()).end() + 60L * minutes * other.screens().size();
    return down > run.setUpStart().toEpochSecond()
        && other.screens().stream().anyMatch(run.screens()::contains);
  }

  private long cool(RunLine run) {
    return isMoved(run.id())
        ? offBelt(run) + 60L * shop.findDryer(dryerOf(run)).orElseThrow().coolMinutes()
        : run.coolAt().toEpochSecond();
  }

  private long offBelt(RunLine run) {
    return real.offBelt(run, begun.get(run.id()).end());
  }
}
