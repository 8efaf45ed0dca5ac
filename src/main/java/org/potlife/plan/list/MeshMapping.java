package org.potlife.plan.list;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.potlife.plan.list.ScreenList.Competitor;
import org.potlife.plan.list.ScreenList.MeshUse;
import org.potlife.screen.FrameStock;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.ScreenLine;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.sheet.PlanSheet.WaitLine;

/**
 * How many frames of each mesh a plan uses on a day (R8): a made screen holds its frame from the
 * start of degreasing until its set is taken down and reclaimed; a kept stencil all the time.
 */
final class MeshMapping {

  private record Held(ScreenLine screen, OffsetDateTime from, OffsetDateTime to) {

    private boolean at(OffsetDateTime moment) {
      return !from.isAfter(moment) && to.isAfter(moment);
    }
  }

  private final PlanIndex plan;

  MeshMapping(PlanIndex plan) {
    this.plan = plan;
  }

  /** Meshes of which a screen is made on the day, in the order of the set-up. */
  List<MeshUse> meshes(LocalDate day) {
    List<MeshUse> meshes = new ArrayList<>();
    for (FrameStock stock : plan.shop().screenRoom().frames()) {
      List<Held> held =
          plan.sheet().screens().stream()
              .filter(s -> !s.kept() && !s.steps().isEmpty())
              .filter(s -> s.meshPerCm() == stock.meshPerCm() && s.threadUm() == stock.threadUm())
              .map(this::held)
              .toList();
      if (held.stream().anyMatch(h -> plan.touches(day, h.from(), h.to()))) {
        meshes.add(mesh(day, stock, held));
      }
    }
    return meshes;
  }

  private Held held(ScreenLine s) {
    long set = plan.sheet().screens().stream().filter(o -> o.runs().equals(s.runs())).count();
    double reclaimMinutes = plan.shop().screenRoom().stages().reclaim() * set;
    return new Held(
        s,
        s.steps().stream().map(StepLine::from).min(inTime()).orElseThrow(),
        s.releasedAt().plusSeconds(Math.round(60 * reclaimMinutes)));
  }

  private MeshUse mesh(LocalDate day, FrameStock stock, List<Held> held) {
    int kept =
        (int)
            plan.shop().screenRoom().kept().stream()
                .filter(k -> k.meshPerCm().equals(stock.meshPerCm()))
                .filter(k -> k.threadUm().equals(stock.threadUm()))
                .count();
    OffsetDateTime mostFrom = day.atStartOfDay(plan.zone()).toOffsetDateTime();
    long most = inUse(held, mostFrom);
    for (OffsetDateTime taken : held.stream().map(Held::from).sorted(inTime()).toList()) {
      if (plan.dayOf(taken).equals(day) && inUse(held, taken) > most) {
        mostFrom = taken;
        most = inUse(held, taken);
      }
    }
    boolean scarce = kept + most >= stock.count();
    return new MeshUse(
        stock.meshPerCm(),
        stock.threadUm(),
        stock.count(),
        kept,
        kept + (int) most,
        mostFrom.atZoneSameInstant(plan.zone()).toOffsetDateTime(),
        scarce ? holders(held, mostFrom) : List.of(),
        scarce ? competitors(held, mostFrom) : List.of());
  }

  private static long inUse(List<Held> held, OffsetDateTime moment) {
    return held.stream().filter(h -> h.at(moment)).count();
  }

  private List<String> holders(List<Held> held, OffsetDateTime moment) {
    return held.stream()
        .filter(h -> h.at(moment))
        .map(h -> h.screen().run())
        .distinct()
        .map(plan::runName)
        .toList();
  }

  /** Runs that take frames after the moment and wait for their screens. */
  private List<Competitor> competitors(List<Held> held, OffsetDateTime moment) {
    List<Competitor> competitors = new ArrayList<>();
    for (String id : held.stream().map(h -> h.screen().run()).distinct().toList()) {
      RunLine run = plan.getRun(id);
      OffsetDateTime taken =
          held.stream()
              .filter(h -> h.screen().run().equals(id))
              .map(Held::from)
              .min(inTime())
              .orElseThrow();
      long minutes =
          run.waits().stream()
              .filter(wait -> wait.cause().equals("screens"))
              .mapToLong(WaitLine::minutes)
              .sum();
      if (minutes > 0 && taken.isAfter(moment)) {
        competitors.add(new Competitor(plan.runName(id), run.press(), minutes, taken));
      }
    }
    competitors.sort(Comparator.comparing(Competitor::framesFrom, inTime()));
    return competitors;
  }

  private static Comparator<OffsetDateTime> inTime() {
    return Comparator.comparing(OffsetDateTime::toInstant);
  }
}
