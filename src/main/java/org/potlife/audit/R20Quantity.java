package org.potlife.audit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.order.Garments;
import org.potlife.order.Order;
import org.potlife.order.Print;

/**
 * R20: the lots of a print sum to the ordered pieces and the spoilage allowance, bounded by the
 * blanks; lots differ by at most one piece and are the same garments for every print of the order;
 * the run's rates print what it has to print. Frozen lots keep their size and number of lots; the
 * others share what is left.
 */
final class R20Quantity implements Rule {

  static final String NUMBER = "R20";

  @Override
  public String number() {
    return NUMBER;
  }

  @Override
  public String title() {
    return "Quantities and lots";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    double spoilage = evidence.shop().cloth().spoilagePercent() / 100;
    for (Order order : evidence.orders().values()) {
      Garments garments = order.garments();
      long allowed = Math.round(garments.quantity() * (1 + spoilage));
      long total = Math.min(garments.blanks(), Math.max(garments.quantity(), allowed));
      List<RunFacts> runs = evidence.runs(order);
      CountedLots counted = evidence.countedLots(order);
      if (counted.none()) {
        missing(evidence, order, Math.max(0, garments.quantity() - garments.blanks()), notes);
      } else {
        total =
            counted.further(staying(evidence, runs, counted)) + staying(evidence, runs, counted);
        missing(evidence, order, counted.missing(staying(evidence, runs, counted)), notes);
      }
      lots(evidence, runs, counted, total, notes);
      sums(evidence, order, runs, counted, total, notes);
      runs.stream().filter(run -> !evidence.isFact(run)).forEach(run -> printed(run, notes));
    }
  }

  /** Pieces of frozen lots of which no run has ended. */
  private static long staying(Evidence evidence, List<RunFacts> runs, CountedLots counted) {
    Map<Integer, Integer> pieces = new TreeMap<>();
    runs.stream()
        .filter(run -> evidence.isFrozen(run.id()) && !counted.lots().contains(run.line().lot()))
        .forEach(run -> pieces.putIfAbsent(run.line().lot(), run.line().quantity()));
    return sum(pieces);
  }

  private static void missing(Evidence evidence, Order order, long pieces, Notes notes) {
    List<String> told =
        Completeness.there(evidence.sheet().unplaced()).stream()
            .filter(line -> order.reference().equals(line.order()) && NUMBER.equals(line.rule()))
            .map(line -> String.valueOf(line.cause()))
            .toList();
    notes.check(
        pieces == 0 ? told.isEmpty() : told.size() == 1 && told.get(0).startsWith(pieces + " "),
        order.reference(),
        "misses %d pieces for which there are no blanks, the plan says %s",
        pieces,
        told);
  }

  private static void lots(
      Evidence evidence, List<RunFacts> runs, CountedLots counted, long total, Notes notes) {
    Map<Integer, Integer> pieces = new TreeMap<>();
    runs.stream()
        .filter(run -> evidence.isFrozen(run.id()) && !counted.lots().contains(run.line().lot()))
        .forEach(run -> pieces.putIfAbsent(run.line().lot(), run.line().quantity()));
    long left = total - sum(pieces);
    counted.lots().forEach(lot -> pieces.put(lot, counted.piecesOf(lot)));
    Set<Integer> frozen = Set.copyOf(pieces.keySet());
    List<RunFacts> movable = runs.stream().filter(run -> !evidence.isFrozen(run.id())).toList();
    for (RunFacts run : movable) {
      int lots = run.line().lots();
      int quantity = run.line().quantity();
      notes.check(
          lots == movable.get(0).line().lots(),
          run.id(),
          "is one of %d lots, run %s of %d",
          lots,
          movable.get(0).id(),
          movable.get(0).line().lots());
      int free = lots - frozen.size();
      notes.check(
          frozen.contains(run.line().lot())
              || free >= 1 && quantity >= left / free && quantity <= (left + free - 1) / free,
          run.id(),
          "prints %d pieces, %d pieces in %d lots are at most one apart from %.1f",
          quantity,
          left,
          free,
          free < 1 ? 0.0 : (double) left / free);
      Integer same = pieces.putIfAbsent(run.line().lot(), quantity);
      notes.check(
          same == null || same == quantity,
          run.id(),
          "prints %d pieces of lot %d, another print of the same garments %d",
          quantity,
          run.line().lot(),
          same);
    }
  }

  private static long sum(Map<Integer, Integer> pieces) {
    return pieces.values().stream().mapToLong(Integer::intValue).sum();
  }

  private static void sums(
      Evidence evidence,
      Order order,
      List<RunFacts> all,
      CountedLots counted,
      long total,
      Notes notes) {
    List<RunFacts> runs =
        all.stream().filter(run -> !counted.lots().contains(run.line().lot())).toList();
    Map<Integer, Integer> frozen = new TreeMap<>();
    runs.stream()
        .filter(run -> evidence.isFrozen(run.id()))
        .forEach(run -> frozen.put(run.line().lot(), run.line().quantity()));
    long expected = Math.max(total, sum(frozen));
    for (int index = 0; index < order.prints().size(); index++) {
      int number = index;
      Print print = order.prints().get(index);
      List<RunFacts> lots = runs.stream().filter(run -> run.printIndex() == number).toList();
      // lots without a place have no quantity on the sheet
      boolean allPlaced =
          Completeness.there(evidence.sheet().unplaced()).stream()
              .filter(line -> !NUMBER.equals(line.rule()))
              .noneMatch(line -> Completeness.isOf(order, print, line));
      if (!lots.isEmpty() && allPlaced) {
        long sum = lots.stream().mapToLong(run -> run.line().quantity()).sum();
        notes.check(
            sum == expected,
            order.reference(),
            "prints %d pieces of %s on the %s, it takes %d (%d ordered, %d blanks)",
            sum,
            print.design(),
            print.position(),
            expected,
            order.garments().quantity(),
            order.garments().blanks());
      }
    }
  }

  private static void printed(RunFacts run, Notes notes) {
    int trial = run.line().trialPieces();
    double printed = 0;
    double allowed = Tolerance.PIECES;
    for (RunFacts.Rate rate : run.rates()) {
      double hours = (rate.to() - rate.from()) / 3600.0;
      printed += rate.perHour() * hours;
      allowed += Tolerance.PIECES_PER_HOUR * hours + rate.perHour() * Tolerance.SECONDS / 3600.0;
    }
    notes.check(
        trial >= 0 && trial <= run.line().quantity(),
        run.id(),
        "has %d trial pieces among %d",
        trial,
        run.line().quantity());
    notes.check(
        Math.abs(printed - (run.line().quantity() - trial)) <= allowed,
        run.id(),
        "prints %.1f pieces at its rates, it has %d to print after the set-up",
        printed,
        run.line().quantity() - trial);
  }
}
