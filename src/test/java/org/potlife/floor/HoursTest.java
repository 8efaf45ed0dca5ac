package org.potlife.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.floor.Hours.Told;
import org.potlife.floor.Hours.ToldShift;

/** When presses and dryers are down, by what was told. */
class HoursTest {

  private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

  private static OffsetDateTime at(String time) {
    return OffsetDateTime.parse("2026-12-01T" + time + ":00+01:00");
  }

  private static Told down(String time, String until) {
    return new Told(
        "P1",
        null,
        at(time).toInstant(),
        false,
        until == null ? null : at(until).toInstant(),
        null);
  }

  private static Told up(String time) {
    return new Told("P1", null, at(time).toInstant(), true, null, null);
  }

  private static List<Downtime> downAt(String now, Told... told) {
    List<Downtime> forward = Hours.down(List.of(told), ZONE, at(now).toInstant());
    List<Told> backward = new ArrayList<>(List.of(told));
    java.util.Collections.reverse(backward);
    assertThat(Hours.down(backward, ZONE, at(now).toInstant()))
        .as("told in another order")
        .isEqualTo(forward);
    return forward;
  }

  @Test
  void aPressIsDownUntilItIsToldToBeUp() {
    assertThat(downAt("10:00", down("08:00", null), up("09:15")))
        .extracting(Downtime::from, Downtime::to)
        .containsExactly(tuple(at("08:00"), at("09:15")));
  }

  @Test
  void withoutAWordItIsDownForTheRestOfTheDay() {
    assertThat(downAt("10:00", down("08:00", null)).get(0).to())
        .isEqualTo(OffsetDateTime.parse("2026-12-02T00:00:00+01:00"));
  }

  @Test
  void atTheEndOfTheDayItIsDownForTwoHoursMore() {
    assertThat(downAt("23:30", down("08:00", null)).get(0).to())
        .isEqualTo(OffsetDateTime.parse("2026-12-02T01:30:00+01:00"));
  }

  @Test
  void anExpectedEndHoldsUntilItComesOtherwise() {
    assertThat(downAt("08:30", down("08:00", "11:00")).get(0).to()).isEqualTo(at("11:00"));
    assertThat(downAt("09:30", down("08:00", "11:00"), up("09:00")).get(0).to())
        .isEqualTo(at("09:00"));
    assertThat(downAt("09:30", down("08:00", "11:00"), down("09:00", "13:00")))
        .extracting(Downtime::to)
        .containsExactly(at("09:00"), at("13:00"));
  }

  @Test
  void toBeUpWithoutHavingBeenDownIsNothing() {
    assertThat(downAt("10:00", up("09:00"))).isEmpty();
  }

  @Test
  void ofAMomentTheLatestWordOnItsStaffingHolds() {
    Instant morning = at("07:00").toInstant();
    Instant noon = at("12:00").toInstant();
    ToldShift long1 =
        new ToldShift("P1", morning, at("14:00").toInstant(), at("20:00").toInstant(), true);
    ToldShift short2 =
        new ToldShift("P1", noon, at("18:00").toInstant(), at("22:00").toInstant(), false);
    List<Staffing> expected =
        List.of(
            new Staffing("P1", at("14:00"), at("18:00"), true),
            new Staffing("P1", at("18:00"), at("22:00"), false));
    assertThat(Hours.staffing(List.of(long1, short2), ZONE)).isEqualTo(expected);
    assertThat(Hours.staffing(List.of(short2, long1), ZONE)).isEqualTo(expected);
  }
}
