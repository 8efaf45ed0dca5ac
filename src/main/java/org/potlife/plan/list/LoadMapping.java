package org.potlife.plan.list;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.potlife.plan.list.ScreenList.Load;
import org.potlife.screen.Cabinet;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;

/**
 * Finds the loads of the cabinets again. The sheet tells for each screen when it goes in and when
 * the load is dry; loads of a cabinet never overlap, so those that come out of it together went in
 * together.
 */
final class LoadMapping {

  private static final Comparator<OffsetDateTime> IN_TIME =
      Comparator.comparing(OffsetDateTime::toInstant);

  private record Key(String cabinet, String step, Instant dryAt) {}

  private record Entry(ScreenLine screen, StepLine step) {}

  private final PlanIndex plan;

  LoadMapping(PlanIndex plan) {
    this.plan = plan;
  }

  List<Load> loads(LocalDate day, List<ScreenLine> screens) {
    Map<Key, List<Entry>> loads = new LinkedHashMap<>();
    for (ScreenLine screen : screens) {
      for (StepLine step : screen.steps()) {
        if (step.drying() && plan.touches(day, step.from(), step.to())) {
          Key key = new Key(step.where(), step.step(), step.to().toInstant());
          loads.computeIfAbsent(key, k -> new ArrayList<>()).add(new Entry(screen, step));
        }
      }
    }
    return loads.entrySet().stream()
        .map(e -> load(e.getKey(), e.getValue()))
        .sorted(Comparator.comparing(Load::firstIn, IN_TIME).thenComparing(Load::cabinet))
        .toList();
  }

  private Load load(Key key, List<Entry> entries) {
    OffsetDateTime firstIn = in(entries).min(IN_TIME).orElseThrow();
    OffsetDateTime lastIn = in(entries).max(IN_TIME).orElseThrow();
    Optional<Cabinet> cabinet =
        plan.shop().screenRoom().cabinets().stream()
            .filter(c -> c.id().equals(key.cabinet()))
            .findFirst();
    boolean full = cabinet.filter(c -> c.frames() <= entries.size()).isPresent();
    OffsetDateTime shutBy =
        full ? lastIn : firstIn.plusMinutes(cabinet.map(Cabinet::gatherMinutes).orElse(0));
    return new Load(
        key.cabinet(),
        key.step(),
        firstIn,
        lastIn,
        shutBy.isBefore(lastIn) ? lastIn : shutBy,
        entries.get(0).step().to(),
        cabinet.map(Cabinet::frames).orElse(0),
        entries.stream().map(e -> ScreenMapping.frame(plan, e.screen())).toList(),
        cabinet
            .map(
                c ->
                    new CourseMapping(plan)
                        .course(c, key.step(), lastIn, entries.get(0).step().to()))
            .orElse(null));
  }

  private static Stream<OffsetDateTime> in(List<Entry> entries) {
    return entries.stream().map(e -> e.step().from());
  }
}
