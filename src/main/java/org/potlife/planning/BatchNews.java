package org.potlife.planning;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.potlife.ink.Ink;
import org.potlife.ink.InkReport;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Shop;

/**
 * What the ink room has told of the published batches, and what stands on its shelf. The clock of a
 * batch counts from when it was really activated; a batch that is gone serves nobody.
 */
final class BatchNews {

  /**
   * Containers of one ink that a plan draws from: the oldest. More are not opened side by side;
   * each batch of the ink that is under way stands for one. The engine looks at four of an ink at
   * once, and one of these must be left for a batch that is made.
   */
  static final int OPEN_CONTAINERS = 3;

  private final Shop shop;
  private final OffsetDateTime plannedAt;
  private final Map<String, MarkedBatch> marked = new HashMap<>();
  private final Map<String, BatchLine> published = new LinkedHashMap<>();
  private final List<StockInk> stock;
  private final Set<String> onDarkCloth;

  BatchNews(PlanRequest request) {
    shop = request.shop();
    plannedAt = request.plannedAt().atZone(shop.timeZone()).toOffsetDateTime();
    InkReport report = request.ink();
    report.marked().forEach(mark -> marked.put(mark.batch(), mark));
    request
        .published()
        .map(PlanSheet::batches)
        .ifPresent(lines -> lines.forEach(line -> published.put(line.id(), line)));
    stock = report.stock();
    onDarkCloth =
        request.orders().stream()
            .filter(order -> order.garments().lightness() < shop.inkRoom().lightFrom())
            .flatMap(BatchNews::inks)
            .collect(Collectors.toSet());
  }

  private static Stream<String> inks(Order order) {
    return order.prints().stream()
        .flatMap(print -> print.colours().stream())
        .map(colour -> colour.ink());
  }

  boolean isMarked(String batch) {
    return marked.containsKey(batch);
  }

  boolean isGone(String batch) {
    return marked.containsKey(batch) && marked.get(batch).gone();
  }

  /** What the books say is in a batch, g; empty when nothing of it was told. */
  Optional<Integer> leftG(String batch) {
    return Optional.ofNullable(marked.get(batch)).map(MarkedBatch::leftG);
  }

  /** What is in a container on the shelf, g; 0 when it is not there any more. */
  int inStockG(String container) {
    return stock.stream()
        .filter(ink -> ink.container().equals(container))
        .mapToInt(StockInk::massG)
        .sum();
  }

  /** The batch with the clock that it really has. */
  BatchLine standing(BatchLine line) {
    MarkedBatch mark = marked.get(line.id());
    if (mark == null || mark.activatedAt() == null || line.useBy() == null) {
      return line;
    }
    Duration later = Duration.between(line.activatedAt(), mark.activatedAt());
    OffsetDateTime from = line.activateFrom().plus(later);
    OffsetDateTime latestMixing = from.minusMinutes(shop.inkRoom().mixMinutes());
    return line.activated(
        line.mixFrom().isAfter(latestMixing) ? latestMixing : line.mixFrom(),
        from,
        line.activatedAt().plus(later),
        line.readyAt().plus(later),
        line.useBy().plus(later));
  }

  /** Whether a run that is not begun has lost the ink that it was to draw. */
  boolean lacksInk(RunLine run) {
    return !run.setUpStart().isBefore(plannedAt)
        && run.batches().stream()
            .map(published::get)
            .filter(Objects::nonNull)
            .anyMatch(line -> isGone(line.id()) || !serves(standing(line), run.id()));
  }

  private static boolean serves(BatchLine line, String run) {
    return line.uses().stream()
        .filter(use -> use.run().equals(run))
        .allMatch(use -> isWithinClock(line, use));
  }

  private static boolean isWithinClock(BatchLine line, UseLine use) {
    return line.useBy() == null
        || !use.from().isBefore(line.readyAt()) && !use.to().isAfter(line.useBy());
  }

  /**
   * Containers on the shelf that the plan draws from before anything is mixed: of every ink without
   * agent the oldest ones, none that a frozen batch stands for, and what is for light garments
   * alone only where all cloth of the open orders with this ink is light (R13).
   */
  List<StockInk> offered(List<BatchLine> takenOver) {
    Set<String> taken = takenOver.stream().map(BatchLine::id).collect(Collectors.toSet());
    Map<String, Integer> open = new HashMap<>();
    takenOver.stream()
        .filter(line -> line.useBy() == null)
        .forEach(line -> open.merge(line.ink(), 1, Integer::sum));
    List<StockInk> offered = new ArrayList<>();
    for (StockInk ink : stock) {
      boolean fits =
          isPlain(ink.ink())
              && ink.massG() > 0
              && !taken.contains(ink.container())
              && !(ink.lightOnly() && onDarkCloth.contains(ink.ink()));
      if (fits && open.merge(ink.ink(), 1, Integer::sum) <= OPEN_CONTAINERS) {
        offered.add(ink);
      }
    }
    return offered;
  }

  private boolean isPlain(String ink) {
    return shop.findInk(ink)
        .map(Ink::system)
        .flatMap(shop::findInkSystem)
        .filter(system -> !system.activated())
        .isPresent();
  }
}
