package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.order.Order;
import org.potlife.planning.Instructions.InLots;
import org.potlife.planning.Instructions.RunWish;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.sheet.PlanSheet.UnplacedLine;
import org.potlife.sheet.PlanSheet.WaitLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** What the planner decides himself, the plan follows; every plan is audited. */
class InstructionsTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static Planned plan(SmallShop shop, Instructions instructions, SmallOrder... orders) {
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    PlanRequest request =
        new PlanRequest(
            shop.build(), built, DAY, at(-1, "18:00").toInstant(), Optional.empty(), 0, 7);
    return Planned.audited(request.under(instructions), SolveWatch.none());
  }

  private static Instructions run(RunWish wish) {
    return new Instructions(null, List.of(wish), null);
  }

  @Test
  void anOrderThatIsHeldBackHasNoRunAndSaysWhy() {
    Planned planned =
        plan(shop(), new Instructions(List.of("A-1"), null, null), logo("A-1"), logo("A-2"));
    assertThat(planned.runs("A-1")).isEmpty();
    assertThat(planned.runs("A-2")).isNotEmpty();
    assertThat(planned.sheet().unplaced())
        .extracting(UnplacedLine::order, UnplacedLine::cause)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("A-1", "the planner holds the order back"));
  }

  @Test
  void aRunGoesOnThePressThatThePlannerNames() {
    SmallShop two = shop().press("P2", press -> press);
    for (String press : List.of("P1", "P2")) {
      Planned planned = plan(two, run(new RunWish("A-1:logo:front:1", press, null)), logo("A-1"));
      assertThat(planned.run("A-1").press()).isEqualTo(press);
    }
  }

  @Test
  void aRunStartsNoEarlierThanThePlannerWantsAndSaysSo() {
    Planned planned =
        plan(shop(), run(new RunWish("A-1:logo:front:1", null, at("10:00"))), logo("A-1"));
    assertThat(planned.run("A-1").firstPieceAt()).isAfterOrEqualTo(at("10:00"));
    assertThat(planned.run("A-1").waits())
        .extracting(WaitLine::behind)
        .contains(Instructions.BEHIND);
  }

  @Test
  void anOrderIsSplitIntoAsManyLotsAsThePlannerWants() {
    Planned planned =
        plan(
            shop(),
            new Instructions(null, null, List.of(new InLots("A-1", 3))),
            logo("A-1").quantity(90));
    assertThat(planned.runs("A-1")).extracting(RunLine::lots).containsExactly(3, 3, 3);
  }

  @Test
  void whatThereIsNoMoreIsPassedOver() {
    Instructions old =
        new Instructions(
            List.of("X-9"),
            List.of(
                new RunWish("X-9:gone:front:1", "P1", null),
                new RunWish("A-1:logo:front:1", "P9", null)),
            List.of(new InLots("X-9", 4)));
    Planned planned = plan(shop(), old, logo("A-1"));
    assertThat(planned.sheet().runs())
        .isEqualTo(plan(shop(), Instructions.NONE, logo("A-1")).sheet().runs());
  }
}
