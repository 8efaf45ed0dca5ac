package org.potlife.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.screen.Cabinet;
import org.potlife.shop.Shop;

class RoomStateTest {

  private final Shop shop = PlanFixture.shop();
  private final Cabinet first = shop.screenRoom().cabinets().get(0);

  @Test
  void aCabinetThatWasLookedAtDriesWithTheFactorItHasShown() {
    RoomState state =
        new RoomState(
            List.of(), List.of(), List.of(), List.of(new CabinetAirflow(first.id(), 1.657, 3)));

    List<Cabinet> standing = state.standing(shop).screenRoom().cabinets();

    assertThat(standing.get(0)).isEqualTo(first.withAirflow(1.657));
    assertThat(standing.subList(1, standing.size()))
        .isEqualTo(shop.screenRoom().cabinets().subList(1, standing.size()));
  }

  @Test
  void takenTwiceItIsTheSame() {
    RoomState state =
        new RoomState(
            List.of(), List.of(), List.of(), List.of(new CabinetAirflow(first.id(), 1.657, 3)));

    assertThat(state.standing(state.standing(shop))).isEqualTo(state.standing(shop));
  }

  @Test
  void nothingReportedLeavesTheSetUpAsItIs() {
    assertThat(RoomState.NOTHING.standing(shop)).isEqualTo(shop);
  }
}
