package org.potlife.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;

/**
 * What the published plan has begun or is about to begin (R22): its runs within the freeze window,
 * the batches made for them or begun, and every set of screens that is in process.
 *
 * @param runs frozen runs in order of their set-up
 * @param batches batches of which a frozen run draws, and those begun that may still serve
 * @param screens screens of sets begun, or of frozen runs, as they stand now
 * @param news what the screen room has reported of them
 */
record Frozen(
    List<RunLine> runs, List<BatchLine> batches, List<ScreenLine> screens, ScreenNews news) {

  static Frozen from(PlanRequest request, ScreenNews news, BatchNews ink) {
    Optional<PlanSheet> published = request.published();
    if (published.isEmpty()) {
      return new Frozen(List.of(), List.of(), List.of(), news);
    }
    Set<String> open = request.orders().stream().map(Order::reference).collect(Collectors.toSet());
    var until = request.frozenUntil();
    List<RunLine> runs = new ArrayList<>();
    for (RunLine line : published.get().runs()) {
      if (open.contains(line.order())
          && line.setUpStart().toInstant().isBefore(until)
          && !news.isLate(line.id())
          && !ink.lacksInk(line)
          && request.shop().findPress(line.press()).isPresent()) {
        runs.add(line);
      }
    }
    runs.sort(
        Comparator.comparing((RunLine line) -> line.setUpStart().toInstant())
            .thenComparing(line -> line.printEnd().toInstant())
            .thenComparing(RunLine::id));
    Set<String> ids = runs.stream().map(RunLine::id).collect(Collectors.toSet());
    List<BatchLine> batches =
        published.get().batches().stream()
            .filter(
                batch ->
                    begun(ink.standing(batch), request, ink)
                        || batch.runs().stream().anyMatch(ids::contains))
            .map(ink::standing)
            .toList();
    Set<String> wanted = new HashSet<>(ids);
    // the screens of a set go through the room together
    published.get().screens().stream()
        .filter(screen -> begun(screen, request))
        .forEach(screen -> wanted.addAll(screen.runs()));
    List<ScreenLine> screens =
        published.get().screens().stream()
            .filter(screen -> screen.runs().stream().anyMatch(wanted::contains))
            .filter(screen -> !news.isGone(screen.id()))
            .map(news::standing)
            .toList();
    return new Frozen(runs, batches, screens, news);
  }

  private static boolean begun(ScreenLine screen, PlanRequest request) {
    return !screen.steps().isEmpty()
        && screen.steps().get(0).from().toInstant().isBefore(request.plannedAt());
  }

  private static boolean begun(BatchLine batch, PlanRequest request, BatchNews ink) {
    return !batch.fromStock()
        && !ink.isGone(batch.id())
        && (ink.isMarked(batch.id()) || batch.mixFrom().toInstant().isBefore(request.plannedAt()))
        && (batch.useBy() == null || batch.useBy().toInstant().isAfter(request.plannedAt()));
  }

  Set<String> runIds() {
    return runs.stream().map(RunLine::id).collect(Collectors.toSet());
  }

  /** Pieces of an order's frozen lots, by number of the lot. */
  Map<Integer, Integer> lotPieces(String order) {
    Map<Integer, Integer> pieces = new HashMap<>();
    for (RunLine line : runs) {
      if (line.order().equals(order)) {
        pieces.put(line.lot(), line.quantity());
      }
    }
    return pieces;
  }

  /** The screens that are taken over by set, each by station. */
  List<List<ScreenLine>> screenSets() {
    return bySet(screens.stream().filter(screen -> !news.isSurvivor(screen.id())).toList());
  }

  /** Screens whose set lost another one; they serve in a new set. */
  List<ScreenLine> survivors() {
    return screens.stream().filter(screen -> news.isSurvivor(screen.id())).toList();
  }

  static List<List<ScreenLine>> bySet(List<ScreenLine> screens) {
    Map<List<String>, List<ScreenLine>> byRuns = new LinkedHashMap<>();
    for (ScreenLine line : screens) {
      byRuns.computeIfAbsent(line.runs(), runs -> new ArrayList<>()).add(line);
    }
    byRuns.values().forEach(set -> set.sort(Comparator.comparingInt(ScreenLine::station)));
    return List.copyOf(byRuns.values());
  }
}
