package org.potlife.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.sheet.PlanSheet;
import org.potlife.sheet.PlanSheet.ScreenLine;

/**
 * The crest's first screen: degreased at 17:00 the day before, taped at 06:00, at the press 06:10.
 */
class PlannedLifeTest {

  private final PlanSheet sheet = PlanFixture.index().sheet();

  private PlannedLife life(ScreenLine screen, OffsetDateTime now) {
    return PlannedLife.of(
        screen,
        sheet.runs().stream().filter(run -> screen.runs().contains(run.id())).toList(),
        now);
  }

  private ScreenLife crest(OffsetDateTime now) {
    return life(sheet.screens().get(0), now).state();
  }

  private static OffsetDateTime eve(String time) {
    return at(DAY.minusDays(1), time);
  }

  @Test
  void aMadeScreenGoesThroughItsLife() {
    assertThat(
            List.of(
                crest(eve("16:00")),
                crest(eve("17:02")),
                crest(eve("17:20")),
                crest(eve("17:31")),
                crest(eve("18:00")),
                crest(eve("20:00")),
                crest(at("04:34")),
                crest(at("04:50"))))
        .containsExactly(
            ScreenLife.RECLAIMED,
            ScreenLife.RECLAIMED,
            ScreenLife.DEGREASED_DRYING,
            ScreenLife.DEGREASED_DRYING,
            ScreenLife.COATED_DRYING,
            ScreenLife.DRY,
            ScreenLife.EXPOSED,
            ScreenLife.WASHED_OUT_DRYING);
    assertThat(crest(at("06:05"))).isEqualTo(ScreenLife.READY);
    assertThat(crest(at("06:20"))).isEqualTo(ScreenLife.ON_PRESS);
    assertThat(crest(at(DAY.plusDays(1), "18:00"))).isEqualTo(ScreenLife.TO_RECLAIM);
  }

  @Test
  void theStepUnderWayIsNamed() {
    PlannedLife life = life(sheet.screens().get(0), eve("17:31"));

    assertThat(life.step()).isEqualTo("coat");
    assertThat(life.since()).isEqualTo(eve("17:05"));
  }

  @Test
  void aKeptStencilIsReadyBeforeAndAfterItsRuns() {
    ScreenLine kept = sheet.screens().stream().filter(ScreenLine::kept).findFirst().orElseThrow();

    assertThat(life(kept, eve("12:00")).state()).isEqualTo(ScreenLife.READY);
    assertThat(life(kept, at("06:31")).state()).isEqualTo(ScreenLife.ON_PRESS);
    assertThat(life(kept, kept.releasedAt().plusHours(1)).state()).isEqualTo(ScreenLife.READY);
  }
}
