package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.audited;
import static org.potlife.testing.SmallShop.at;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** How a search begins, goes on and ends. */
class SearchPlannerTest {

  /** Remembers what it was told, and stops the search after so many messages. */
  private static final class Memory implements SolveWatch {

    private final List<Progress> told = new ArrayList<>();
    private final int stopAfter;

    Memory(int stopAfter) {
      this.stopAfter = stopAfter;
    }

    @Override
    public void improved(Progress progress) {
      told.add(progress);
    }

    @Override
    public boolean stopRequested() {
      return told.size() >= stopAfter;
    }
  }

  private static PlanRequest demo(int seconds) {
    return new PlanRequest(
        DemoPlant.shop(),
        DemoPlant.orders(SmallShop.DAY),
        SmallShop.DAY,
        at(-1, "14:00").toInstant(),
        Optional.empty(),
        seconds,
        7);
  }

  @Test
  void aSearchThatIsStoppedKeepsTheBest() {
    Memory memory = new Memory(2);
    long begun = System.nanoTime();
    PlanSheet sheet = audited(demo(120), memory).sheet();
    assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(60));
    SolveWatch.Progress last = memory.told.get(memory.told.size() - 1);
    assertThat(sheet.score().weightedLateMinutes()).isEqualTo(last.weightedLateMinutes());
    assertThat(sheet.score().unplaced()).isEqualTo(last.unplaced());
  }

  @Test
  void everyMessageIsABetterPlan() {
    Memory memory = new Memory(40);
    audited(demo(2), memory);
    for (int i = 1; i < memory.told.size(); i++) {
      SolveWatch.Progress before = memory.told.get(i - 1);
      SolveWatch.Progress now = memory.told.get(i);
      assertThat(now.unplaced()).isLessThanOrEqualTo(before.unplaced());
      if (now.unplaced() == before.unplaced()) {
        assertThat(now.weightedLateMinutes()).isLessThanOrEqualTo(before.weightedLateMinutes());
      }
    }
  }

  @Test
  void withoutSearchTheSameRequestGivesTheSamePlan() {
    assertThat(audited(demo(0), SolveWatch.none()).sheet())
        .isEqualTo(audited(demo(0), SolveWatch.none()).sheet());
  }

  @Test
  void aThousandOrdersHaveAFirstPlanAndABetterOne() {
    SmallShop shop =
        SmallShop.shop()
            .inkRoom(i -> i.mixers(3))
            .screenRoom(s -> s.placesOfEachKind(3))
            .cabinet("C2", c -> c.frames(40));
    for (int press = 1; press <= 6; press++) {
      String dryer = "D" + (press + 1) / 2;
      shop.press("P" + press, p -> p.dryer(dryer)).dryer(dryer, d -> d);
    }
    List<Order> orders = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      SmallOrder order =
          SmallOrder.order("A-" + (1000 + i))
              .quantity(20 + i * 37 % 180)
              .priority(1 + i % 4)
              .due(1 + i * 13 % 3, "16:00")
              .print("design" + i * 7 % 300, "front");
      orders.add((i % 3 == 0 ? order.discharge() : order).build());
    }
    // stopped as soon as there is a better one: how soon that is, is the machine's
    Memory memory = new Memory(2);
    PlanRequest request =
        new PlanRequest(
            shop.build(),
            orders,
            SmallShop.DAY,
            at(-1, "14:00").toInstant(),
            Optional.empty(),
            60,
            7);
    PlanSheet sheet = audited(request, memory).sheet();
    assertThat(sheet.runs()).hasSize(1000);
    assertThat(memory.told.get(0).weightedLateMinutes()).isPositive();
    assertThat(sheet.score().weightedLateMinutes())
        .isLessThan(memory.told.get(0).weightedLateMinutes());
  }
}
