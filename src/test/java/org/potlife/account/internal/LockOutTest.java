package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LockOutTest {

  private static final Instant EIGHT = Instant.parse("2026-12-01T08:00:00Z");
  private final LockOut rule = LockOut.OF_SENDER;

  @Test
  void fourFailuresCostNothing() {
    assertThat(rule.delay(4)).isZero();
    assertThat(rule.left(4, EIGHT, EIGHT)).isZero();
    assertThat(rule.left(0, EIGHT.plusNanos(400), EIGHT)).as("kept to the microsecond").isZero();
  }

  @Test
  void fromTheFifthOnTheDelayDoublesUpToAQuarterOfAnHour() {
    assertThat(IntStream.rangeClosed(5, 11).mapToObj(rule::delay))
        .containsExactly(
            Duration.ofSeconds(30),
            Duration.ofMinutes(1),
            Duration.ofMinutes(2),
            Duration.ofMinutes(4),
            Duration.ofMinutes(8),
            Duration.ofMinutes(15),
            Duration.ofMinutes(15));
    assertThat(rule.delay(99)).isEqualTo(Duration.ofMinutes(15));
  }

  @Test
  void afterAHundredInARowThereIsOneADay() {
    assertThat(rule.delay(100)).isEqualTo(Duration.ofDays(1));
    assertThat(rule.delay(Integer.MAX_VALUE)).isEqualTo(Duration.ofDays(1));
  }

  @Test
  void theDelayRunsFromTheLastFailure() {
    assertThat(rule.left(5, EIGHT, EIGHT.plusSeconds(10))).isEqualTo(Duration.ofSeconds(20));
    assertThat(rule.left(5, EIGHT, EIGHT.plusSeconds(30))).isZero();
  }

  @Test
  void aQuietDayForgetsFailuresButNotAHundred() {
    Instant later = EIGHT.plus(Duration.ofHours(25));

    assertThat(rule.counting(20, EIGHT, later)).isZero();
    assertThat(rule.counting(20, EIGHT, EIGHT.plus(Duration.ofHours(23)))).isEqualTo(20);
    assertThat(rule.counting(100, EIGHT, later)).isEqualTo(100);
  }

  @Test
  void aShopBehindOneAddressWaitsLater() {
    assertThat(LockOut.OF_ADDRESS.delay(29)).isZero();
    assertThat(LockOut.OF_ADDRESS.delay(30)).isEqualTo(Duration.ofSeconds(30));
    assertThat(LockOut.OF_ADDRESS.delay(1000)).isEqualTo(Duration.ofMinutes(15));
  }

  @Test
  void allStrangersTogetherWaitAfterAHundredAndNeverForADay() {
    assertThat(LockOut.OF_ACCOUNT.delay(99)).isZero();
    assertThat(LockOut.OF_ACCOUNT.delay(100)).isEqualTo(Duration.ofSeconds(30));
    assertThat(LockOut.OF_ACCOUNT.delay(5000)).isEqualTo(Duration.ofMinutes(15));
    assertThat(LockOut.OF_ACCOUNT.counting(5000, EIGHT, EIGHT.plus(Duration.ofHours(25)))).isZero();
  }
}
