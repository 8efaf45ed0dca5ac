package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.potlife.ink.Component.Role;

class RecipeMassTest {

  @Test
  void componentsComeInTheOrderOfTheRecipe() {
    assertThat(RecipeMass.components(2000, recipe(85, 12, 3), 1)).containsExactly(1700, 240, 60);
  }

  @Test
  void leftOverGramsGoToTheLargestRemainder() {
    // 91.86, 7.33, 1.81 of 101 g
    assertThat(RecipeMass.components(101, recipe(90.95, 7.26, 1.79), 1)).containsExactly(92, 7, 2);
  }

  @Test
  void ofEqualRemaindersTheOneWeighedFirstGetsTheGram() {
    assertThat(RecipeMass.components(2, recipe(25, 25, 25, 25), 1)).containsExactly(1, 1, 0, 0);
    assertThat(RecipeMass.components(1, recipe(50, 50), 1)).containsExactly(1, 0);
  }

  @Test
  void aRecipeOfThirdsIsAccepted() {
    assertThat(RecipeMass.components(500_000, recipe(33.3333, 33.3333, 33.3333), 1))
        .containsExactly(166_667, 166_667, 166_666);
  }

  @Test
  void aRecipeThatDoesNotSumToAHundredIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RecipeMass.components(1000, recipe(90, 9), 1))
        .withMessageContaining("99.0 %");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RecipeMass.components(1000, List.of(), 1));
  }

  @Test
  void theAgentIsRoundedToTheStepOfTheScale() {
    assertThat(RecipeMass.agentG(3150, 6, 5, 8, 1)).isEqualTo(189);
    assertThat(RecipeMass.agentG(3150, 6, 5, 8, 5)).isEqualTo(190);
    assertThat(RecipeMass.agentG(25, 6, 5, 8, 1)).as("half a step goes up").isEqualTo(2);
    assertThat(RecipeMass.agentG(3150, 0, 0, 0, 5)).isZero();
  }

  @Test
  void everyComponentIsAMultipleOfTheStepOfTheScale() {
    // 91.0, 7.3, 1.7 % of 1000 g in steps of 50 g are 18.2, 1.46 and 0.34 steps
    assertThat(RecipeMass.components(1000, recipe(91.0, 7.3, 1.7), 50))
        .containsExactly(900, 100, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RecipeMass.components(1010, recipe(91.0, 9.0), 50))
        .withMessageContaining("multiple of the step of 50 g");
  }

  @Test
  void theAgentNeverLeavesTheLimitsWhereAStepLiesWithinThem() {
    // 5.4 and 8 % of 320 g are 17.3 and 25.6 g: 20 g is the one step of 10 g between them
    assertThat(RecipeMass.agentG(320, 7.9, 5.4, 8, 10)).isEqualTo(20);
    assertThat(RecipeMass.agentG(320, 8, 5, 8, 10)).as("26 g would be 8.1 %").isEqualTo(20);
    assertThat(RecipeMass.agentG(110, 5, 5, 8, 10)).as("no step within the limits").isEqualTo(10);
  }

  @Property
  void theAgentIsWithinTheLimitsWhereverTheBatchIsLargeEnough(
      @ForAll @IntRange(min = 34, max = 5_000) int massInSteps,
      @ForAll @DoubleRange(min = 5, max = 8) double agentPercent,
      @ForAll @IntRange(min = 1, max = 100) int stepG) {
    int massG = massInSteps * stepG;
    double percent = 100.0 * RecipeMass.agentG(massG, agentPercent, 5, 8, stepG) / massG;
    assertThat(percent).isBetween(5.0, 8.0);
  }

  @Test
  void aMassIsRoundedUpToTheStepOfTheScale() {
    assertThat(RecipeMass.roundUpToStep(3146, 5)).isEqualTo(3150);
    assertThat(RecipeMass.roundUpToStep(3150, 5)).isEqualTo(3150);
    assertThat(RecipeMass.roundUpToStep(0, 5)).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> RecipeMass.roundUpToStep(10, 0));
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> RecipeMass.roundUpToStep(Integer.MAX_VALUE, 100));
  }

  @Property
  void componentsAlwaysSumToTheMassAndNoneIsAStepOff(
      @ForAll @IntRange(max = 5_000) int steps,
      @ForAll @IntRange(min = 1, max = 100) int stepG,
      @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 1000) Integer> weights) {
    int massG = steps * stepG;
    List<Component> recipe = recipe(percentages(weights));
    List<Integer> grams = RecipeMass.components(massG, recipe, stepG);
    assertThat(grams.stream().mapToInt(Integer::intValue).sum()).isEqualTo(massG);
    for (int i = 0; i < grams.size(); i++) {
      assertThat((double) grams.get(i))
          .isGreaterThanOrEqualTo(0)
          .isCloseTo(massG * recipe.get(i).percent() / 100, within(stepG * 1.01));
      assertThat(grams.get(i) % stepG).isZero();
    }
  }

  @Property
  void theAgentIsWithinHalfAStepOfItsPercentage(
      @ForAll @IntRange(min = 500, max = 500_000) int massG,
      @ForAll @DoubleRange(max = 19) double agentPercent,
      @ForAll @IntRange(min = 1, max = 100) int stepG) {
    int agentG = RecipeMass.agentG(massG, agentPercent, 0, 100, stepG);
    assertThat(agentG % stepG).isZero();
    assertThat((double) agentG).isCloseTo(massG * agentPercent / 100, within(stepG / 2.0 + 0.01));
  }

  @Property
  void roundingUpAddsLessThanAStep(
      @ForAll @IntRange(max = 1_000_000) int g, @ForAll @IntRange(min = 1, max = 100) int stepG) {
    int rounded = RecipeMass.roundUpToStep(g, stepG);
    assertThat(rounded % stepG).isZero();
    assertThat(rounded - g).isBetween(0, stepG - 1);
  }

  private static double[] percentages(List<Integer> weights) {
    double sum = weights.stream().mapToInt(Integer::intValue).sum();
    return weights.stream().mapToDouble(w -> w * 100 / sum).toArray();
  }

  private static List<Component> recipe(double... percents) {
    List<Component> recipe = new ArrayList<>();
    for (double percent : percents) {
      recipe.add(new Component("component " + recipe.size(), Role.OTHER, percent));
    }
    return recipe;
  }
}
