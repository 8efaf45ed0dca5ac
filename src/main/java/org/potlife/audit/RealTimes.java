package org.potlife.audit;

import java.util.Map;
import java.util.Optional;
import org.potlife.floor.RunReport;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * The times that a run which has begun really has, reckoned anew from docs/model.md, "Times of a
 * run begun".
 */
final class RealTimes {

  static final long A_DAY = 86_400;

  /** What began so long ago is reckoned by the clock, s. */
  static final long LONG_AGO_S = 5 * A_DAY;

  /** A count sooner than this after the end of the set-up tells nothing of the rate, s. */
  private static final long LEAST_COUNTED_S = 600;

  private final Shop shop;
  private final Map<String, Order> orders;
  private final Map<String, RunReport> told;
  private final Stretch window;
  private final long now;

  /**
   * @param told what the crew told, by run
   * @param window the time in which shifts are known
   * @param now epoch seconds
   */
  RealTimes(
      Shop shop, Map<String, Order> orders, Map<String, RunReport> told, Stretch window, long now) {
    this.shop = shop;
    this.orders = orders;
    this.told = told;
    this.window = window;
    this.now = now;
  }

  /** When a run really begins, prints its first piece, prints, and ends; epoch seconds. */
  record Times(long start, long firstPiece, long print, long end) {

    boolean areOf(RunLine line) {
      return start == line.setUpStart().toEpochSecond()
          && firstPiece == line.firstPieceAt().toEpochSecond()
          && print == line.printStart().toEpochSecond()
          && end == line.printEnd().toEpochSecond();
    }
  }

  /** When a run of which something was told began, epoch seconds. */
  long beginning(RunLine run) {
    RunReport of = told.get(run.id());
    if (of.startedAt() != null) {
      return of.startedAt().toEpochSecond();
    }
    return Math.min(run.setUpStart().toEpochSecond(), of.firstToldAt().toEpochSecond());
  }

  /**
   * How a run that has begun goes on.
   *
   * @param next when the next run began on its press; null if none has
   */
  Times reckon(RunLine run, Press press, Staffed shifts, Long next) {
    boolean longAgo = begins(run) < now - LONG_AGO_S;
    Staffed staffed = longAgo ? Staffed.always() : shifts;
    RunReport of = told.get(run.id());
    boolean ended = of != null && of.endedAt() != null;
    long start = begins(run);
    if (ended) {
      start = Math.min(start, of.endedAt().toEpochSecond());
    }
    boolean setUp = run.setUpMinutes() > 0;
    long print = setUp ? after(staffed, start, run.setUpMinutes() * 60L) : start;
    if (of != null && of.approvedAt() != null) {
      print = Math.max(start, of.approvedAt().toEpochSecond());
    }
    long end;
    if (ended) {
      end = of.endedAt().toEpochSecond();
    } else {
      Long counted = of == null || of.countedAt() == null ? null : of.countedAt().toEpochSecond();
      long made = counted == null ? 0 : (long) of.good() + of.spoiled() - run.trialPieces();
      long wanted = run.quantity() - run.trialPieces();
      long rate = Math.max(1, run.ratePerHour());
      if (made > 0 && counted <= print) {
        print = Math.max(start, counted - seconds(made, rate));
      } else if (made > 0 && staffed.seconds(print, counted) >= LEAST_COUNTED_S) {
        long real = made * 3600 / staffed.seconds(print, counted);
        rate = Math.max(press.minRatePerHour(), Math.min(press.ratePerHour(), real));
      }
      long from = made > 0 ? Math.max(counted, print) : print;
      long left = Math.max(0, wanted - Math.max(0, made));
      end = left == 0 ? from : after(staffed, from, seconds(left, rate));
      if (next != null) {
        end = Math.min(end, next);
      } else if (of != null && end < now && now - end < A_DAY) {
        end = now;
      }
    }
    long firstPiece = setUp ? Math.max(start, print - press.firstPieceMinutes() * 60L) : print;
    print = Math.min(print, end);
    return new Times(start, Math.min(firstPiece, print), print, end);
  }

  /** By the clock where the plan's horizon ends. */
  private long after(Staffed staffed, long from, long seconds) {
    long to = staffed.after(from, seconds);
    return to > window.to() ? from + seconds : to;
  }

  private long begins(RunLine run) {
    return told.containsKey(run.id()) ? beginning(run) : run.setUpStart().toEpochSecond();
  }

  private static long seconds(long pieces, long perHour) {
    return (pieces * 3600 + perHour - 1) / perHour;
  }

  /**
   * When the goods of a run that has begun are off the belt at the latest.
   *
   * @param end its real end, epoch seconds; so is the answer
   */
  long offBelt(RunLine run, long end) {
    if (end == run.printEnd().toEpochSecond()) {
      return run.offBelt().toEpochSecond();
    }
    var dryer = shop.findDryer(shop.findPress(run.press()).orElseThrow().dryer()).orElseThrow();
    double slowestUm = Math.floor(dryer.maxSpeedMPerMin() * 1e6);
    for (Order order : orders.values()) {
      for (Print print : order.prints()) {
        var systems =
            print.colours().stream()
                .map(
                    colour ->
                        shop.findInk(colour.ink()).flatMap(i -> shop.findInkSystem(i.system())))
                .toList();
        if (systems.stream().allMatch(Optional::isPresent)) {
          int dwellS = systems.stream().mapToInt(system -> system.get().dwellS()).max().orElse(1);
          double byDwell = dryer.heatedLengthMm() * 60_000.0 / Math.max(1, dwellS);
          slowestUm = Math.min(slowestUm, Math.floor(byDwell + 1e-6));
        }
      }
    }
    return end + (long) Math.ceil(dryer.beltLengthMm() * 60_000.0 / slowestUm);
  }
}
