package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.DAY;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Audit;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.Shift;
import org.potlife.shop.Shop;
import org.potlife.testing.SmallOrder;

/** Questions about the plan in force: answered by a plan that keeps all rules, nothing is kept. */
class WhatIfTest {

  private final Planner planner = new SearchPlanner();
  private final Shop shop = shop().build();

  private static Order logo(String reference, String due) {
    return print(reference).due(due).build();
  }

  private static SmallOrder print(String reference) {
    return order(reference).quantity(300).print("logo", "front").colour("white");
  }

  private PlanRequest inForce(List<Order> orders) {
    PlanRequest first = request(orders, Optional.empty());
    return request(orders, Optional.of(planner.solve(first, SolveWatch.none())));
  }

  private PlanRequest request(List<Order> orders, Optional<PlanSheet> published) {
    return new PlanRequest(shop, orders, DAY, at(-1, "18:00").toInstant(), published, 0, 7);
  }

  private WhatIf.Answer ask(PlanRequest request, WhatIf.Question question) {
    WhatIf.Answer answer = WhatIf.of(planner, request, question);
    PlanRequest under = WhatIf.under(request, question);
    assertThat(Audit.of(under.shop(), under.orders(), answer.plan(), under.published()).findings())
        .isEmpty();
    return answer;
  }

  @Test
  void anOrderThatWouldBeDueBeforeItCanBeDoneBecomesLate() {
    PlanRequest request = inForce(List.of(logo("A-1", "16:00")));
    WhatIf.Answer answer = ask(request, new WhatIf.DueAt("A-1", at("06:00")));
    assertThat(answer.becomeLate()).containsExactly("A-1");
    assertThat(answer.becomeOnTime()).isEmpty();
    assertThat(answer.weightedLateMinutesNow()).isZero();
    assertThat(answer.weightedLateMinutesThen()).isPositive();
  }

  @Test
  void anOrderThatGetsMoreTimeIsOnTime() {
    PlanRequest request = inForce(List.of(logo("A-1", "06:00")));
    WhatIf.Answer answer = ask(request, new WhatIf.DueAt("A-1", at("18:00")));
    assertThat(answer.becomeOnTime()).containsExactly("A-1");
    assertThat(answer.changes().get(0).minutesNow()).isPositive();
    assertThat(answer.changes().get(0).minutesThen()).isZero();
  }

  @Test
  void ifThePressWereDownAllDayTheOrderWouldBeLate() {
    PlanRequest request = inForce(List.of(logo("A-1", "16:00")));
    WhatIf.Answer answer = ask(request, new WhatIf.PressDown("P1", at("00:00"), at("23:00")));
    assertThat(answer.becomeLate()).containsExactly("A-1");
    assertThat(answer.plan().runs()).allMatch(run -> !run.setUpStart().isBefore(at("23:00")));
  }

  @Test
  void anOrderThatWouldLoseItsPlaceIsNotSaidToBeOnTime() {
    PlanRequest request = inForce(List.of(logo("A-1", "06:00")));
    WhatIf.Answer answer = ask(request, new WhatIf.PressDown("P1", at("00:00"), at(90, "00:00")));
    assertThat(answer.losePlace()).containsExactly("A-1");
    assertThat(answer.becomeOnTime()).isEmpty();
    assertThat(answer.unplacedThen()).isEqualTo(1);
    assertThat(answer.changes().get(0).minutesNow()).isPositive();
  }

  @Test
  void aPlanThatIsAskedLaterIsFirstBroughtToThePresent() {
    PlanRequest evening = inForce(List.of(logo("A-1", "16:00"), logo("A-2", "16:00")));
    PlanRequest request =
        new PlanRequest(
            shop, evening.orders(), DAY, at("05:00").toInstant(), evening.published(), 0, 7);
    WhatIf.Answer answer = ask(request, new WhatIf.DueAt("A-2", at("17:00")));
    assertThat(answer.inForce().plannedAt()).isEqualTo(at("05:00"));
    assertThat(answer.inForce().runs())
        .extracting(run -> run.setUpStart())
        .containsExactlyElementsOf(
            evening.published().orElseThrow().runs().stream()
                .map(run -> run.setUpStart())
                .toList());
    assertThat(answer.costThen()).isEqualTo(answer.costNow());
  }

  @Test
  void withAFurtherShiftLessIsLate() {
    PlanRequest request =
        inForce(List.of(logo("A-1", "08:00"), print("A-2").quantity(6200).due("22:00").build()));
    Shift early =
        new Shift(List.of(DAY.getDayOfWeek()), LocalTime.of(2, 0), LocalTime.of(6, 0), null, true);
    WhatIf.Answer answer = ask(request, new WhatIf.FurtherShift("P1", early));
    assertThat(answer.weightedLateMinutesNow()).isPositive();
    assertThat(answer.weightedLateMinutesThen()).isLessThan(answer.weightedLateMinutesNow());
  }

  @Test
  void whatTheShopDoesNotHaveIsSaid() {
    PlanRequest request = inForce(List.of(logo("A-1", "16:00")));
    assertThatThrownBy(() -> WhatIf.of(planner, request, new WhatIf.DueAt("A-9", at("16:00"))))
        .hasMessage("no open order A-9");
    assertThatThrownBy(
            () -> WhatIf.of(planner, request, new WhatIf.PressDown("P9", at("06:00"), at("07:00"))))
        .hasMessage("no press P9");
  }
}
