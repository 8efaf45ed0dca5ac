package org.potlife.plan.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.potlife.ink.BatchCutting;
import org.potlife.ink.BatchCutting.Need;
import org.potlife.ink.InkSystem;
import org.potlife.plan.list.ActivationList.Cutting;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.sheet.PlanSheet.UseLine;

/**
 * What the batches of a day lose, against what the same runs at the same times would lose with
 * batches cut by a rule of thumb. Lost is activated ink that no garment gets: reserve, rounding,
 * what stays on the screens, and what dies in the bucket. Masses are without agent.
 *
 * <p>Pot life and container bind the rules of thumb too: where they force it, a batch is split. The
 * mixers' time does not bind them, so they look rather better here than in the shop.
 */
final class CuttingComparison {

  private final PlanIndex plan;
  private final List<BatchLine> made;

  private CuttingComparison(PlanIndex plan, LocalDate day) {
    this.plan = plan;
    made =
        plan.sheet().batches().stream()
            .filter(b -> b.agentG() > 0 && plan.dayOf(b.activatedAt()).equals(day))
            .filter(b -> cutting(plan, b.ink()).isPresent())
            .toList();
  }

  /** The plan first; empty on a day on which nothing is activated. */
  static List<Cutting> of(PlanIndex plan, LocalDate day) {
    CuttingComparison comparison = new CuttingComparison(plan, day);
    return comparison.made.isEmpty() ? List.of() : comparison.all();
  }

  private List<Cutting> all() {
    long printG = needs().values().stream().flatMap(List::stream).mapToLong(Need::printG).sum();
    List<Integer> masses = made.stream().map(BatchLine::massG).toList();
    return List.of(
        cutting("plan", masses, printG),
        cutting("batch-per-run", perRun(), printG),
        cutting("batch-per-ink", perInk(BatchCutting::knowingTheClock), printG),
        cutting("whole-day-at-once", perInk(BatchCutting::allAtOnce), printG));
  }

  private static Cutting cutting(String rule, List<Integer> masses, long printG) {
    long massG = masses.stream().mapToLong(Integer::intValue).sum();
    return new Cutting(rule, masses.size(), massG, massG - printG);
  }

  private List<Integer> perInk(BiFunction<BatchCutting, List<Need>, List<Integer>> rule) {
    Map<String, List<Need>> byInk = new LinkedHashMap<>();
    needs().forEach((run, needs) -> join(byInk, run.ink(), needs));
    List<Integer> masses = new ArrayList<>();
    byInk.forEach((ink, needs) -> masses.addAll(rule.apply(cuttingOf(ink), needs)));
    return masses;
  }

  private List<Integer> perRun() {
    List<Integer> masses = new ArrayList<>();
    needs().forEach((run, n) -> masses.addAll(cuttingOf(run.ink()).knowingTheClock(n)));
    return masses;
  }

  private record InkOfRun(String ink, String run) {}

  private Map<InkOfRun, List<Need>> needs() {
    Map<InkOfRun, List<Need>> needs = new LinkedHashMap<>();
    for (BatchLine batch : made) {
      for (UseLine use : batch.uses()) {
        join(needs, new InkOfRun(batch.ink(), use.run()), List.of(need(use)));
      }
    }
    return needs;
  }

  private static Need need(UseLine use) {
    return new Need(
        use.from().toEpochSecond(), use.to().toEpochSecond(), use.printG(), use.chargeG());
  }

  private static <K> void join(Map<K, List<Need>> map, K key, Collection<Need> needs) {
    map.computeIfAbsent(key, k -> new ArrayList<>()).addAll(needs);
  }

  private BatchCutting cuttingOf(String ink) {
    return cutting(plan, ink).orElseThrow();
  }

  /** Empty when the shop no longer has the ink. */
  private static Optional<BatchCutting> cutting(PlanIndex plan, String ink) {
    return plan.findInk(ink)
        .flatMap(known -> plan.shop().findInkSystem(known.system()))
        .map(system -> cutting(plan, system));
  }

  private static BatchCutting cutting(PlanIndex plan, InkSystem system) {
    var room = plan.shop().inkRoom();
    return new BatchCutting(
        system.standMinutes() * 60,
        system.potLifeMinutes() * 60,
        room.containerG(),
        room.reserveG(),
        room.scaleStepG());
  }
}
