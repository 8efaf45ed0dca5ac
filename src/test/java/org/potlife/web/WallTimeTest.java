package org.potlife.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.potlife.web.WallTime.Shown;

class WallTimeTest {

  private final WallTime time = new WallTime(ZoneId.of("Europe/Berlin"), LocalDate.of(2026, 12, 1));

  @Test
  void aStartIsNeverShownLaterAndAnEndNeverEarlierThanItIs() {
    OffsetDateTime exact = OffsetDateTime.parse("2026-12-01T06:41:30+01:00");

    assertThat(time.start(exact).time()).isEqualTo("06:41");
    assertThat(time.end(exact).time()).isEqualTo("06:42");
    assertThat(time.end(exact.minusSeconds(30)).time()).isEqualTo("06:41");
    assertThat(time.start(exact).instant()).isEqualTo("2026-12-01T06:41:30+01:00");
  }

  @Test
  void timesAreThePlantsAndOtherDaysAreNamed() {
    Shown shown = time.start(OffsetDateTime.parse("2026-11-30T23:30:00Z"));
    Shown before = time.start(OffsetDateTime.parse("2026-11-30T16:40:00Z"));

    assertThat(shown).extracting(Shown::date, Shown::time).containsExactly("", "00:30");
    assertThat(before).extracting(Shown::date, Shown::time).containsExactly("Mon 30 Nov", "17:40");
  }

  @Test
  void anEndThatIsRoundedToMidnightIsTheNextDays() {
    Shown shown = time.end(OffsetDateTime.parse("2026-12-01T23:59:30+01:00"));

    assertThat(shown).extracting(Shown::date, Shown::time).containsExactly("Wed 2 Dec", "00:00");
  }

  @Test
  void theHourThatTheClocksShowTwiceCarriesItsOffset() {
    WallTime autumn = new WallTime(ZoneId.of("Europe/Berlin"), LocalDate.of(2026, 10, 25));

    assertThat(autumn.start(OffsetDateTime.parse("2026-10-25T02:30:00+02:00")).time())
        .isEqualTo("02:30 +02:00");
    assertThat(autumn.start(OffsetDateTime.parse("2026-10-25T02:30:00+01:00")).time())
        .isEqualTo("02:30 +01:00");
    assertThat(autumn.start(OffsetDateTime.parse("2026-10-25T03:30:00+01:00")).time())
        .isEqualTo("03:30");
  }

  @Test
  void aTimeThatIsNotKnownStaysEmpty() {
    assertThat(time.start(null)).isNull();
    assertThat(time.end(null)).isNull();
  }
}
