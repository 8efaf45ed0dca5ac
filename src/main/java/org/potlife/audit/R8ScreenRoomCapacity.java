package org.potlife.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.potlife.screen.KeptStencil;
import org.potlife.screen.ScreenRoom;
import org.potlife.sheet.PlanSheet.UnplacedLine;

/**
 * R8: the stages of a made screen in their order, each as long as it takes in the room's staffed
 * time, at a place that takes one screen at a time; the screens of a set move together. Frames are
 * a finite stock; a kept stencil is used before a new one is made.
 */
final class R8ScreenRoomCapacity implements Rule {

  @Override
  public String number() {
    return "R8";
  }

  @Override
  public String title() {
    return "Screen room";
  }

  @Override
  public void check(Evidence evidence, Notes notes) {
    List<ScreenFacts> made = evidence.screens().stream().filter(screen -> !screen.kept()).toList();
    made.forEach(screen -> stages(evidence, screen, notes));
    evidence.screens().forEach(screen -> released(evidence, screen, notes));
    setsMoveTogether(evidence, made, notes);
    oneScreenAtATime(evidence, made, notes);
    keptFirst(evidence, notes);
    new FrameBook(evidence).check(notes);
  }

  private static void stages(Evidence evidence, ScreenFacts screen, Notes notes) {
    ScreenRoom room = evidence.shop().screenRoom();
    // what got wet again in store, and so was begun before, is dried again
    boolean begun = evidence.isBegun(screen.id());
    List<Stage> found = new ArrayList<>();
    for (ScreenFacts.Step step : screen.steps()) {
      Stage before = found.isEmpty() ? null : found.get(found.size() - 1);
      if (!begun || step.stage() != Stage.DRY_COATED || before != Stage.DRY_COATED) {
        found.add(step.stage());
      }
    }
    notes.check(
        found.equals(Arrays.asList(Stage.values())),
        screen.id(),
        "goes through %s, it needs %s",
        found,
        Arrays.asList(Stage.values()));
    for (ScreenFacts.Step step : screen.steps()) {
      if (step.stage().drying()) {
        continue;
      }
      notes.check(
          step.stage().isAt(step.where(), room),
          screen.id(),
          "%s happens at %s, which is no place for it",
          step.stage(),
          step.where());
      double needed = step.stage().minutes(room) * 60;
      long worked = evidence.screenRoom().seconds(step.from(), step.to());
      notes.check(
          Math.abs(worked - needed) <= Tolerance.SECONDS,
          screen.id(),
          "%s from %s to %s has %.1f staffed minutes, it takes %.1f",
          step.stage(),
          evidence.at(step.from()),
          evidence.at(step.to()),
          worked / 60.0,
          needed / 60);
    }
  }

  private static void released(Evidence evidence, ScreenFacts screen, Notes notes) {
    if (!screen.runs().isEmpty() && screen.releasedAt() != null) {
      long released =
          screen.runs().stream().mapToLong(R4ScreensReady::releasedAt).max().orElseThrow();
      notes.check(
          Math.abs(screen.releasedAt() - released) <= Tolerance.SECONDS,
          screen.id(),
          "is said to be free %s, it is taken down %s",
          evidence.at(screen.releasedAt()),
          evidence.at(released));
    }
  }

  private static void setsMoveTogether(Evidence evidence, List<ScreenFacts> made, Notes notes) {
    Map<String, List<ScreenFacts>> sets = new TreeMap<>();
    made.forEach(
        screen ->
            sets.computeIfAbsent(
                    screen.runs().isEmpty()
                        ? screen.id()
                        : screen.runs().get(0).line().screens() + madeWith(evidence, screen),
                    set -> new ArrayList<>())
                .add(screen));
    for (List<ScreenFacts> set : sets.values()) {
      ready(evidence, set, notes);
      Stage[] stages = Stage.values();
      for (int i = 1; i < stages.length; i++) {
        // whether a screen is exposed before its own coat is dry is R5's question
        Stage before = stages[i - 1];
        Stage next = stages[i];
        long done = 0;
        for (ScreenFacts screen : set) {
          done = Math.max(done, screen.step(before).map(ScreenFacts.Step::to).orElse(0L));
        }
        for (ScreenFacts screen : set) {
          long from = screen.step(next).map(ScreenFacts.Step::from).orElse(Long.MAX_VALUE);
          long own = screen.step(before).map(ScreenFacts.Step::to).orElse(0L);
          notes.check(
              from >= done || next == Stage.EXPOSE && from < own,
              screen.id(),
              "starts %s %s, its set has done %s only %s",
              next,
              evidence.at(Math.min(from, done)),
              before,
              evidence.at(done));
        }
      }
    }
  }

  /** Where screens broke, a set is made up of those left over, each on its own, and new ones. */
  private static String madeWith(Evidence evidence, ScreenFacts screen) {
    return !evidence.rooms().broken().isEmpty() && evidence.isBegun(screen.id()) ? screen.id() : "";
  }

  private static void ready(Evidence evidence, List<ScreenFacts> set, Notes notes) {
    long all =
        set.stream()
            .flatMap(screen -> screen.step(Stage.TAPE).stream())
            .mapToLong(ScreenFacts.Step::to)
            .max()
            .orElse(Long.MAX_VALUE);
    for (ScreenFacts screen : set) {
      long own = screen.step(Stage.TAPE).map(ScreenFacts.Step::to).orElse(0L);
      if (screen.readyAt() != null) {
        notes.check(
            screen.readyAt() >= own && screen.readyAt() <= all,
            screen.id(),
            "is said to be ready %s, it is taped %s, its set %s",
            evidence.at(screen.readyAt()),
            evidence.at(own),
            evidence.at(all == Long.MAX_VALUE ? own : all));
      }
    }
  }

  private static void oneScreenAtATime(Evidence evidence, List<ScreenFacts> made, Notes notes) {
    Map<String, List<ScreenFacts.Step>> places = new TreeMap<>();
    for (ScreenFacts screen : made) {
      for (ScreenFacts.Step step : screen.steps()) {
        // a stage of no minutes takes no place
        if (!step.stage().drying() && step.where() != null && step.from() < step.to()) {
          places.computeIfAbsent(step.where(), place -> new ArrayList<>()).add(step);
        }
      }
    }
    places.forEach(
        (place, steps) -> {
          steps.sort(
              Comparator.comparingLong(ScreenFacts.Step::from)
                  .thenComparingLong(ScreenFacts.Step::to));
          for (int i = 1; i < steps.size(); i++) {
            ScreenFacts.Step before = steps.get(i - 1);
            ScreenFacts.Step next = steps.get(i);
            notes.check(
                next.from() >= before.to(),
                next.screen().id(),
                "%s at %s starts %s, screen %s is there until %s",
                next.stage(),
                place,
                evidence.at(next.from()),
                before.screen().id(),
                evidence.at(before.to()));
          }
        });
  }

  private static void keptFirst(Evidence evidence, Notes notes) {
    Map<ScreenKey, Integer> free = new HashMap<>();
    for (KeptStencil kept : evidence.shop().screenRoom().kept()) {
      free.merge(ScreenKey.of(kept), 1, Integer::sum);
    }
    for (ScreenFacts screen : evidence.screens()) {
      // one that broke is no longer kept, and yet on a press until its run is over (R4)
      if (screen.kept() && !evidence.isBroken(screen.id())) {
        int left = free.merge(screen.key(), -1, Integer::sum);
        notes.check(
            left >= 0, screen.id(), "is said to be kept, no kept stencil left of %s", screen.key());
        notes.check(
            screen.steps().isEmpty(),
            screen.id(),
            "is kept ready for the press and worked on again");
      }
    }
    unplacedSets(evidence)
        .forEach(set -> set.forEach(key -> free.computeIfPresent(key, (same, n) -> n - 1)));
    Set<List<String>> begun = begunSets(evidence);
    for (ScreenFacts screen : evidence.screens()) {
      boolean frozen = screen.runs().stream().anyMatch(run -> evidence.isFrozen(run.id()));
      if (!screen.kept() && !frozen && !begun.contains(screen.line().runs())) {
        notes.check(
            free.getOrDefault(screen.key(), 0) <= 0,
            screen.id(),
            "is made anew, a kept stencil of %s is left unused",
            screen.key());
      }
    }
  }

  /**
   * The runs of every set of which some is begun: what is still to be made for it goes on as
   * published.
   */
  private static Set<List<String>> begunSets(Evidence evidence) {
    Set<List<String>> begun = new HashSet<>();
    for (ScreenFacts screen : evidence.screens()) {
      if (evidence.isBegun(screen.id())) {
        begun.add(screen.line().runs());
      }
    }
    return begun;
  }

  /** Sets of which no run has a place; a kept stencil may wait for them. */
  private static Set<List<ScreenKey>> unplacedSets(Evidence evidence) {
    Set<List<ScreenKey>> sets = new HashSet<>();
    for (UnplacedLine line : Completeness.there(evidence.sheet().unplaced())) {
      Optional.ofNullable(evidence.orders().get(line.order())).stream()
          .flatMap(order -> order.prints().stream())
          .filter(print -> print.design().equals(line.design()))
          .filter(print -> print.position().equals(line.position()))
          .forEach(print -> sets.add(ScreenKey.of(print)));
    }
    evidence.runs().forEach(run -> sets.remove(ScreenKey.of(run.print())));
    return sets;
  }
}
