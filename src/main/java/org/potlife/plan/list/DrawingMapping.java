package org.potlife.plan.list;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.potlife.order.Order;
import org.potlife.plan.list.PlanDrawing.Batch;
import org.potlife.plan.list.PlanDrawing.BeltLoad;
import org.potlife.plan.list.PlanDrawing.Group;
import org.potlife.plan.list.PlanDrawing.Load;
import org.potlife.plan.list.PlanDrawing.PressHours;
import org.potlife.plan.list.PlanDrawing.Run;
import org.potlife.plan.list.PlanDrawing.Stretch;
import org.potlife.plan.list.PlanDrawing.Wait;
import org.potlife.planning.StaffedHours;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.UseLine;
import org.potlife.shop.Press;

/** Makes the drawing of a plan. */
final class DrawingMapping {

  private static final Comparator<OffsetDateTime> BY_INSTANT =
      Comparator.comparing(OffsetDateTime::toInstant);

  private final PlanIndex plan;
  private final PlanSheet sheet;

  DrawingMapping(PlanIndex plan) {
    this.plan = plan;
    this.sheet = plan.sheet();
  }

  PlanDrawing drawing() {
    LocalDate first = plan.dayOf(sheet.plannedAt());
    LocalDate last =
        sheet.runs().stream()
            .map(run -> plan.dayOf(run.coolAt()))
            .max(Comparator.naturalOrder())
            .filter(day -> day.isAfter(sheet.day()))
            .orElse(sheet.day());
    return new PlanDrawing(
        sheet.plannedAt(),
        first.atStartOfDay(plan.zone()).toOffsetDateTime(),
        last.plusDays(1).atStartOfDay(plan.zone()).toOffsetDateTime(),
        first.datesUntil(last.plusDays(1)).toList(),
        swatches(),
        groups(first, last.plusDays(1)),
        sheet.runs().stream()
            .sorted(Comparator.comparing(RunLine::setUpStart, BY_INSTANT))
            .map(this::run)
            .toList(),
        sheet.batches().stream()
            .map(this::batch)
            .sorted(Comparator.comparing(Batch::from, BY_INSTANT))
            .toList(),
        loads());
  }

  private Map<String, String> swatches() {
    Map<String, String> swatches = new TreeMap<>();
    Stream.concat(
            sheet.runs().stream().flatMap(run -> run.inks().stream()),
            sheet.batches().stream().map(BatchLine::ink))
        .forEach(ink -> swatches.put(ink, plan.chip(ink).swatch()));
    return swatches;
  }

  private List<Group> groups(LocalDate first, LocalDate end) {
    return plan.shop().dryers().stream()
        .map(
            dryer ->
                new Group(
                    dryer.id(),
                    plan.shop().presses().stream()
                        .filter(press -> press.dryer().equals(dryer.id()))
                        .map(press -> hours(press, first, end))
                        .toList(),
                    sheet.belts().stream()
                        .filter(belt -> belt.dryer().equals(dryer.id()))
                        .map(
                            belt ->
                                new BeltLoad(
                                    belt.from(),
                                    belt.to(),
                                    belt.speedMPerMin(),
                                    belt.areaPercent(),
                                    belt.heatPercent()))
                        .toList()))
        .filter(group -> !group.presses().isEmpty())
        .toList();
  }

  private PressHours hours(Press press, LocalDate first, LocalDate end) {
    return new PressHours(
        press.id(), press.inService(), StaffedHours.of(press, plan.zone(), first, end));
  }

  private Run run(RunLine run) {
    OffsetDateTime due = plan.findOrder(run.order()).map(Order::dueAt).orElse(null);
    return new Run(
        run.id(),
        plan.runName(run.id()),
        run.order(),
        run.customer(),
        plan.garments(run.order()),
        run.press(),
        run.lot(),
        run.lots(),
        run.quantity(),
        run.setUpStart(),
        run.printStart(),
        run.printEnd(),
        run.offBelt(),
        run.rates().stream().map(rate -> new Stretch(rate.from(), rate.to())).toList(),
        run.ratePerHour(),
        run.limitedBy(),
        run.inks(),
        run.batches(),
        run.screens(),
        due,
        due == null ? null : Duration.between(run.offBelt(), due).toMinutes(),
        plan.findLate(run.order()).map(LateLine::minutes).orElse(0L),
        sheet.frozen().contains(run.id()),
        run.waits().stream()
            .map(wait -> new Wait(wait.minutes(), WaitWords.of(plan, wait)))
            .toList());
  }

  private Batch batch(BatchLine batch) {
    return new Batch(
        batch.id(),
        batch.ink(),
        batch.massG() + batch.agentG(),
        batch.agentG() > 0,
        batch.fromStock(),
        batch.agentG() > 0 ? batch.activateFrom() : batch.mixFrom(),
        batch.readyAt(),
        batch.useBy(),
        batch.uses().stream().map(UseLine::to).max(BY_INSTANT).orElse(null),
        batch.runs());
  }

  /** What goes into and out of a cabinet. */
  private record Door(String cabinet, String step, OffsetDateTime to) {}

  private List<Load> loads() {
    Map<Door, List<ScreenLine>> screens = new LinkedHashMap<>();
    Map<Door, OffsetDateTime> since = new LinkedHashMap<>();
    for (ScreenLine screen : sheet.screens()) {
      for (StepLine step : screen.steps()) {
        if (step.drying()) {
          Door door = new Door(step.where(), step.step(), step.to());
          screens.computeIfAbsent(door, d -> new ArrayList<>()).add(screen);
          since.merge(door, step.from(), (a, b) -> a.isBefore(b) ? a : b);
        }
      }
    }
    return screens.entrySet().stream()
        .map(entry -> load(entry.getKey(), since.get(entry.getKey()), entry.getValue()))
        .sorted(Comparator.comparing(Load::from, BY_INSTANT).thenComparing(Load::cabinet))
        .toList();
  }

  private static Load load(Door door, OffsetDateTime from, List<ScreenLine> screens) {
    return new Load(
        door.cabinet(),
        door.step(),
        from,
        door.to(),
        screens.size(),
        screens.stream()
            .flatMap(screen -> screen.runs().stream())
            .filter(Objects::nonNull)
            .distinct()
            .toList());
  }
}
