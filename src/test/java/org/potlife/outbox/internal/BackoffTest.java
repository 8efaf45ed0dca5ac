package org.potlife.outbox.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BackoffTest {

  private final Backoff backoff = new Backoff(Duration.ofMinutes(10), new Random(1));

  @Test
  void theWaitDoublesUpToTheLongestLessAtMostHalf() {
    long[] longestMs = {1000, 2000, 4000, 8000, 16_000};
    for (int failures = 1; failures <= longestMs.length; failures++) {
      for (int draw = 0; draw < 100; draw++) {
        assertThat(backoff.after(failures).toMillis())
            .isBetween(longestMs[failures - 1] / 2, longestMs[failures - 1]);
      }
    }
    assertThat(backoff.after(1000)).isBetween(Duration.ofMinutes(5), Duration.ofMinutes(10));
  }

  @Test
  void twoHooksThatFailTogetherComeBackApart() {
    assertThat(backoff.after(8)).isNotEqualTo(backoff.after(8));
  }
}
