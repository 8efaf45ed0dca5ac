package org.potlife.plan.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.potlife.plan.internal.PendingChanges.Pending;
import org.potlife.shop.Following;

/** When a plan is made after changes that do not end. */
class ReplanningTest {

  private static final Following FOLLOWING = new Following(true, 20, 120, null, null, null);

  private static Instant due(String first, String last) {
    return Replanning.due(FOLLOWING, new Pending("p", time(first), time(last)));
  }

  private static Instant time(String time) {
    return Instant.parse("2026-12-01T" + time + "Z");
  }

  @Test
  void aSingleChangeIsFollowedAfterItsRest() {
    assertThat(due("06:00:00", "06:00:00")).isEqualTo(time("06:00:20"));
  }

  @Test
  void aFurtherChangePutsItOff() {
    assertThat(due("06:00:00", "06:00:15")).isEqualTo(time("06:00:35"));
  }

  @Test
  void butNeverLongerThanThePlantBears() {
    assertThat(due("06:00:00", "06:01:55")).isEqualTo(time("06:02:00"));
  }

  @Test
  void theLongestWaitIsNeverShorterThanTheRest() {
    assertThat(new Following(true, 300, null, null, null, null).settleAtMostSeconds())
        .isEqualTo(300);
  }
}
