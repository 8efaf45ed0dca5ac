package org.potlife.plan.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.plan.PlanFixture.DAY;
import static org.potlife.plan.PlanFixture.at;

import org.junit.jupiter.api.Test;
import org.potlife.plan.PlanFixture;
import org.potlife.plan.list.ActivationList.Batch;
import org.potlife.plan.list.ActivationList.Use;
import org.potlife.plan.list.ActivationList.Weighing;

class ActivationListTest {

  private final ActivationList list = ActivationList.of(PlanFixture.index(), DAY);

  @Test
  void batchesStandInWorkingOrder() {
    assertThat(list.batches())
        .extracting(Batch::mixFrom)
        .isSortedAccordingTo((a, b) -> a.toInstant().compareTo(b.toInstant()));
    assertThat(list.batches()).hasSize(12);
  }

  @Test
  void theScaleRunsUpToTheMassOfTheBatch() {
    Batch brick = batch("brick-1");

    assertThat(brick.components())
        .extracting(Weighing::name)
        .containsExactly("discharge base", "brick pigment", "retarder");
    assertThat(brick.components()).extracting(Weighing::massG).containsExactly(1929, 409, 72);
    assertThat(brick.components().get(2).scaleG()).isEqualTo(brick.massG());
    assertThat(brick.totalG()).isEqualTo(brick.massG() + brick.agentG());
  }

  @Test
  void aBatchNamesTheRunsItIsForWithPressGarmentsAndPieces() {
    Use use = batch("brick-2").uses().get(1);

    assertThat(use.press()).isEqualTo("P1");
    assertThat(use.order()).isEqualTo("LR-77");
    assertThat(use.garments()).isEqualTo("hooded top, black");
    assertThat(use.pieces()).isEqualTo(124);
    assertThat(use.massG()).isEqualTo(500);
  }

  @Test
  void inkWithoutAgentIsListedWithoutAClock() {
    Batch chalk = batch("chalk-1");

    assertThat(chalk.activated()).isFalse();
    assertThat(chalk.activateFrom()).isNull();
    assertThat(chalk.useBy()).isNull();
    assertThat(chalk.readyAt()).isEqualTo(at("06:28"));
  }

  @Test
  void inkMixedTheEveningBeforeIsWorkOfBothDays() {
    ActivationList evening = ActivationList.of(PlanFixture.index(), DAY.minusDays(1));

    assertThat(evening.batches()).extracting(Batch::id).containsExactly("bone-2");
    assertThat(batch("bone-2").activateFrom()).isEqualTo(at("10:58:30"));
  }

  @Test
  void aDayWithoutInkHasAnEmptyList() {
    ActivationList sunday = ActivationList.of(PlanFixture.index(), DAY.plusDays(5));

    assertThat(sunday.batches()).isEmpty();
    assertThat(sunday.agentG()).isZero();
  }

  @Test
  void theSwatchIsTheInksOwnColour() {
    assertThat(batch("brick-1").ink()).isEqualTo(new InkChip("brick", "#a3412f"));
  }

  private Batch batch(String id) {
    return list.batches().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
  }
}
