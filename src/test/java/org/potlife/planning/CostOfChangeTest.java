package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.simulation.Problem;
import org.potlife.testing.SmallOrder;

/** R22: what it costs that runs stand elsewhere than published, by the plant's default prices. */
class CostOfChangeTest {

  private static final double SHIFTED_PER_HOUR = 6;
  private static final double PRESS_CHANGED = 10;
  private static final double ORDER_SWAPPED = 3;

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static double change(PlanSheet sheet) {
    return sheet.score().cost().get("change");
  }

  @Test
  void aPlanThatLeavesEveryRunWhereItIsCostsNoChange() {
    Planned before = plan(shop(), logo("A-1"), logo("A-2").inHouse("10:00"));
    assertThat(change(before.again(at(-1, "19:00")).sheet())).isZero();
  }

  @Test
  void anHoursDelayCostsLessTheFurtherAheadTheRunWas() {
    Planned before = plan(shop(), logo("A-1").inHouse("10:00"));
    // seen at 6 in the morning, four hours before, and the evening before
    double soon = change(before.again(at("06:00"), logo("A-1").inHouse("11:00")).sheet());
    double early = change(before.again(at(-1, "18:00"), logo("A-1").inHouse("11:00")).sheet());
    assertThat(soon).isPositive().isLessThan(SHIFTED_PER_HOUR);
    assertThat(early).isPositive().isLessThan(soon);
  }

  @Test
  void ofManyNextPlansTheCostIsWhatTheTwoSheetsSay() {
    int moved = 0;
    int swapped = 0;
    int displaced = 0;
    for (long seed = 0; seed < 300; seed++) {
      RandomCase shop = RandomCase.of(seed);
      RandomCase next = RandomChanges.later(shop, shop.plan(), 0);
      PlanSheet before = next.published().orElseThrow();
      PlanSheet after = next.plan();
      Set<String> free = displaced(next);
      Told told = told(before, after, free);
      // prices are rounded to 1/1000 per hour, the total to cents
      assertThat(change(after))
          .as("shop %d", seed)
          .isCloseTo(told.cost(), within(0.006 + told.cost() / 500));
      moved += told.cost() > 0 ? 1 : 0;
      swapped += told.swapped();
      displaced += free.size();
    }
    assertThat(moved).isGreaterThan(30);
    assertThat(swapped).isPositive();
    assertThat(displaced).isPositive();
  }

  /** Runs whose press does not open where they were published: they move at no cost. */
  private static Set<String> displaced(RandomCase next) {
    MappedProblem mapped = new ProblemMapper(next.request()).map();
    return IntStream.range(0, mapped.problem().movable())
        .filter(run -> mapped.problem().publishedPress()[run] == Problem.DISPLACED)
        .mapToObj(run -> mapped.runs().get(run).id())
        .collect(Collectors.toSet());
  }

  private record Told(double cost, int swapped) {}

  private static Told told(PlanSheet before, PlanSheet after, Set<String> free) {
    Map<String, RunLine> published = new HashMap<>();
    Set<String> frozen = new HashSet<>(after.frozen());
    before.runs().stream()
        .filter(run -> !run.setUpStart().isBefore(after.plannedAt()) && !frozen.contains(run.id()))
        .filter(run -> !free.contains(run.id()))
        .forEach(run -> published.put(run.id(), run));
    double cost = 0;
    int swapped = 0;
    Map<String, RunLine> lastOnPress = new HashMap<>();
    for (RunLine run :
        after.runs().stream()
            .sorted(
                Comparator.comparing((RunLine r) -> r.setUpStart().toInstant())
                    .thenComparing(r -> r.printEnd().toInstant()))
            .toList()) {
      RunLine old = published.get(run.id());
      RunLine last = lastOnPress.put(run.press(), run);
      if (old == null) {
        continue;
      }
      double hoursUntil = hours(after.plannedAt().toEpochSecond(), old);
      double shift = Math.abs(hours(run.setUpStart().toEpochSecond(), old));
      cost += SHIFTED_PER_HOUR * shift / Math.sqrt(1 + hoursUntil);
      RunLine lastBefore = last == null ? null : published.get(last.id());
      if (!old.press().equals(run.press())) {
        cost += PRESS_CHANGED;
      } else if (lastBefore != null
          && lastBefore.press().equals(run.press())
          && lastBefore.setUpStart().isAfter(old.setUpStart())) {
        cost += ORDER_SWAPPED;
        swapped++;
      }
    }
    return new Told(cost, swapped);
  }

  private static double hours(long from, RunLine run) {
    return (run.setUpStart().toEpochSecond() - from) / 3600.0;
  }
}
