package org.potlife.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.potlife.ink.BatchCutting.Need;

/** 15 min stand, 8 h pot life, 5 kg containers with 50 g reserve, a scale with steps of 10 g. */
class BatchCuttingTest {

  private static final int HOUR = 3600;

  private final BatchCutting cutting = new BatchCutting(900, 8 * HOUR, 5000, 50, 10);

  @Test
  void twoRunsWithinOnePotLifeShareABatch() {
    List<Need> day = List.of(need(6, 7, 600, 80), need(9, 10, 400, 80));
    assertThat(cutting.knowingTheClock(day)).containsExactly(600 + 400 + 160 + 50);
  }

  @Test
  void aBatchHoldsOnlyWhatIsDrawnWhileItLives() {
    // ready at 6, dead at 13:45: three quarters of the second hour's ink
    List<Need> day = List.of(need(6, 7, 600, 0), need(13, 14, 400, 0));
    assertThat(cutting.knowingTheClock(day)).containsExactly(600 + 300 + 50, 100 + 50);
  }

  @Test
  void activatedAllAtOnceTheRestDiesAndIsMadeAnew() {
    List<Need> day = List.of(need(6, 7, 600, 0), need(13, 14, 400, 0));
    assertThat(cutting.allAtOnce(day)).containsExactly(600 + 400 + 50, 100 + 50);
  }

  @Test
  void theContainerSplitsABatchAndItsScreenChargeStaysWhole() {
    assertThat(cutting.knowingTheClock(List.of(need(6, 8, 9000, 80)))).containsExactly(5000, 4180);
    assertThat(cutting.knowingTheClock(List.of(need(6, 7, 4900, 0), need(7, 8, 100, 80))))
        .containsExactly(4900 + 50, 180 + 50);
  }

  @Test
  void aContainerFilledByItsReserveIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new BatchCutting(0, 60, 500, 500, 1));
  }

  @Property(tries = 300)
  void whatIsMadeIsWhatIsUsedAndReserveAndLessThanAStepEach(
      @ForAll("days") List<Need> day, @ForAll @IntRange(min = 500, max = 6000) int containerG) {
    BatchCutting room = new BatchCutting(900, 6 * HOUR, containerG, 50, 10);
    List<Integer> masses = room.knowingTheClock(day);
    int used = day.stream().mapToInt(need -> need.printG() + need.chargeG()).sum();
    int made = masses.stream().mapToInt(Integer::intValue).sum();
    assertThat(masses).allSatisfy(mass -> assertThat(mass).isLessThanOrEqualTo(containerG + 10));
    // every batch is rounded up to a gram and then to a step
    assertThat(made - used - 50 * masses.size()).isBetween(0, 11 * masses.size());
  }

  @Property(tries = 300)
  void sharingABatchNeverTakesMoreBatchesThanOnePerRun(@ForAll("days") List<Need> day) {
    BatchCutting room = new BatchCutting(900, 6 * HOUR, 100_000, 50, 10);
    List<Integer> perRun = new ArrayList<>();
    day.forEach(need -> perRun.addAll(room.knowingTheClock(List.of(need))));
    assertThat(room.knowingTheClock(day)).hasSizeLessThanOrEqualTo(perRun.size());
    assertThat(sum(room.knowingTheClock(day)))
        .isLessThanOrEqualTo(sum(room.allAtOnce(day)) + 11 * perRun.size());
  }

  @Provide
  Arbitrary<List<Need>> days() {
    Arbitrary<Integer> from = Arbitraries.integers().between(0, 20 * HOUR);
    Arbitrary<Integer> length = Arbitraries.integers().between(0, 8 * HOUR);
    Arbitrary<Integer> printG = Arbitraries.integers().between(1, 9000);
    Arbitrary<Integer> chargeG = Arbitraries.integers().between(0, 200);
    return Combinators.combine(from, length, printG, chargeG)
        .as((start, s, print, charge) -> new Need(start, start + s, print, charge))
        .list()
        .ofMinSize(1)
        .ofMaxSize(8);
  }

  private static int sum(List<Integer> masses) {
    return masses.stream().mapToInt(Integer::intValue).sum();
  }

  private static Need need(int fromHour, int toHour, int printG, int chargeG) {
    return new Need((long) fromHour * HOUR, (long) toHour * HOUR, printG, chargeG);
  }
}
