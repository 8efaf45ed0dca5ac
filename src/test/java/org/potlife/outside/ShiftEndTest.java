package org.potlife.outside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.potlife.outside.BareShop.SetUpMinutes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Simulation;
import org.potlife.simulation.Trace;

/** R3 where a set-up of twenty minutes ends on the very minute at which the crew goes. */
class ShiftEndTest {

  private static final SetUpMinutes TWENTY_MINUTES = new SetUpMinutes(16, 0, 0, 0, 0, 4, 2);

  @Test
  void aSetUpThatWouldEndWithTheShiftWaitsForTheNextOne() {
    BareShop shop = BareShop.presses(TWENTY_MINUTES).shifts(0, 20, 100, 200);
    shop.run(shop.order(0, 1), 12);
    Trace.Placed placed = placed(shop);
    assertThat(placed.start()).isEqualTo(100 * 60);
    assertThat(placed.print()).isEqualTo(120 * 60);
    assertThat(placed.end()).isEqualTo(130 * 60);
  }

  @Test
  void aSetUpThatEndsWithTheLastShiftOfAllHasNoPlace() {
    BareShop shop = BareShop.presses(TWENTY_MINUTES).shifts(0, 20);
    shop.run(shop.order(0, 1), 12);
    Outcome outcome = new Simulation(shop.problem()).run(new int[][] {{0}}, new int[] {1}, null);
    assertThat(outcome).isEqualTo(new Outcome(1, 0, 0));
  }

  @Test
  void aRunWhoseSetUpEndsWithTheBreakPrintsAfterIt() {
    BareShop shop = BareShop.presses(TWENTY_MINUTES).shiftsWithPause(30, 0, 20, 50, 200);
    shop.run(shop.order(0, 1), 12);
    Trace.Placed placed = placed(shop);
    assertThat(placed.start()).isZero();
    assertThat(placed.rates()).containsExactly(new Trace.Rate(50 * 60, 60 * 60, 60));
    assertThat(placed.end()).isEqualTo(60 * 60);
  }

  @Test
  void aRunThatTheTrialPiecesCoverMayEndWithTheShift() {
    BareShop shop = BareShop.presses(TWENTY_MINUTES).shifts(0, 20, 100, 200);
    shop.run(shop.order(0, 1), 2);
    assertThat(placed(shop).end()).isEqualTo(20 * 60);
  }

  private static Trace.Placed placed(BareShop shop) {
    Trace trace = new Trace();
    new Simulation(shop.problem()).run(new int[][] {{0}}, new int[] {1}, trace);
    assertThat(trace.refused()).isEmpty();
    return trace.placed().get(0);
  }
}
