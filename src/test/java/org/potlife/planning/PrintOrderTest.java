package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.potlife.order.Order;
import org.potlife.planning.Instructions.RunWish;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.LateLine;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** A run that the planner puts before another one; every plan is audited. */
class PrintOrderTest {

  private static final String FRONT = ":logo:front:1";

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static Instructions wishes(RunWish... wishes) {
    return new Instructions(null, List.of(wishes), null);
  }

  private static RunWish before(String order, String other) {
    return new RunWish(order + FRONT, "P1", null, other + FRONT);
  }

  private static PlanRequest request(SmallShop shop, int seconds, SmallOrder... orders) {
    List<Order> built = Arrays.stream(orders).map(SmallOrder::build).toList();
    return new PlanRequest(
        shop.build(), built, DAY, at(-1, "18:00").toInstant(), Optional.empty(), seconds, 7);
  }

  private static Planned plan(PlanRequest request) {
    return Planned.audited(request, SolveWatch.none());
  }

  private static OffsetDateTime start(Planned planned, String order) {
    return planned.run(order).setUpStart();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void theRunThatIsDueLaterComesFirstWhenThePlannerPutsItThere(int seconds) {
    // given two runs on one press, the second of which would be late behind the first
    PlanRequest request =
        request(shop(), seconds, logo("A-1").due("09:00"), logo("B-2").due(3, "18:00"));
    Planned free = plan(request);
    assertThat(start(free, "A-1")).isBefore(start(free, "B-2"));

    // when the planner puts it before
    Planned put = plan(request.under(wishes(before("B-2", "A-1"))));

    // then both are printed, in that order
    assertThat(start(put, "B-2")).isBefore(start(put, "A-1"));
  }

  @Test
  void anOrderThatIsLateForItSaysSo() {
    PlanRequest request =
        request(shop(), 0, logo("A-1").due("06:45"), logo("B-2").quantity(900).due(3, "18:00"));

    Planned put = plan(request.under(wishes(before("B-2", "A-1"))));

    assertThat(put.sheet().late())
        .filteredOn(late -> late.order().equals("A-1"))
        .extracting(LateLine::cause)
        .containsExactly("the planner wants B-2 logo, front before it on P1");
  }

  @Test
  void bothGoOnThePressThatIsNamed() {
    SmallShop two = shop().press("P2", press -> press);

    Planned put =
        plan(request(two, 1, logo("A-1"), logo("B-2")).under(wishes(before("B-2", "A-1"))));

    assertThat(put.sheet().runs()).extracting(RunLine::press).containsOnly("P1");
  }

  @Test
  void theSearchKeepsAWholeRowInTheOrderThatThePlannerWants() {
    // given ten runs, due in this order
    SmallOrder[] orders = new SmallOrder[10];
    List<RunWish> wishes = new ArrayList<>();
    for (int i = 0; i < orders.length; i++) {
      orders[i] = logo("O-" + i).due(i, "12:00");
    }
    // when each is put before the one that is due earlier
    for (int i = 1; i < orders.length; i++) {
      wishes.add(before("O-" + i, "O-" + (i - 1)));
    }
    Planned put =
        plan(
            request(shop().press("P2", press -> press), 1, orders)
                .under(new Instructions(null, wishes, null)));

    // then the row is turned round
    assertThat(
            put.sheet().runs().stream()
                .sorted(Comparator.comparing(RunLine::setUpStart))
                .map(RunLine::order))
        .containsExactly("O-9", "O-8", "O-7", "O-6", "O-5", "O-4", "O-3", "O-2", "O-1", "O-0");
  }

  @Test
  void aPlanThatFollowsThePublishedOneIsTurnedRoundToo() {
    PlanRequest request = request(shop(), 0, logo("A-1").due("09:00"), logo("B-2").due("18:00"));
    PlanSheet published = plan(request).sheet();

    Planned next = plan(request.from(published).under(wishes(before("B-2", "A-1"))));

    assertThat(start(next, "B-2")).isBefore(start(next, "A-1"));
  }

  @Test
  void theListedOrderOfThePrintsOnTheSameGarmentsStandsAboveIt() {
    SmallOrder twoPrints =
        order("A-1")
            .printsInListedOrder()
            .print("logo", "front")
            .colour("white")
            .print("crest", "back")
            .colour("white");

    Planned put =
        plan(
            request(shop(), 0, twoPrints)
                .under(wishes(new RunWish("A-1:crest:back:1", "P1", null, "A-1:logo:front:1"))));

    assertThat(put.sheet().unplaced()).isEmpty();
    assertThat(
            put.sheet().runs().stream()
                .sorted(Comparator.comparing(RunLine::setUpStart))
                .map(RunLine::design))
        .containsExactly("logo", "crest");
  }

  @Test
  void aRunThatThereIsNoMoreIsPassedOver() {
    PlanRequest request = request(shop(), 0, logo("A-1"), logo("B-2"));

    Planned put = plan(request.under(wishes(before("B-2", "X-9"), before("X-8", "A-1"))));

    assertThat(put.sheet().runs()).hasSize(2);
    assertThat(put.sheet().unplaced()).isEmpty();
  }
}
