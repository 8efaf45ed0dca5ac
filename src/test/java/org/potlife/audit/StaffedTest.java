package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.shop.Closure;
import org.potlife.shop.Shift;

class StaffedTest {

  private static long at(String local) {
    return SmallShop.at(local).toEpochSecond();
  }

  private static Staffed staffed(String from, String to, List<Closure> closures, Shift... shifts) {
    return Staffed.of(List.of(shifts), closures, SmallShop.BERLIN, new Stretch(at(from), at(to)));
  }

  private static Shift night(String... breaks) {
    Shift shift = SmallShop.shift("22:00", "06:00", breaks);
    return Edit.with(shift, "days", List.of(DayOfWeek.values()));
  }

  @Test
  void aNightShiftIsAnHourShorterWhenSummerTimeBegins() {
    Staffed staffed = staffed("2026-03-28T12:00:00", "2026-03-29T12:00:00", List.of(), night());
    assertThat(staffed.seconds(at("2026-03-28T12:00:00"), at("2026-03-29T12:00:00")))
        .isEqualTo(7 * 3600);
  }

  @Test
  void aNightShiftIsAnHourLongerWhenSummerTimeEnds() {
    Staffed staffed = staffed("2026-10-24T12:00:00", "2026-10-25T12:00:00", List.of(), night());
    assertThat(staffed.seconds(at("2026-10-24T12:00:00"), at("2026-10-25T12:00:00")))
        .isEqualTo(9 * 3600);
  }

  @Test
  void aBreakAfterMidnightBelongsToTheNightShiftThatBeganTheDayBefore() {
    Staffed staffed =
        staffed("2026-12-01T00:00:00", "2026-12-03T00:00:00", List.of(), night("02:00-02:30"));
    assertThat(staffed.inOneStretch(at("2026-12-02T01:00:00"), at("2026-12-02T02:00:00"))).isTrue();
    assertThat(staffed.seconds(at("2026-12-02T02:00:00"), at("2026-12-02T02:30:00"))).isZero();
  }

  @Test
  void shiftsThatTouchAreOneStretch() {
    Staffed staffed =
        staffed(
            "2026-12-01T00:00:00",
            "2026-12-02T00:00:00",
            List.of(),
            SmallShop.shift("06:00", "14:00"),
            SmallShop.shift("14:00", "22:00"));
    assertThat(staffed.inOneStretch(at("2026-12-01T13:00:00"), at("2026-12-01T15:00:00"))).isTrue();
  }

  @Test
  void aClosureTakesItsTimeOutAndSplitsTheSpanWhenItIsLongerThanAPause() {
    OffsetDateTime from = SmallShop.at("2026-12-01T10:00:00");
    Closure repair = new Closure(from, from.plusMinutes(31), null);
    Staffed staffed =
        staffed(
            "2026-12-01T00:00:00",
            "2026-12-01T23:00:00",
            List.of(repair),
            SmallShop.shift("06:00", "14:00", "08:00-08:15"));
    assertThat(staffed.seconds(at("2026-12-01T06:00:00"), at("2026-12-01T14:00:00")))
        .isEqualTo((8 * 60 - 15 - 31) * 60);
    Stretch morning = new Stretch(at("2026-12-01T06:00:00"), at("2026-12-01T10:00:00"));
    assertThat(staffed.spans(30 * 60)).contains(morning);
    assertThat(staffed.spans(31 * 60)).doesNotContain(morning);
  }

  @Test
  void aShiftUntilMidnightEndsAtMidnight() {
    Shift late = Edit.with(SmallShop.shift("14:00", "22:00"), "to", LocalTime.MIDNIGHT);
    Staffed staffed = staffed("2026-12-01T00:00:00", "2026-12-02T00:00:00", List.of(), late);
    assertThat(staffed.seconds(at("2026-12-01T00:00:00"), at("2026-12-02T00:00:00")))
        .isEqualTo(10 * 3600);
  }
}
