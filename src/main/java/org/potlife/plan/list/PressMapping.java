package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.potlife.order.Order;
import org.potlife.order.Print;
import org.potlife.plan.list.PressList.PressDay;
import org.potlife.plan.list.RunCard.Draw;
import org.potlife.plan.list.RunCard.Note;
import org.potlife.plan.list.RunCard.Station;
import org.potlife.plan.list.RunCard.Wait;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.shop.Press;

/** Runs of the sheet to the press crews' cards. */
final class PressMapping {

  private final PlanIndex plan;
  private final BeltMapping belts;
  private final Set<String> frozen;

  PressMapping(PlanIndex plan) {
    this.plan = plan;
    this.belts = new BeltMapping(plan);
    this.frozen = Set.copyOf(plan.sheet().frozen());
  }

  PressList list(LocalDate day) {
    return new PressList(
        day, plan.shop().presses().stream().map(press -> pressDay(day, press)).toList());
  }

  private PressDay pressDay(LocalDate day, Press press) {
    List<RunCard> runs =
        plan.sheet().runs().stream()
            .filter(run -> run.press().equals(press.id()))
            .filter(run -> plan.touches(day, run.setUpStart(), run.printEnd()))
            .sorted(Comparator.comparing(run -> run.setUpStart().toInstant()))
            .map(this::card)
            .toList();
    int pieces = runs.stream().mapToInt(card -> card.run().quantity()).sum();
    return new PressDay(press.id(), press.dryer(), press.inService(), pieces, runs);
  }

  private RunCard card(RunLine run) {
    Optional<Print> print = plan.findPrint(run);
    return new RunCard(
        run,
        plan.garments(run.order()),
        plan.findOrder(run.order()).map(Order::dueAt).orElse(null),
        plan.findLate(run.order()).map(LateLine::minutes).orElse(0L),
        frozen.contains(run.id()),
        print.map(Print::flashes).orElse(0),
        print.map(Print::passes).orElse(1),
        stations(run),
        belts.settingsDuring(run),
        belts.findRun(run).orElse(null),
        notes(run),
        run.waits().stream()
            .map(w -> new Wait(w.cause(), w.minutes(), WaitWords.of(plan, w)))
            .toList());
  }

  private List<Station> stations(RunLine run) {
    List<Station> stations = new ArrayList<>();
    for (int j = 0; j < run.inks().size(); j++) {
      String screenId = j < run.screens().size() ? run.screens().get(j) : "";
      Optional<ScreenLine> screen = plan.findScreen(screenId);
      stations.add(
          new Station(
              j + 1,
              plan.chip(run.inks().get(j)),
              screenId,
              screen.map(ScreenLine::meshPerCm).orElse(0.0),
              screen.map(ScreenLine::threadUm).orElse(0.0),
              screen.map(ScreenLine::kept).orElse(false),
              draws(run, run.inks().get(j))));
    }
    return List.copyOf(stations);
  }

  private List<Draw> draws(RunLine run, String ink) {
    return run.batches().stream()
        .flatMap(id -> plan.findBatch(id).stream())
        .filter(batch -> batch.ink().equals(ink))
        .flatMap(
            batch ->
                batch.uses().stream()
                    .filter(use -> use.run().equals(run.id()))
                    .map(use -> new Draw(batch.id(), use.from(), use.to(), batch.useBy())))
        .sorted(Comparator.comparing(d -> d.from().toInstant()))
        .toList();
  }

  private List<Note> notes(RunLine run) {
    return run.inks().stream()
        .map(ink -> plan.findInk(ink).orElse(null))
        .filter(Objects::nonNull)
        .map(ink -> plan.shop().findInkSystem(ink.system()).orElse(null))
        .filter(Objects::nonNull)
        .distinct()
        .filter(system -> !system.pressNotes().isBlank())
        .map(system -> new Note(system.id(), system.pressNotes()))
        .toList();
  }
}
