package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.potlife.dryer.Dryer;
import org.potlife.plan.list.BeltList.DryerDay;
import org.potlife.plan.list.BeltList.Period;
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
  static final double SAME_SPEED = 0.005;

  private final PlanIndex plan;
  private final BeltRuns runs;

  BeltMapping(PlanIndex plan) {
    this.plan = plan;
    this.runs = new BeltRuns(plan);
  }

  /** What a run asks of its dryer; empty when its order or ink is not known any more. */
  Optional<BeltRun> findRun(RunLine run) {
    return runs.find(run.id());
  }

  BeltList list(LocalDate day) {
    return new BeltList(
        day, plan.shop().dryers().stream().map(dryer -> dryerDay(day, dryer)).toList());
  }

  /** Settings of the run's dryer from its first piece until its last is off the belt. */
  List<Setting> settingsDuring(RunLine run) {
    return settings(
        run.dryer(),
        lines(run.dryer())
            .filter(l -> l.from().isBefore(run.offBelt()) && l.to().isAfter(run.firstPieceAt()))
            .sorted(IN_TIME)
            .toList());
  }

  private DryerDay dryerDay(LocalDate day, Dryer dryer) {
    List<BeltLine> all = lines(dryer.id()).sorted(IN_TIME).toList();
    List<BeltLine> lines = all.stream().filter(l -> plan.touches(day, l.from(), l.to())).toList();
    List<BeltChange> changes = BeltChange.of(runs, all, at -> plan.dayOf(at).equals(day));
    return new DryerDay(
        dryer.id(),
        dryer.heatedLengthMm(),
        plan.shop().presses().stream()
            .filter(press -> press.dryer().equals(dryer.id()))
            .map(Press::id)
            .toList(),
        changes,
        settings(dryer.id(), lines),
        distinct(lines, line -> runs.of(line).stream()),
        MixedBelt.of(plan, runs, dryer, lines),
        lines.stream().map(line -> period(dryer, line, changes)).toList());
  }

  private Period period(Dryer dryer, BeltLine line, List<BeltChange> changes) {
    List<BeltRun> in = runs.of(line);
    double fastest = in.stream().mapToDouble(BeltRun::speedLimitMPerMin).max().orElse(0);
    return new Period(
        line,
        runs.settingTheSpeed(line).stream().map(BeltRun::run).toList(),
        in.stream().map(BeltRun::lanes).toList(),
        BeltWater.of(dryer, line, runs),
        in.size() < 2 ? 0 : MixedBelt.thousandth(fastest - line.speedMPerMin()),
        changes.stream()
            .filter(change -> change.at().isEqual(line.from()))
            .map(BeltChange::number)
            .findFirst()
            .orElse(null));
  }

  private Stream<BeltLine> lines(String dryer) {
    return plan.sheet().belts().stream().filter(line -> line.dryer().equals(dryer));
  }

  /** Joins neighbours with the same speed. */
  private List<Setting> settings(String dryerId, List<BeltLine> lines) {
    Dryer dryer = plan.shop().findDryer(dryerId).orElse(null);
    List<Setting> settings = new ArrayList<>();
    int begin = 0;
    for (int i = 1; i <= lines.size(); i++) {
      boolean ends = i == lines.size() || !joins(lines.get(i - 1), lines.get(i));
      if (ends) {
        boolean continued = i < lines.size() && touch(lines.get(i - 1), lines.get(i));
        settings.add(setting(dryer, lines.subList(begin, i), continued));
        begin = i;
      }
    }
    return List.copyOf(settings);
  }

  static boolean joins(BeltLine before, BeltLine next) {
    return touch(before, next) && sameSpeed(before, next);
  }

  static boolean sameSpeed(BeltLine before, BeltLine next) {
    return Math.abs(next.speedMPerMin() - before.speedMPerMin()) < SAME_SPEED;
  }

  static boolean touch(BeltLine before, BeltLine next) {
    return before.to().toInstant().equals(next.from().toInstant());
  }

  private Setting setting(Dryer dryer, List<BeltLine> lines, boolean continued) {
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
        distinct(lines, line -> runs.settingTheSpeed(line).stream().map(BeltRun::name)),
        distinct(lines, line -> line.runs().stream().map(plan::runName)),
        dryer == null
            ? null
            : BeltWater.worst(lines.stream().map(line -> BeltWater.of(dryer, line, runs)).toList()),
        continued);
  }

  private static <T> List<T> distinct(List<BeltLine> lines, Function<BeltLine, Stream<T>> part) {
    return lines.stream().flatMap(part).distinct().toList();
  }
}
