package org.potlife.plan.list;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.potlife.sheet.PlanSheet.BeltLine;

/**
 * A change-over of a belt that its crew must make.
 *
 * @param number number of the day, from 1
 * @param at a slower speed is set before this moment, a faster one not before it
 * @param fromSpeedMPerMin speed that was set, m/min; null when the plan has none before
 * @param toSpeedMPerMin speed to set, m/min
 * @param toDwellS dwell in the heated length that this gives, seconds
 * @param runs names of the runs that make it necessary
 * @param why comes, goes or starts: the runs come, they are off the belt, or they are the first on
 *     an empty belt
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BeltChange(
    int number,
    OffsetDateTime at,
    Double fromSpeedMPerMin,
    double toSpeedMPerMin,
    int toDwellS,
    List<String> runs,
    String why) {

  /** The change-overs whose moment passes the filter, numbered; lines in time. */
  static List<BeltChange> of(
      BeltRuns runs, List<BeltLine> lines, Predicate<OffsetDateTime> ofTheDay) {
    List<BeltChange> changes = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      BeltLine line = lines.get(i);
      BeltLine before = i == 0 ? null : lines.get(i - 1);
      boolean same = before != null && BeltMapping.sameSpeed(before, line);
      if (!same && ofTheDay.test(line.from())) {
        changes.add(change(runs, before, line, changes.size() + 1));
      }
    }
    return List.copyOf(changes);
  }

  private static BeltChange change(BeltRuns runs, BeltLine before, BeltLine line, int number) {
    boolean empty = before == null || !BeltMapping.touch(before, line);
    boolean faster = !empty && before.speedMPerMin() < line.speedMPerMin();
    List<BeltRun> cause =
        faster
            ? without(runs.settingTheSpeed(before), line)
            : empty ? runs.of(line) : without(runs.settingTheSpeed(line), before);
    return new BeltChange(
        number,
        line.from(),
        before == null ? null : before.speedMPerMin(),
        line.speedMPerMin(),
        line.dwellS(),
        cause.stream().map(BeltRun::name).toList(),
        empty ? "starts" : faster ? "goes" : "comes");
  }

  private static List<BeltRun> without(List<BeltRun> runs, BeltLine other) {
    return runs.stream().filter(run -> !other.runs().contains(run.run())).toList();
  }
}
