package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.planning.Planned.plan;
import static org.potlife.testing.SmallOrder.order;
import static org.potlife.testing.SmallShop.at;
import static org.potlife.testing.SmallShop.shop;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.room.BrokenScreen;
import org.potlife.room.ClimateReading;
import org.potlife.room.EmulsionReading;
import org.potlife.room.RoomState;
import org.potlife.sheet.PlanSheet.StepLine;
import org.potlife.testing.SmallOrder;
import org.potlife.testing.SmallShop;

/**
 * What the screen room reports in the evening before the day, and what the next plan makes of it.
 * The plan before is from 18:00; every plan has passed the audit.
 */
class ScreenReportsTest {

  private static SmallOrder logo(String reference) {
    return order(reference).print("logo", "front").colour("white");
  }

  private static SmallOrder twoColours(String reference) {
    return order(reference).print("badge", "front").colour("white").colour("brick");
  }

  private static RoomState looked(String screen, OffsetDateTime at, boolean dry) {
    return new RoomState(List.of(), List.of(new EmulsionReading(screen, at, dry)), List.of());
  }

  private static RoomState read(String place, OffsetDateTime at, double t, double humidity) {
    return new RoomState(List.of(new ClimateReading(place, at, t, humidity)), List.of(), List.of());
  }

  private static RoomState broken(String screen, OffsetDateTime at) {
    return new RoomState(List.of(), List.of(), List.of(new BrokenScreen(screen, at)));
  }

  private static OffsetDateTime middle(StepLine step) {
    long half = (step.to().toEpochSecond() - step.from().toEpochSecond()) / 2;
    return step.from().plusSeconds(half);
  }

  @Test
  void aScreenThatIsStillWetIsExposedLaterAndItsDryingBeginsAnew() {
    Planned evening = plan(shop(), logo("A-1"));
    StepLine drying = evening.step("logo-1", "dry-coated");
    OffsetDateTime look = drying.to().minusSeconds(1);

    Planned next = evening.again(drying.to().plusMinutes(5), looked("logo-1", look, false));

    StepLine still = next.step("logo-1", "dry-coated");
    assertThat(still.from()).isEqualTo(drying.from());
    // all of it again from the look on; the first time some minutes went into gathering the load
    assertThat(still.to()).isAfter(look.plusMinutes(30));
    assertThat(next.step("logo-1", "expose").from()).isAfterOrEqualTo(still.to());
  }

  @Test
  void aScreenThatIsFoundDryEarlierIsExposedEarlier() {
    Planned evening = plan(shop(), logo("A-1"));
    StepLine drying = evening.step("logo-1", "dry-coated");
    OffsetDateTime look = middle(drying);

    Planned next = evening.again(look.plusMinutes(1), looked("logo-1", look, true));

    assertThat(next.step("logo-1", "dry-coated").to()).isEqualTo(look);
    assertThat(next.step("logo-1", "expose").from())
        .isBefore(evening.step("logo-1", "expose").from());
  }

  @Test
  void aHumidReadingStopsTheDryingUntilTheForecastsNextPeriod() {
    SmallShop shop = shop().cabinet("C1", c -> c.climate("06:00", 25, 40).climate("23:00", 25, 40));
    Planned evening = plan(shop, logo("A-1"));
    StepLine drying = evening.step("logo-1", "dry-coated");
    OffsetDateTime reading = drying.from().plusMinutes(1);

    Planned next = evening.again(reading.plusMinutes(1), read("C1", reading, 25, 75));

    assertThat(next.step("logo-1", "dry-coated").to()).isAfter(at(-1, "23:00"));
    assertThat(next.run("A-1").setUpStart()).isAfterOrEqualTo(next.screen("logo-1").readyAt());
  }

  @Test
  void aReadingLikeTheForecastMovesNothing() {
    SmallShop shop = shop().cabinet("C1", c -> c.climate("06:00", 25, 40));
    Planned evening = plan(shop, logo("A-1"));
    OffsetDateTime reading = evening.step("logo-1", "dry-coated").from().plusMinutes(1);

    Planned next = evening.again(reading.plusMinutes(1), read("C1", reading, 25, 40));

    assertThat(next.screen("logo-1").steps()).isEqualTo(evening.screen("logo-1").steps());
  }

  @Test
  void aDryScreenThatGotWetInStoreIsDriedAgainBeforeItIsExposed() {
    SmallShop shop = shop().screenRoom(s -> s.shifts(SmallShop.daily("06:00-19:20")));
    Planned evening = plan(shop, logo("A-1"));
    StepLine drying = evening.step("logo-1", "dry-coated");
    assertThat(evening.step("logo-1", "expose").from()).isAfterOrEqualTo(at("06:00"));
    OffsetDateTime reading = drying.to().plusMinutes(30);

    Planned next =
        evening.again(reading.plusMinutes(1), read(ClimateReading.STORE, reading, 22, 80));

    List<StepLine> dried =
        next.screen("logo-1").steps().stream()
            .filter(step -> step.step().equals("dry-coated"))
            .toList();
    assertThat(dried).hasSize(2);
    assertThat(dried.get(1).from()).isAfter(reading);
    assertThat(next.step("logo-1", "expose").from()).isAfterOrEqualTo(dried.get(1).to());
  }

  @Test
  void ofABrokenSetOnlyTheBrokenScreenIsMadeAnew() {
    Planned evening = plan(shop(), twoColours("A-1"));
    OffsetDateTime found = evening.step("badge-1", "wash-out").to().plusMinutes(1);

    Planned next = evening.again(found.plusMinutes(1), broken("badge-1", found));

    assertThat(next.run("A-1").screens()).contains("badge-2").doesNotContain("badge-1");
    assertThat(next.screen("badge-2").steps()).isEqualTo(evening.screen("badge-2").steps());
    String anew = next.run("A-1").screens().get(0);
    assertThat(next.step(anew, "degrease").from()).isAfter(found);
    assertThat(next.run("A-1").setUpStart()).isAfterOrEqualTo(next.screen(anew).readyAt());
  }

  @Test
  void aBrokenKeptStencilIsMadeAnew() {
    Planned evening = plan(shop().kept("logo", "white"), logo("A-1"));
    String kept = evening.run("A-1").screens().get(0);
    assertThat(evening.screen(kept).kept()).isTrue();

    Planned next = evening.again(at(-1, "18:30"), broken(kept, at(-1, "18:20")));

    assertThat(next.run("A-1").screens()).doesNotContain(kept);
    assertThat(next.screen(next.run("A-1").screens().get(0)).kept()).isFalse();
  }
}
