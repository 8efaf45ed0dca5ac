package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.ScreenList.Fetch;
import org.potlife.plan.list.ScreenList.Job;
import org.potlife.plan.list.ScreenList.Load;
import org.potlife.plan.list.ScreenList.Stage;

class ScreenListTest {

  private final ScreenList list = ScreenList.of(PlanFixture.index(), DAY);
  private final ScreenList evening = ScreenList.of(PlanFixture.index(), DAY.minusDays(1));

  @Test
  void stagesStandInTheOrderOfTheWork() {
    assertThat(list.stages())
        .extracting(Stage::step)
        .containsExactly(
            "degrease",
            "dry-degreased",
            "coat",
            "dry-coated",
            "expose",
            "wash-out",
            "dry-washed",
            "post-expose",
            "tape");
  }

  @Test
  void stagesWithoutAJobAreLeftOut() {
    assertThat(evening.stages())
        .extracting(Stage::step)
        .containsExactly("degrease", "dry-degreased", "coat", "dry-coated");
  }

  @Test
  void screensOfOneSetAreOneJob() {
    Job crest = evening.stages().get(0).jobs().get(0);

    assertThat(crest.frames()).hasSize(8);
    assertThat(crest.where()).containsExactly("sink-1", "sink-2");
    assertThat(crest.from()).isEqualTo(at(DAY.minusDays(1), "17:00"));
    assertThat(crest.latestFrom()).isEqualTo(at(DAY.minusDays(1), "18:00"));
    assertThat(crest.press()).isEqualTo("P1");
    assertThat(crest.setUpStart()).isEqualTo(at("06:10"));
  }

  @Test
  void aLoadHoldsWhatComesOutOfACabinetTogether() {
    Load coated =
        evening.loads().stream()
            .filter(l -> l.cabinet().equals("C2") && l.step().equals("dry-coated"))
            .findFirst()
            .orElseThrow();

    assertThat(coated.frames()).hasSize(6);
    assertThat(coated.capacity()).isEqualTo(6);
    assertThat(coated.dryAt()).isEqualTo(at(DAY.minusDays(1), "18:33"));
  }

  @Test
  void aFullLoadShutsWhenTheLastScreenIsInAndOthersAfterTheGathering() {
    Load full =
        evening.loads().stream().filter(l -> l.capacity() == l.frames().size()).findFirst().get();
    Load loose =
        evening.loads().stream().filter(l -> l.capacity() > l.frames().size()).findFirst().get();

    assertThat(full.shutBy()).isEqualTo(full.lastIn());
    assertThat(loose.shutBy()).isEqualTo(loose.firstIn().plusMinutes(20));
  }

  @Test
  void keptStencilsAreFetchedByTheSetUpOfTheirFirstRun() {
    assertThat(list.fetches())
        .extracting(f -> f.frame().screen())
        .containsExactly("K-loaf-chalk", "K-loaf-soot");
    assertThat(list.fetches()).extracting(Fetch::neededBy).containsOnly(at("06:30"));
    assertThat(evening.fetches()).isEmpty();
  }

  @Test
  void aDayWithoutScreensIsEmpty() {
    assertThat(ScreenList.of(PlanFixture.index(), DAY.plusDays(4)).empty()).isTrue();
  }
}
