package org.potlife.audit;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Part of R0: where two lines of the sheet speak of each other, they say the same. */
final class CrossReferences {

  private final LineReader reader;
  private final Collection<RunFacts> runs;
  private final List<BatchFacts> batches;
  private final List<ScreenFacts> screens;

  CrossReferences(
      LineReader reader,
      Collection<RunFacts> runs,
      List<BatchFacts> batches,
      List<ScreenFacts> screens) {
    this.reader = reader;
    this.runs = runs;
    this.batches = batches;
    this.screens = screens;
  }

  void check() {
    runsAndBatches();
    runsAndScreens();
    for (RunFacts run : runs) {
      reader.check(
          run.dryer().id().equals(run.line().dryer()),
          run.id(),
          "names the dryer %s, its press %s feeds %s",
          run.line().dryer(),
          run.press().id(),
          run.dryer().id());
      reader.check(
          run.print().process().toString().equals(run.line().process()),
          run.id(),
          "is written as %s, the order asks for %s",
          run.line().process(),
          run.print().process());
    }
  }

  private void runsAndBatches() {
    Map<String, Set<String>> drawn = new LinkedHashMap<>();
    for (BatchFacts batch : batches) {
      Set<String> served = new LinkedHashSet<>();
      batch.uses().forEach(use -> served.add(use.run().id()));
      served.forEach(id -> drawn.computeIfAbsent(id, any -> new HashSet<>()).add(batch.id()));
      reader.check(
          batch.line().runs() != null && served.equals(new HashSet<>(batch.line().runs())),
          batch.id(),
          "is listed for the runs %s but used by %s",
          batch.line().runs(),
          served);
    }
    for (RunFacts run : runs) {
      Set<String> batchIds = drawn.getOrDefault(run.id(), Set.of());
      reader.check(
          batchIds.equals(new HashSet<>(run.line().batches())),
          run.id(),
          "lists the batches %s but draws from %s",
          run.line().batches(),
          batchIds);
    }
  }

  private void runsAndScreens() {
    Map<String, ScreenFacts> byName = new LinkedHashMap<>();
    screens.forEach(screen -> byName.put(screen.id(), screen));
    for (RunFacts run : runs) {
      for (String id : run.line().screens()) {
        ScreenFacts screen = byName.get(id);
        reader.check(
            screen != null && screen.runs().contains(run),
            run.id(),
            "lists the screen %s, which is not on the sheet for it",
            id);
      }
    }
    for (ScreenFacts screen : screens) {
      for (RunFacts run : screen.runs()) {
        reader.check(
            run.line().screens().contains(screen.id()),
            screen.id(),
            "is for run %s, which does not list it",
            run.id());
      }
      if (!screen.runs().isEmpty()) {
        RunFacts first = screen.runs().get(0);
        reader.check(
            Objects.equals(first.id(), screen.line().run())
                && first.line().screens().indexOf(screen.id()) == screen.line().station() - 1,
            screen.id(),
            "is said to start on station %d of run %s, its first run is %s",
            screen.line().station(),
            screen.line().run(),
            first.id());
      }
    }
  }
}
