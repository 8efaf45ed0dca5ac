package org.potlife.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.potlife.order.Garments;
import org.potlife.order.Order;

/**
 * R20: the lots of a print sum to the ordered pieces and the spoilage allowance, bounded by the
 * blanks; lots differ by at most one piece and are the same garments for every print of the order;
 * the run's rates print what it has to print.
 */
final class R20Quantity implements Rule {

  @Override
  public String number() {
    return "R20";
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
      List<RunFacts> runs =
          evidence.runs().stream()
              .filter(run -> run.order().reference().equals(order.reference()))
              .toList();
      Map<Integer, Integer> pieces = new TreeMap<>();
      for (RunFacts run : runs) {
        int lots = run.line().lots();
        notes.check(
            lots == runs.get(0).line().lots(),
            run.id(),
            "is one of %d lots, run %s of %d",
            lots,
            runs.get(0).id(),
            runs.get(0).line().lots());
        notes.check(
            lots >= 1
                && run.line().quantity() >= total / lots
                && run.line().quantity() <= (total + lots - 1) / lots,
            run.id(),
            "prints %d pieces, %d pieces in %d lots are at most one apart from %.1f",
            run.line().quantity(),
            total,
            lots,
            lots < 1 ? 0.0 : (double) total / lots);
        Integer same = pieces.putIfAbsent(run.line().lot(), run.line().quantity());
        notes.check(
            same == null || same == run.line().quantity(),
            run.id(),
            "prints %d pieces of lot %d, another print of the same garments %d",
            run.line().quantity(),
            run.line().lot(),
            same);
        printed(run, notes);
      }
      sums(order, runs, total, notes);
    }
  }

  private static void sums(Order order, List<RunFacts> runs, long total, Notes notes) {
    for (int print = 0; print < order.prints().size(); print++) {
      int index = print;
      List<RunFacts> lots = new ArrayList<>();
      runs.stream().filter(run -> run.printIndex() == index).forEach(lots::add);
      // lots without a place have no quantity on the sheet
      if (!lots.isEmpty() && lots.size() >= lots.get(0).line().lots()) {
        long sum = lots.stream().mapToLong(run -> run.line().quantity()).sum();
        notes.check(
            sum == total,
            order.reference(),
            "prints %d pieces of %s on the %s, it takes %d (%d ordered, %d blanks)",
            sum,
            order.prints().get(print).design(),
            order.prints().get(print).position(),
            total,
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
