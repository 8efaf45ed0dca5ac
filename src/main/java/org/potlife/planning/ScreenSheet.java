package org.potlife.planning;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.shop.Press;
import org.potlife.shop.Shop;
import org.potlife.simulation.ScreenRoomSpec;
import org.potlife.simulation.StaffedTime;
import org.potlife.simulation.Trace;

/** The screens of a plan with their steps. */
final class ScreenSheet {

  private final MappedProblem mapped;
  private final Shop shop;
  private final Horizon horizon;
  private final ScreenRoomSpec room;
  private final Trace trace;

  ScreenSheet(MappedProblem mapped, Trace trace) {
    this.mapped = mapped;
    this.trace = trace;
    shop = mapped.request().shop();
    horizon = mapped.horizon();
    room = mapped.problem().screenRoom();
  }

  List<ScreenLine> lines(List<RunLine> runs) {
    Map<List<String>, List<RunLine>> usersOf =
        runs.stream().collect(Collectors.groupingBy(RunLine::screens));
    List<ScreenLine> lines = new ArrayList<>();
    for (ScreenSet set : mapped.sets()) {
      List<RunLine> users = usersOf.get(set.ids());
      if (users != null) {
        lines.addAll(lines(set, users));
      }
    }
    lines.sort(
        Comparator.comparingLong((ScreenLine line) -> line.readyAt().toEpochSecond())
            .thenComparing(ScreenLine::id));
    return lines;
  }

  private List<ScreenLine> lines(ScreenSet set, List<RunLine> users) {
    OffsetDateTime released = released(set, users);
    OffsetDateTime needed = users.get(0).setUpStart();
    List<ScreenLine> lines = new ArrayList<>();
    int made = 0;
    for (int station = 0; station < set.keys().size(); station++) {
      ScreenKey key = set.keys().get(station);
      boolean kept = set.kept().get(station);
      ScreenLine begun = begun(set.ids().get(station));
      List<StepLine> steps = List.of();
      ScreenNews.Resume resume = mapped.frozen().news().resume(set.ids().get(station));
      if (begun != null && (resume == null || kept)) {
        steps = begun.steps();
      } else if (begun != null) {
        steps = new ArrayList<>(begun.steps());
        steps.addAll(steps(set, made, needed));
        made++;
      } else if (!kept) {
        steps = steps(set, made, needed);
        made++;
      }
      OffsetDateTime ready = steps.isEmpty() ? horizon.time(0) : steps.get(steps.size() - 1).to();
      lines.add(
          new ScreenLine(
              set.ids().get(station),
              users.get(0).id(),
              users.stream().map(RunLine::id).toList(),
              key.ink(),
              key.design(),
              station + 1,
              key.meshPerCm(),
              key.threadUm(),
              kept,
              begun != null && resume == null ? begun.readyAt() : ready,
              released,
              steps));
    }
    return lines;
  }

  private ScreenLine begun(String id) {
    for (ScreenLine line : mapped.frozen().screens()) {
      if (line.id().equals(id)) {
        return line;
      }
    }
    return null;
  }

  private OffsetDateTime released(ScreenSet set, List<RunLine> users) {
    OffsetDateTime released = null;
    for (RunLine run : users) {
      Press press = shop.findPress(run.press()).orElseThrow();
      OffsetDateTime off = run.printEnd().plusSeconds(press.tearDownS(set.keys().size()));
      released = released == null || off.isAfter(released) ? off : released;
    }
    return released;
  }

  /** Steps of one screen of the set, the {@code number}th that is made. */
  private List<StepLine> steps(ScreenSet set, int number, OffsetDateTime needed) {
    StaffedTime staffed = room.staffed();
    List<Object> recorded = trace.steps(set.index());
    int[] latest = latestStarts(recorded, number, madeCount(set), horizon.seconds(needed));
    List<StepLine> steps = new ArrayList<>();
    for (int i = 0; i < recorded.size(); i++) {
      Object step = recorded.get(i);
      if (step instanceof Trace.Hands hands) {
        int begin = hands.startWork() + number * hands.eachS();
        boolean noWork = hands.eachS() == 0;
        int from = noWork ? hands.arrivedAt() : staffed.startOf(begin);
        int to = noWork ? from : staffed.endOf(begin + hands.eachS());
        steps.add(
            new StepLine(
                ScreenSteps.name(hands.stage()),
                horizon.time(from),
                horizon.time(to),
                horizon.time(Math.max(from, latest[i])),
                ScreenSteps.place(hands.stage().place(), hands.lane())));
      } else if (step instanceof Trace.Drying drying) {
        steps.add(
            new StepLine(
                ScreenSteps.name(drying.stage()),
                horizon.time(drying.from()),
                horizon.time(drying.dryAt()),
                horizon.time(Math.max(drying.from(), latest[i])),
                shop.screenRoom().cabinets().get(drying.cabinet()).id()));
      }
    }
    return steps;
  }

  private static int madeCount(ScreenSet set) {
    return (int) IntStream.range(0, set.keys().size()).filter(set::isMade).count();
  }

  /** Walks the stages backwards from the moment that the run needs its screens. */
  private int[] latestStarts(List<Object> recorded, int number, int made, int needed) {
    int[] latest = new int[recorded.size()];
    int setBy = needed;
    for (int i = recorded.size() - 1; i >= 0; i--) {
      if (recorded.get(i) instanceof Trace.Hands hands) {
        latest[i] = room.staffed().subtract(setBy, (made - number) * hands.eachS());
        setBy = room.staffed().subtract(setBy, made * hands.eachS());
      } else if (recorded.get(i) instanceof Trace.Drying drying) {
        latest[i] = latestDrying(drying, setBy);
        setBy = latest[i];
      }
    }
    return latest;
  }

  private int latestDrying(Trace.Drying drying, int dryBy) {
    ScreenRoomSpec.Cabinet cabinet = room.cabinets()[drying.cabinet()];
    double required = cabinet.requiredPaS()[drying.stage().ordinal()];
    int low = drying.from();
    int high = Math.max(low, dryBy);
    while (low < high) {
      int middle = low + (high - low + 1) / 2;
      if (cabinet.drying().dryAt(middle + cabinet.gatherS(), required) <= dryBy) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
