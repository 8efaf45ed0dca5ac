package org.potlife.plan.list;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.potlife.dryer.Dryer;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Period;
import org.potlife.plan.list.RunCard.BeltSetting;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;

/** Belt lines of the sheet to the timetable and to the settings on a run's card. */
final class BeltMapping {

  private static final Comparator<BeltLine> IN_TIME =
      Comparator.comparing(line -> line.from().toInstant());

  /** Speeds closer than this cannot be told apart on the dial, m/min. */
  private static final double SAME_SPEED = 0.005;

  private final PlanIndex plan;

  BeltMapping(PlanIndex plan) {
    this.plan = plan;
  }

  BeltList list(LocalDate day) {
    return new BeltList(
        day, plan.shop().dryers().stream().map(dryer -> dryerDay(day, dryer)).toList());
  }

  /** Settings of the run's dryer from its first piece until its last is off the belt. */
  List<BeltSetting> settingsDuring(RunLine run) {
    List<BeltSetting> settings = new ArrayList<>();
    lines(run.dryer())
        .filter(l -> l.from().isBefore(run.offBelt()) && l.to().isAfter(run.firstPieceAt()))
        .sorted(IN_TIME)
        .forEach(line -> append(settings, line));
    return List.copyOf(settings);
  }

  private static void append(List<BeltSetting> settings, BeltLine line) {
    int last = settings.size() - 1;
    BeltSetting setting =
        new BeltSetting(
            line.from(), line.to(), line.speedMPerMin(), line.dwellS(), line.heatPercent());
    if (last >= 0 && joins(settings.get(last), line)) {
      BeltSetting before = settings.get(last);
      int heatPercent = Math.max(before.heatPercent(), line.heatPercent());
      settings.set(
          last,
          new BeltSetting(
              before.from(), line.to(), before.speedMPerMin(), before.dwellS(), heatPercent));
    } else {
      settings.add(setting);
    }
  }

  private static boolean joins(BeltSetting before, BeltLine next) {
    Duration gap = Duration.between(before.to(), next.from());
    return gap.isZero() && sameSpeed(before.speedMPerMin(), next.speedMPerMin());
  }

  private static boolean sameSpeed(double one, double other) {
    return Math.abs(one - other) < SAME_SPEED;
  }

  private DryerDay dryerDay(LocalDate day, Dryer dryer) {
    List<BeltLine> lines =
        lines(dryer.id()).filter(l -> plan.touches(day, l.from(), l.to())).sorted(IN_TIME).toList();
    List<Period> periods = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      BeltLine line = lines.get(i);
      boolean changed = i == 0 || !sameSpeed(lines.get(i - 1).speedMPerMin(), line.speedMPerMin());
      periods.add(new Period(line, bound(line), changed));
    }
    return new DryerDay(
        dryer.id(),
        dryer.heatedLengthMm(),
        plan.shop().presses().stream()
            .filter(press -> press.dryer().equals(dryer.id()))
            .map(Press::id)
            .toList(),
        List.copyOf(periods));
  }

  private Stream<BeltLine> lines(String dryer) {
    return plan.sheet().belts().stream().filter(line -> line.dryer().equals(dryer));
  }

  private static String bound(BeltLine line) {
    return switch (line.bound() == null ? "none" : line.bound()) {
      case "dwell" -> "dwell: no faster, or the prints stay uncured";
      case "area" -> "area: the belt is full";
      case "heat" -> "heat: the tunnel gives no more";
      case "none" -> "nothing";
      default -> line.bound();
    };
  }
}
