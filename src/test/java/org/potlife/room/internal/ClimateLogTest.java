package org.potlife.room.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.room.ClimateReading;

/** Which readings of a talkative sensor a plan is made from. */
class ClimateLogTest {

  private static ClimateReading read(String place, String time, double humidityPercent) {
    return new ClimateReading(
        place, OffsetDateTime.parse("2026-11-30T" + time + ":00Z"), 24, humidityPercent);
  }

  @Test
  void ofReadingsWithinFiveMinutesTheLastOneCounts() {
    ClimateReading humid = read("C1", "16:23", 60);

    assertThat(ClimateLog.thinned(List.of(read("C1", "16:20", 35), humid))).containsExactly(humid);
  }

  @Test
  void eachPlaceHasItsOwnAndTheyStandByTime() {
    ClimateReading early = read("C1", "16:20", 35);
    ClimateReading other = read("C2", "16:21", 40);
    ClimateReading late = read("C1", "16:25", 50);

    assertThat(ClimateLog.thinned(List.of(early, other, late))).containsExactly(early, other, late);
  }
}
