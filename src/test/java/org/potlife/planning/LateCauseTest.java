package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.shop;

import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet.LateLine;

/** Why an order is late, as people would say it. */
class LateCauseTest {

  @Test
  void theRunThatTheOrderWaitsForIsCalledByItsName() {
    Planned planned =
        Planned.plan(
            shop().press("P2", press -> press),
            order("A-1")
                .quantity(2600)
                .print("logo", "front")
                .colour("white")
                .print("year", "back")
                .colour("white")
                .due("07:00"));

    assertThat(planned.sheet().late())
        .extracting(LateLine::cause)
        .singleElement()
        .asString()
        .matches(
            "another print on its garments is not done and cool, \\d h( \\d+ min)?"
                + " behind A-1 (logo, front|year, back)");
  }

  @Test
  void hoursAreSaidAsHours() {
    // the shop's only shift begins at six, the order was due in the night
    Planned planned =
        Planned.plan(shop(), order("A-1").print("logo", "front").colour("white").due("02:00"));

    assertThat(planned.sheet().late())
        .extracting(LateLine::cause)
        .singleElement()
        .isEqualTo("the press is not staffed, 6 h");
  }
}
