package org.potlife.room.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;

/** The crest's screens go through C1 from 17:05 to 17:30 and are coated in C2 until 18:33. */
class LookedAtTest {

  private static final LocalDate EVE = DAY.minusDays(1);

  private static Optional<LookedAt> look(String time) {
    String screen = PlanFixture.index().sheet().screens().get(0).id();
    return LookedAt.find(PlanFixture.index().sheet(), screen, at(EVE, time).toInstant());
  }

  @Test
  void beforeTheCabinetALookTellsNothing() {
    assertThat(look("17:03")).isEmpty();
  }

  @Test
  void aLookTellsOfTheDryingThatTheScreenIsIn() {
    assertThat(look("17:20").orElseThrow().step().step()).isEqualTo("dry-degreased");
    assertThat(look("18:00").orElseThrow().step().step()).isEqualTo("dry-coated");
    assertThat(look("18:00").orElseThrow().loadIn()).isEqualTo(at(EVE, "17:33"));
  }

  @Test
  void aLateLookStillTellsOfIt() {
    assertThat(look("20:00").orElseThrow().step().step()).isEqualTo("dry-coated");
  }
}
