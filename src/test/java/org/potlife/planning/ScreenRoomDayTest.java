package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.daily;
import static org.potlife.testing.SmallShop.shop;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.potlife.screen.Emulsion;
import org.potlife.screen.StageMinutes;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/** What the screen room makes when. */
class ScreenRoomDayTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  @Test
  void aStageThatTakesNoMinutesIsDoneWhenTheScreenArrives() {
    SmallShop shop =
        shop()
            .screenRoom(
                s ->
                    s.shifts(daily("06:00-14:00"))
                        .stages(new StageMinutes(0.0, 3.0, 3.0, 4.0, 2.0, 4.0, 12.0)));
    Planned plan = plan(shop, logo("A-1"));
    assertThat(plan.step("logo-1", "degrease").to()).isEqualTo(at(-1, "18:00"));
    assertThat(plan.step("logo-1", "dry-degreased").from()).isEqualTo(at(-1, "18:00"));
    assertThat(plan.step("logo-1", "coat").from()).isEqualTo(at("06:00"));
  }

  @Test
  void aScreenIsCoatedSoLateThatItIsExposedWithinItsShelfLife() {
    SmallShop shop =
        shop()
            .screenRoom(
                s ->
                    s.shifts(daily("06:00-19:10"))
                        .emulsion(new Emulsion("fresh", null, null, null, 1)));
    Planned plan = plan(shop, logo("A-1"));
    // degreased and dry the evening before, but coated only in the morning
    assertThat(plan.step("logo-1", "dry-degreased").to()).isBefore(at(-1, "19:10"));
    assertThat(plan.step("logo-1", "coat").from()).isAfterOrEqualTo(at("06:00"));
    assertThat(
            Duration.between(
                plan.step("logo-1", "dry-coated").to(), plan.step("logo-1", "expose").from()))
        .isLessThanOrEqualTo(Duration.ofHours(1));
  }

  @Test
  void aKeptStencilMayWaitForAnOrderThatHasNoPlaceYet() {
    SmallShop shop = shop().kept("logo", "white");
    Planned plan =
        plan(
            shop,
            logo("A-1").inHouse(100, "06:00"),
            order("A-2").print("logo", "front").colour("white").colour("brick"));
    assertThat(plan.unplaced().order()).isEqualTo("A-1");
    assertThat(plan.run("A-2").screens()).hasSize(2);
  }

  @Test
  void screensForTheMorningAreMadeTheEveningBefore() {
    Planned plan = plan(shop(), logo("A-1"));
    assertThat(plan.screen("logo-1").readyAt()).isBefore(at(-1, "22:00"));
    assertThat(plan.run("A-1").setUpStart()).isEqualTo(at("06:00"));
  }

  @Test
  void aHumidNightStopsTheDrying() {
    SmallShop shop = shop().cabinet("C1", c -> c.climate("06:00", 22, 50).climate("20:00", 18, 70));
    Planned plan = plan(shop, logo("A-1"));
    assertThat(plan.step("logo-1", "dry-coated").from()).isBefore(at(-1, "20:00"));
    assertThat(plan.step("logo-1", "dry-coated").to()).isBetween(at("06:00"), at("07:00"));
    assertThat(plan.run("A-1").waits()).extracting("cause").contains("screens");
  }
}
