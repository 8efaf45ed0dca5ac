package org.potlife.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReplayedClockTest {

  private final AtomicLong nanos = new AtomicLong(123);

  private void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }

  @Test
  void aDayIsLivedThroughInTwentyFourMinutes() {
    ReplayedClock clock = ReplayedClock.parse("2026-12-01T05:30:00+01:00@60", nanos::get);
    assertThat(clock.instant()).isEqualTo(Instant.parse("2026-12-01T04:30:00Z"));

    pass(Duration.ofMinutes(24));

    assertThat(clock.instant()).isEqualTo(Instant.parse("2026-12-02T04:30:00Z"));
  }

  @Test
  void withoutASpeedItRunsAsTimeDoes() {
    ReplayedClock clock = ReplayedClock.parse("2026-12-01T05:30:00+01:00", nanos::get);

    pass(Duration.ofSeconds(90));

    assertThat(clock.instant()).isEqualTo(Instant.parse("2026-12-01T04:31:30Z"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "tomorrow",
        "2026-12-01T05:30:00",
        "2026-12-01T05:30:00+01:00@0",
        "2026-12-01T05:30:00+01:00@-1",
        "2026-12-01T05:30:00+01:00@NaN",
        "2026-12-01T05:30:00+01:00@60@2",
        "2026-12-01T05:30:00+01:00@fast"
      })
  void anythingElseIsRefusedWithTheFormThatIsExpected(String setting) {
    assertThatThrownBy(() -> ReplayedClock.parse(setting, nanos::get))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2026-12-01T05:30:00+01:00@60");
  }
}
