package org.potlife.plan.list;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.potlife.dryer.Dryer;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;

/**
 * A stretch in which a run shares the tunnel with slower ones, and what that costs it.
 *
 * @param minutes length of the stretch, minutes, rounded
 * @param speedMPerMin belt speed, m/min
 * @param slow names of the runs whose dwell sets that speed
 * @param fast name of the run that could go faster
 * @param fastSpeedMPerMin fastest belt for it, m/min
 * @param lostMPerMin belt that it does not get, m/min
 * @param lostPiecesPerHour its pieces for which that belt would have room, pieces/h
 * @param heldBackMinutes minutes of the stretch in which that binds: the belt is full and its press
 *     prints less than it can
 * @param piecesNotPrinted pieces that it could have printed more in these minutes, as far as press
 *     and heat allow
 */
public record MixedBelt(
    OffsetDateTime from,
    OffsetDateTime to,
    long minutes,
    double speedMPerMin,
    List<String> slow,
    String fast,
    double fastSpeedMPerMin,
    double lostMPerMin,
    int lostPiecesPerHour,
    long heldBackMinutes,
    int piecesNotPrinted) {

  private static final double SECONDS_PER_HOUR = 3600;

  /** The mixed stretches of a dryer, one for each run that is slowed, in time. */
  static List<MixedBelt> of(PlanIndex plan, BeltRuns runs, Dryer dryer, List<BeltLine> lines) {
    List<MixedBelt> mixed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      BeltLine line = lines.get(i);
      for (BeltRun fast : slowed(runs, line)) {
        if (i == 0 || !continues(runs, lines.get(i - 1), line, fast)) {
          mixed.add(stretch(plan, runs, dryer, lines.subList(i, lines.size()), fast));
        }
      }
    }
    return List.copyOf(mixed);
  }

  private static List<BeltRun> slowed(BeltRuns runs, BeltLine line) {
    List<BeltRun> slow = runs.settingTheSpeed(line);
    return slow.isEmpty()
        ? List.of()
        : runs.of(line).stream().filter(run -> !slow.contains(run)).toList();
  }

  private static boolean continues(BeltRuns runs, BeltLine before, BeltLine line, BeltRun fast) {
    return BeltMapping.joins(before, line)
        && slowed(runs, before).contains(fast)
        && line.runs().contains(fast.run())
        && runs.settingTheSpeed(before).equals(runs.settingTheSpeed(line));
  }

  private static MixedBelt stretch(
      PlanIndex plan, BeltRuns runs, Dryer dryer, List<BeltLine> lines, BeltRun fast) {
    BeltLine first = lines.get(0);
    double lostMPerMin = fast.speedLimitMPerMin() - first.speedMPerMin();
    double lost = fast.piecesPerHourOn(lostMPerMin);
    BeltLine last = first;
    long heldS = 0;
    double pieces = 0;
    for (BeltLine line : lines) {
      if (line != first && !continues(runs, last, line, fast)) {
        break;
      }
      last = line;
      for (Held held : held(plan, dryer, line, fast, lost)) {
        heldS += held.seconds();
        pieces += held.pieces();
      }
    }
    Duration length = Duration.between(first.from(), last.to());
    return new MixedBelt(
        first.from(),
        last.to(),
        Math.round(length.toSeconds() / 60.0),
        first.speedMPerMin(),
        runs.settingTheSpeed(first).stream().map(BeltRun::name).toList(),
        fast.name(),
        fast.speedLimitMPerMin(),
        thousandth(lostMPerMin),
        (int) Math.floor(lost + 1e-9),
        Math.round(heldS / 60.0),
        (int) Math.floor(pieces + 1e-9));
  }

  static double thousandth(double value) {
    return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).doubleValue();
  }

  /** A part of a stretch in which the missing belt binds. */
  private record Held(long seconds, double pieces) {}

  private static List<Held> held(
      PlanIndex plan, Dryer dryer, BeltLine line, BeltRun fast, double lostPerHour) {
    RunLine run = plan.getRun(fast.run());
    int full = plan.shop().findPress(run.press()).map(Press::ratePerHour).orElse(0);
    double spareKw = dryer.usableHeatKw() * Math.max(0, 100 - line.heatPercent()) / 100;
    double byHeat = spareKw * dryer.efficiency() * SECONDS_PER_HOUR / fast.kJPerPiece();
    List<Held> held = new ArrayList<>();
    for (RateLine rate : run.rates()) {
      long from = Math.max(rate.from().toEpochSecond(), line.from().toEpochSecond());
      long to = Math.min(rate.to().toEpochSecond(), line.to().toEpochSecond());
      double more = Math.min(Math.min(full - rate.ratePerHour(), lostPerHour), byHeat);
      if (from < to && more > 0 && "area".equals(line.bound())) {
        held.add(new Held(to - from, more * (to - from) / SECONDS_PER_HOUR));
      }
    }
    return held;
  }
}
