package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LearnedGramsTest {

  private static final InkPerPiece.Inputs CREST =
      new InkPerPiece.Inputs(300, 380, 22, 43, 80, 38.8, 1.05, 1, 1);

  @Test
  void theFirstCloseOutReplacesTheEstimateAndEachFurtherOneMovesItByThreeTenths() {
    LearnedGrams learned = LearnedGrams.first("crest", "front", "brick", CREST, 2.0);
    assertThat(learned.grams()).isEqualTo(2.0);
    LearnedGrams second = learned.next(3.0);
    assertThat(second.grams()).isCloseTo(2.3, within(1e-12));
    assertThat(second.observations()).isEqualTo(2);
  }

  @Test
  void anotherSizeMeshOrInkHasLearnedNothing() {
    LearnedGrams learned = LearnedGrams.first("crest", "front", "brick", CREST, 2.0);
    assertThat(learned.isOf("crest", "front", "brick", CREST)).isTrue();
    assertThat(learned.isOf("crest", "front", "plum", CREST)).isFalse();
    assertThat(learned.isOf("crest", "back", "brick", CREST)).isFalse();
    assertThat(
            learned.isOf(
                "crest",
                "front",
                "brick",
                new InkPerPiece.Inputs(310, 380, 22, 43, 80, 38.8, 1.05, 1, 1)))
        .isFalse();
  }

  @Property
  void whatARunAlwaysTakesIsLearnedInTheEnd(
      @ForAll @DoubleRange(min = 0.1, max = 50) double begun,
      @ForAll @DoubleRange(min = 0.1, max = 50) double always,
      @ForAll @IntRange(min = 20, max = 60) int closeOuts) {
    LearnedGrams learned = LearnedGrams.first("crest", "front", "brick", CREST, begun);
    for (int i = 0; i < closeOuts; i++) {
      learned = learned.next(always);
    }
    // 0.7 to the 20th is 0.0008
    assertThat(learned.grams()).isCloseTo(always, within(0.0008 * Math.abs(begun - always) + 1e-9));
  }
}
