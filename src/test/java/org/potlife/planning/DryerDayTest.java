package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.shop;

import org.junit.jupiter.api.Test;
import org.potlife.sheet.PlanSheet.BeltLine;
import org.potlife.testing.SmallShop;

/** What the dryers allow. */
class DryerDayTest {

  @Test
  void trialPiecesAreOnTheBeltInTheirMinutesAndNotInTheBreakBetween() {
    // the first piece would be printed from 06:15 to 06:21, the break starts at 06:18
    SmallShop shop =
        shop().press("P1", p -> p.trialPieces(20).shifts(daily("06:00-14:00", "06:18-06:48")));
    Planned plan = plan(shop, order("A-1").print("logo", "front").colour("white"));
    BeltLine first = plan.sheet().belts().get(0);
    assertThat(first.from()).isEqualTo(at("06:15"));
    // 200 pieces an hour of the 426 that go
    assertThat(first.areaPercent()).isEqualTo(47);
  }
}
