package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Audit;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.RunLine;
import org.potlife.shop.Shop;
import org.potlife.simulation.Outcome;
import org.potlife.testing.SmallOrder;

/** A plan that keeps press and order of an earlier one, made from the present. */
class KeepingTest {

  private final SearchPlanner planner = new SearchPlanner();
  private final Shop shop = shop().build();

  private static SmallOrder print(String reference, String design) {
    return order(reference).quantity(200).print(design, "front").colour("white");
  }

  private static List<Order> orders(String firstDue, String secondDue) {
    return List.of(
        print("A-1", "logo").due(firstDue).build(), print("A-2", "crest").due(secondDue).build());
  }

  private PlanRequest request(
      List<Order> orders, OffsetDateTime plannedAt, Optional<PlanSheet> published) {
    return new PlanRequest(shop, orders, DAY, plannedAt.toInstant(), published, 0, 7);
  }

  private PlanSheet solved(PlanRequest request) {
    return planner.solve(request, SolveWatch.none());
  }

  private PlanSheet keeping(PlanRequest request, PlanSheet other) {
    PlanSheet sheet = planner.keeping(request, other);
    assertThat(Audit.of(shop, request.orders(), sheet, request.published()).findings()).isEmpty();
    return sheet;
  }

  private static List<String> inOrder(PlanSheet sheet) {
    return sheet.runs().stream().map(RunLine::order).toList();
  }

  @Test
  void theRunsStandAsInTheEarlierPlanAgain() {
    List<Order> orders = orders("10:00", "18:00");
    PlanSheet earlier = solved(request(orders, at(-1, "17:00"), Optional.empty()));
    PlanSheet inForce =
        solved(request(orders("18:00", "08:00"), at(-1, "17:00"), Optional.empty()));
    assertThat(inOrder(inForce)).isNotEqualTo(inOrder(earlier));

    PlanSheet back = keeping(request(orders, at(-1, "17:00"), Optional.of(inForce)), earlier);

    assertThat(inOrder(back)).isEqualTo(inOrder(earlier));
    assertThat(back.runs()).extracting(RunLine::press).containsExactlyElementsOf(presses(earlier));
  }

  private static List<String> presses(PlanSheet sheet) {
    return sheet.runs().stream().map(RunLine::press).toList();
  }

  @Test
  void whatHasBegunSinceStaysAndANewOrderIsPutIn() {
    List<Order> orders = orders("10:00", "18:00");
    PlanSheet earlier = solved(request(orders, at(-1, "17:00"), Optional.empty()));
    PlanSheet inForce =
        solved(request(orders("18:00", "08:00"), at(-1, "17:00"), Optional.empty()));
    List<Order> later = new ArrayList<>(orders);
    later.add(print("A-3", "badge").due("20:00").build());

    PlanSheet back =
        keeping(request(later, inForce.runs().get(0).printStart(), Optional.of(inForce)), earlier);

    assertThat(back.runs().get(0)).isEqualTo(inForce.runs().get(0));
    assertThat(back.frozen()).contains(inForce.runs().get(0).id());
    assertThat(inOrder(back)).contains("A-1", "A-2", "A-3");
  }

  @Test
  void aSearchThatBeginsAnewIsNeverWorseThanWhatItHadFound() {
    PlanRequest demo = RandomCase.of(3).request();
    PlanSheet found = new SearchPlanner().solve(RandomCase.of(3).searched().request(), brief());
    PlanSheet again = planner.solve(demo, Optional.of(found), SolveWatch.none());
    // a run more that has a place counts for more than being later
    assertThat(come(again)).isLessThanOrEqualTo(come(found));
  }

  private static Outcome come(PlanSheet sheet) {
    return new Outcome(sheet.score().unplaced(), sheet.score().weightedLateMinutes(), 0);
  }

  private static SolveWatch brief() {
    int[] asked = {0};
    return new SolveWatch() {
      @Override
      public void improved(Progress progress) {
        // only the plan counts
      }

      @Override
      public boolean stopRequested() {
        return asked[0]++ > 20;
      }
    };
  }
}
