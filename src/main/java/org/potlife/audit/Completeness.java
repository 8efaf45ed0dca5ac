package org.potlife.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * Part of R21: every lot of every print of every open order stands either on the sheet or among the
 * unplaced, with its cause. All prints of an order have the same lots; where none has a place, the
 * lots are those listed.
 */
final class Completeness {

  /** The lot of an unplaced line that speaks for all lots of its print. */
  private static final int WHOLE_PRINT = 0;

  private final Evidence evidence;
  private final Notes notes;
  private final List<RunLine> placed;
  private final List<UnplacedLine> unplaced;

  Completeness(Evidence evidence, Notes notes) {
    this.evidence = evidence;
    this.notes = notes;
    this.placed = there(evidence.sheet().runs());
    this.unplaced = there(evidence.sheet().unplaced());
  }

  static <T> List<T> there(List<T> lines) {
    return lines == null ? List.of() : lines.stream().filter(Objects::nonNull).toList();
  }

  void check() {
    for (UnplacedLine line : unplaced) {
      Order order = evidence.orders().get(line.order());
      notes.check(
          order != null
              && order.prints().stream()
                  .anyMatch(print -> isOf(print, line.design(), line.position())),
          line.order(),
          "is listed as unplaced with %s on the %s, which no open order asks for",
          line.design(),
          line.position());
      notes.check(
          line.cause() != null
              && !line.cause().isBlank()
              && line.rule() != null
              && line.rule().matches("R\\d+a?"),
          line.order(),
          "has no place for %s, and no rule or cause is given (%s, %s)",
          line.design(),
          line.rule(),
          line.cause());
    }
    Map<String, List<RunLine>> placedOf = byOrder(placed, RunLine::order);
    Map<String, List<UnplacedLine>> unplacedOf = byOrder(unplaced, UnplacedLine::order);
    for (Order order : evidence.orders().values()) {
      check(
          order,
          placedOf.getOrDefault(order.reference(), List.of()),
          unplacedOf.getOrDefault(order.reference(), List.of()));
    }
    if (evidence.sheet().score() != null) {
      notes.check(
          evidence.sheet().score().unplaced() == unplaced.size(),
          "score",
          "counts %d unplaced runs, %d are listed",
          evidence.sheet().score().unplaced(),
          unplaced.size());
    }
  }

  /** A frozen lot keeps the number of lots that it was published with, the others tell. */
  private int lots(List<RunLine> runs, List<UnplacedLine> missing, Set<Integer> frozen) {
    Optional<RunLine> movable = runs.stream().filter(run -> !isFrozen(run)).findFirst();
    if (movable.isPresent()) {
      return movable.get().lots();
    }
    if (frozen.isEmpty()) {
      return missing.stream().mapToInt(UnplacedLine::lot).max().orElse(1);
    }
    Set<Integer> all = new HashSet<>(frozen);
    missing.stream().filter(line -> line.lot() != WHOLE_PRINT).forEach(l -> all.add(l.lot()));
    return all.size();
  }

  private boolean isFrozen(RunLine run) {
    return run.id() != null && evidence.isFrozen(run.id());
  }

  /** Whether an unplaced line is about this print of the order. */
  static boolean isOf(Order order, Print print, UnplacedLine line) {
    return order.reference().equals(line.order()) && isOf(print, line.design(), line.position());
  }

  private static boolean isOf(Print print, String design, String position) {
    return print.design().equals(design) && print.position().equals(position);
  }

  private static <T> Map<String, List<T>> byOrder(List<T> lines, Function<T, String> order) {
    return lines.stream()
        .filter(line -> order.apply(line) != null)
        .collect(Collectors.groupingBy(order));
  }

  private void check(Order order, List<RunLine> runs, List<UnplacedLine> without) {
    CountedLots counted = evidence.countedLots(order);
    List<UnplacedLine> missing =
        without.stream()
            // pieces without blanks are no lot: R20 looks at them
            .filter(line -> !R20Quantity.NUMBER.equals(line.rule()))
            .toList();
    Set<Integer> frozen = new HashSet<>(counted.lots());
    runs.stream().filter(this::isFrozen).forEach(run -> frozen.add(run.lot()));
    int lots = lots(runs, missing, frozen);
    for (Print print : order.prints()) {
      List<Integer> on =
          runs.stream()
              .filter(run -> isOf(print, run.design(), run.position()))
              .map(RunLine::lot)
              .toList();
      List<Integer> off =
          missing.stream()
              .filter(line -> isOf(print, line.design(), line.position()))
              .map(UnplacedLine::lot)
              .toList();
      if (off.equals(List.of(WHOLE_PRINT)) && frozen.containsAll(on)) {
        continue;
      }
      Set<Integer> all = new HashSet<>(on);
      all.addAll(off);
      int listed = all.size();
      all.addAll(counted.closedFor(print));
      notes.check(
          listed == on.size() + off.size(),
          order.reference(),
          "%s on the %s: lots %s are on the sheet and lots %s unplaced, some lot stands twice",
          print.design(),
          print.position(),
          on,
          off);
      notes.check(
          all.size() == lots
              && all.stream().allMatch(lot -> lot >= 1 && (lot <= lots || !frozen.isEmpty())),
          order.reference(),
          "%s on the %s: lots %s are on the sheet and lots %s unplaced, it has lots 1 to %d",
          print.design(),
          print.position(),
          on,
          off,
          lots);
    }
  }
}
