package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.floor.RunReport;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.simulation.StaffedTime;

/**
 * How a run that has begun goes on (R22): from its real start, at the rate that its counts show, in
 * the staffed time of its press. All times are seconds of one horizon that begins in the past.
 */
final class FloorRun {

  /** A count sooner than this after the end of the set-up tells nothing of the rate, s. */
  static final int LEAST_COUNTED_S = 600;

  /** So long after its reckoned end a run that nobody tells of any more counts as over, s. */
  static final int FORGOTTEN_S = 24 * 3600;

  /** What began so long ago is reckoned by the clock, s. */
  static final int LONG_AGO_S = 5 * 24 * 3600;

  private final RunLine line;
  private final RunReport told;
  private final Press press;
  private final StaffedTime staffed;
  private final Horizon past;
  private final boolean longAgo;
  private final int start;
  private int firstPiece;
  private int print;
  private int end;
  private int rate;

  /**
   * @param told what the crew told of it; null when nothing
   * @param past a horizon that begins before the run
   * @param next when the next run began on its press; {@link StaffedTime#NEVER} if none has
   */
  FloorRun(
      RunLine line,
      RunReport told,
      Press press,
      StaffedTime staffed,
      Horizon past,
      int next,
      int now) {
    this.line = line;
    this.told = told;
    this.press = press;
    this.staffed = staffed;
    this.past = past;
    int begun = begunAt(line, told, past);
    longAgo = begun < now - LONG_AGO_S;
    boolean ended = told != null && told.ended();
    start = ended ? Math.min(begun, past.seconds(told.endedAt())) : begun;
    setUp();
    if (ended) {
      end = past.seconds(told.endedAt());
      rate = -1;
    } else {
      goOn(next, now);
    }
    print = Math.min(print, end);
    firstPiece = Math.min(firstPiece, print);
  }

  /** When a run began, s. */
  static int begunAt(RunLine line, RunReport told, Horizon past) {
    return past.seconds(told == null ? line.setUpStart() : told.begunAt(line.setUpStart()));
  }

  int start() {
    return start;
  }

  int end() {
    return end;
  }

  private void setUp() {
    boolean hasSetUp = line.setUpMinutes() > 0;
    print = hasSetUp ? add(start, line.setUpMinutes() * 60) : start;
    if (told != null && told.approvedAt() != null) {
      print = Math.max(start, past.seconds(told.approvedAt()));
    }
    firstPiece = hasSetUp ? beforePrint() : print;
  }

  private int beforePrint() {
    return Math.max(start, print - press.firstPieceMinutes() * 60);
  }

  private void goOn(int next, int now) {
    rate = Math.max(1, line.ratePerHour());
    int toPrint = line.quantity() - line.trialPieces();
    int from = print;
    int left = toPrint;
    int made = told == null || told.countedAt() == null ? 0 : told.printed() - line.trialPieces();
    if (made > 0) {
      int counted = past.seconds(told.countedAt());
      if (counted <= print) {
        print = Math.max(start, counted - secondsFor(made));
        firstPiece = line.setUpMinutes() > 0 ? beforePrint() : print;
      } else {
        rate = rateByCount(made, counted);
      }
      from = Math.max(counted, print);
      left = Math.max(0, toPrint - made);
    }
    end = left == 0 ? from : add(from, secondsFor(left));
    if (next < StaffedTime.NEVER) {
      end = Math.min(end, next);
    } else if (told != null && end < now && now - end < FORGOTTEN_S) {
      end = now;
    }
  }

  private int rateByCount(int made, int counted) {
    int worked = longAgo ? counted - print : staffed.workAt(counted) - staffed.workAt(print);
    if (worked < LEAST_COUNTED_S) {
      return rate;
    }
    long real = made * 3600L / worked;
    return (int) Math.max(press.minRatePerHour(), Math.min(press.ratePerHour(), real));
  }

  private int secondsFor(int pieces) {
    return (int) Math.min(StaffedTime.NEVER / 4, (pieces * 3600L + rate - 1) / rate);
  }

  /** By the clock where the plan's horizon ends. */
  private int add(int from, int seconds) {
    int to = longAgo ? StaffedTime.NEVER : staffed.add(from, seconds);
    return to > past.end() ? from + seconds : to;
  }

  /** Whether this is just what was published. */
  boolean isAsPublished() {
    return start == past.seconds(line.setUpStart())
        && firstPiece == past.seconds(line.firstPieceAt())
        && print == past.seconds(line.printStart())
        && end == past.seconds(line.printEnd());
  }

  /**
   * The line with the times that the run really has.
   *
   * @param transitS the way over the belt at its slowest, s
   * @param coolS cooling behind the belt, s
   */
  RunLine standing(int transitS, int coolS) {
    boolean endAsPublished = end == past.seconds(line.printEnd());
    OffsetDateTime off = endAsPublished ? line.offBelt() : past.time(end + transitS);
    List<int[]> parts = staffed.within(print, end);
    if (parts.isEmpty() && print < end) {
      parts = List.of(new int[] {print, end});
    }
    int perHour = rate < 0 ? rateOf(parts) : rate;
    List<RateLine> rates = new ArrayList<>();
    for (int[] part : parts) {
      rates.add(new RateLine(past.time(part[0]), past.time(part[1]), perHour));
    }
    return new RunLine(
        line.id(),
        line.order(),
        line.customer(),
        line.design(),
        line.position(),
        line.process(),
        line.lot(),
        line.lots(),
        line.press(),
        line.dryer(),
        line.quantity(),
        line.trialPieces(),
        past.time(start),
        past.time(firstPiece),
        past.time(print),
        past.time(end),
        off,
        off.plusSeconds(coolS),
        line.setUpMinutes(),
        line.screensToChange(),
        rates.isEmpty() ? 0 : perHour,
        line.limitedBy(),
        rates,
        line.screens(),
        line.inks(),
        line.batches(),
        line.waits());
  }

  private int rateOf(List<int[]> parts) {
    long seconds = parts.stream().mapToLong(part -> part[1] - part[0]).sum();
    int made = Math.max(0, told.printed() - line.trialPieces());
    return seconds == 0 ? 0 : (int) Math.max(1, Math.min(100_000, made * 3600L / seconds));
  }
}
