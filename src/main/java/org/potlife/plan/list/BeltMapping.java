package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.potlife.dryer.Dryer;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Setting;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Press;

/**
 * Belt lines of the sheet to the timetable and to the settings on a run's card. The sheet begins a
 * new line whenever the load changes; a crew only wants to know when to turn the speed.
 */
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
  List<Setting> settingsDuring(RunLine run) {
    return settings(
        lines(run.dryer())
            .filter(l -> l.from().isBefore(run.offBelt()) && l.to().isAfter(run.firstPieceAt()))
            .sorted(IN_TIME)
            .toList());
  }

  private DryerDay dryerDay(LocalDate day, Dryer dryer) {
    List<BeltLine> lines =
        lines(dryer.id()).filter(l -> plan.touches(day, l.from(), l.to())).sorted(IN_TIME).toList();
    return new DryerDay(
        dryer.id(),
        dryer.heatedLengthMm(),
        plan.shop().presses().stream()
            .filter(press -> press.dryer().equals(dryer.id()))
            .map(Press::id)
            .toList(),
        settings(lines),
        lines);
  }

  private Stream<BeltLine> lines(String dryer) {
    return plan.sheet().belts().stream().filter(line -> line.dryer().equals(dryer));
  }

  /** Joins neighbours with the same speed. */
  private List<Setting> settings(List<BeltLine> lines) {
    List<Setting> settings = new ArrayList<>();
    int begin = 0;
    for (int i = 1; i <= lines.size(); i++) {
      boolean ends = i == lines.size() || !joins(lines.get(i - 1), lines.get(i));
      if (ends) {
        boolean continued = i < lines.size() && touch(lines.get(i - 1), lines.get(i));
        settings.add(setting(lines.subList(begin, i), continued));
        begin = i;
      }
    }
    return List.copyOf(settings);
  }

  private static boolean joins(BeltLine before, BeltLine next) {
    double change = next.speedMPerMin() - before.speedMPerMin();
    return touch(before, next) && Math.abs(change) < SAME_SPEED;
  }

  private static boolean touch(BeltLine before, BeltLine next) {
    return before.to().toInstant().equals(next.from().toInstant());
  }

  private Setting setting(List<BeltLine> lines, boolean continued) {
    BeltLine first = lines.get(0);
    return new Setting(
        first.from(),
        lines.get(lines.size() - 1).to(),
        first.speedMPerMin(),
        first.dwellS(),
        lines.stream().mapToInt(BeltLine::areaPercent).max().orElse(0),
        lines.stream().mapToInt(BeltLine::heatPercent).max().orElse(0),
        distinct(lines, line -> Stream.ofNullable(line.bound())).stream()
            .filter(bound -> !bound.equals("none"))
            .toList(),
        distinct(lines, line -> line.runs().stream().map(plan::runName)),
        continued);
  }

  private static List<String> distinct(
      List<BeltLine> lines, Function<BeltLine, Stream<String>> part) {
    return lines.stream().flatMap(part).distinct().toList();
  }
}
