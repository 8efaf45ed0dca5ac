package org.potlife.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.potlife.screen.Cabinet;

/**
 * The screens that come out of a cabinet together.
 *
 * @param where name of the cabinet on the sheet
 * @param cabinet the cabinet, if the plant has it
 * @param out when all are dry, epoch seconds
 */
record Load(String where, Optional<Cabinet> cabinet, long out, List<ScreenFacts.Step> steps) {

  /** All loads on the sheet, by the time that their first screen goes in. */
  static List<Load> all(Evidence evidence) {
    record Door(String where, long out) {}
    Map<Door, List<ScreenFacts.Step>> groups = new LinkedHashMap<>();
    for (ScreenFacts screen : evidence.screens()) {
      for (ScreenFacts.Step step : screen.steps()) {
        if (step.stage().drying()) {
          groups
              .computeIfAbsent(new Door(step.where(), step.to()), door -> new ArrayList<>())
              .add(step);
        }
      }
    }
    List<Load> loads = new ArrayList<>();
    groups.forEach(
        (door, steps) -> {
          Optional<Cabinet> cabinet =
              evidence.shop().screenRoom().cabinets().stream()
                  .filter(c -> c.id().equals(door.where()))
                  .findFirst();
          loads.add(new Load(door.where(), cabinet, door.out(), steps));
        });
    loads.sort(Comparator.comparingLong(Load::firstIn));
    return loads;
  }

  long firstIn() {
    return steps.stream().mapToLong(ScreenFacts.Step::from).min().orElse(out);
  }

  long lastIn() {
    return steps.stream().mapToLong(ScreenFacts.Step::from).max().orElse(out);
  }

  Set<Stage> stages() {
    Set<Stage> stages = new LinkedHashSet<>();
    steps.forEach(step -> stages.add(step.stage()));
    return stages;
  }

  /** Names of the screens. */
  String screens() {
    return steps.stream().map(step -> step.screen().id()).collect(Collectors.joining(", "));
  }
}
