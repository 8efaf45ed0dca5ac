package org.potlife.closeout;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.potlife.closeout.CloseOut.CarriedOver;
import org.potlife.closeout.CloseOut.RunResult;
import org.potlife.floor.DayRun;
import org.potlife.floor.FloorReport;
import org.potlife.floor.RunReport;
import org.potlife.planning.PressHours;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;

/**
 * Runs and presses of a day. A run belongs to the local day of its end, or of the last thing told
 * of it while it runs, wholly.
 */
public final class DayFigures {

  private final Shop shop;
  private final ZoneId zone;
  private final LocalDate day;
  private final FloorReport hours;
  private final List<DayRun> told;
  private final List<RunLine> untold;

  /**
   * @param hours what is told of the hours of presses and dryers
   * @param told runs of which something was told
   * @param planned runs of the plan in force
   */
  public DayFigures(
      Shop shop, LocalDate day, FloorReport hours, List<DayRun> told, List<RunLine> planned) {
    this.shop = shop;
    this.day = day;
    this.hours = hours;
    zone = shop.timeZone();
    this.told = told.stream().filter(run -> day(lastOf(run.told())).equals(day)).toList();
    List<String> known = told.stream().map(run -> run.told().run()).toList();
    untold =
        planned.stream()
            .filter(line -> day(line.setUpStart()).equals(day) && !known.contains(line.id()))
            .toList();
  }

  private LocalDate day(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toLocalDate();
  }

  private static OffsetDateTime lastOf(RunReport run) {
    if (run.ended()) {
      return run.endedAt();
    }
    return run.countedAt() == null ? run.firstToldAt() : run.countedAt();
  }

  /** Plan against actual, by planned start. */
  public List<RunResult> runs() {
    List<RunResult> results = new ArrayList<>();
    told.forEach(run -> results.add(result(run)));
    untold.forEach(line -> results.add(result(line)));
    results.sort(java.util.Comparator.comparing(run -> run.plannedStart().toInstant()));
    return results;
  }

  /** What was planned and is not printed, by run. */
  public List<CarriedOver> carryOver() {
    List<CarriedOver> over = new ArrayList<>();
    for (DayRun run : told) {
      int left = run.planned().quantity() - run.told().printed();
      if (!run.told().ended() && left > 0) {
        over.add(carried(run.planned(), left));
      }
    }
    untold.forEach(line -> over.add(carried(line, line.quantity())));
    return over;
  }

  private static CarriedOver carried(RunLine line, int pieces) {
    return new CarriedOver(line.id(), line.order(), line.design(), line.position(), pieces);
  }

  /** Figures of each press of the set-up. */
  public List<PressFigures> presses() {
    return shop.presses().stream().map(this::figures).toList();
  }

  /** All presses together. */
  public static PressFigures total(List<PressFigures> presses) {
    PressFigures total = PressFigures.nothing("all");
    for (PressFigures press : presses) {
      total = total.plus(press);
    }
    return total;
  }

  private PressFigures figures(Press press) {
    PressHours staffed = hours(press, new FloorReport(null, null, hours.staffing()));
    PressHours up = hours(press, hours);
    Instant from = day.atStartOfDay(zone).toInstant();
    Instant to = day.plusDays(1).atStartOfDay(zone).toInstant();
    PressFigures sum =
        new PressFigures(
            press.id(),
            staffed.seconds(from, to) / 60.0,
            0,
            0,
            0,
            (staffed.seconds(from, to) - up.seconds(from, to)) / 60.0,
            0,
            0,
            0,
            0,
            0);
    for (DayRun run : told) {
      if (run.told().press().equals(press.id())) {
        sum = sum.plus(figures(run, staffed, up));
      }
    }
    return sum;
  }

  private PressHours hours(Press press, FloorReport report) {
    return PressHours.around(day, report.standing(shop).findPress(press.id()).orElseThrow(), zone);
  }

  private static PressFigures figures(DayRun run, PressHours staffed, PressHours up) {
    Instant start = startOf(run).toInstant();
    Instant print = printStart(run, up);
    Instant end = lastOf(run.told()).toInstant();
    int afterSetUp = Math.max(0, run.told().printed() - run.planned().trialPieces());
    return new PressFigures(
        run.told().press(),
        0,
        staffed.seconds(start, end) / 60.0,
        up.seconds(start, print) / 60.0,
        up.seconds(print, end) / 60.0,
        0,
        Math.max(0, Duration.between(start, end).toSeconds()) / 60.0,
        run.planned().ratePerHour() == 0 ? 0 : afterSetUp * 60.0 / run.planned().ratePerHour(),
        run.told().printed(),
        run.told().good(),
        run.told().spoiled());
  }

  private static OffsetDateTime startOf(DayRun run) {
    return run.told().begunAt(run.planned().setUpStart());
  }

  /** Told, else the planned set-up after the beginning; not after the end. */
  private static Instant printStart(DayRun run, PressHours up) {
    Instant start = startOf(run).toInstant();
    Instant end = lastOf(run.told()).toInstant();
    Instant print =
        run.told().approvedAt() == null
            ? up.after(start, run.planned().setUpMinutes() * 60)
            : run.told().approvedAt().toInstant();
    return print.isAfter(end) ? end : print;
  }

  private RunResult result(DayRun run) {
    RunReport report = run.told();
    RunLine line = run.planned();
    OffsetDateTime start = local(startOf(run));
    OffsetDateTime end = local(lastOf(report));
    Optional<Press> press = shop.findPress(report.press());
    Instant print =
        press.map(p -> printStart(run, hours(p, hours))).orElse(line.printStart().toInstant());
    Double rate =
        press
            .map(p -> hours(p, hours).seconds(print, end.toInstant()))
            .filter(seconds -> seconds > 0 && report.printed() > line.trialPieces())
            .map(seconds -> (report.printed() - line.trialPieces()) * 3600.0 / seconds)
            .orElse(null);
    return new RunResult(
        line.id(),
        line.order(),
        line.design(),
        line.position(),
        line.lot(),
        report.press(),
        report.ended() ? "ended" : "running",
        line.setUpStart(),
        line.printEnd(),
        line.quantity(),
        line.ratePerHour(),
        start,
        print.atZone(zone).toOffsetDateTime(),
        end,
        report.good(),
        report.spoiled(),
        rate,
        Duration.between(line.setUpStart(), start).toMinutes(),
        report.ended() ? Duration.between(line.printEnd(), end).toMinutes() : null);
  }

  private OffsetDateTime local(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toOffsetDateTime();
  }

  private static RunResult result(RunLine line) {
    return new RunResult(
        line.id(),
        line.order(),
        line.design(),
        line.position(),
        line.lot(),
        line.press(),
        "not-told",
        line.setUpStart(),
        line.printEnd(),
        line.quantity(),
        line.ratePerHour(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }
}
