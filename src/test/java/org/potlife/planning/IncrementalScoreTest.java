package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.potlife.demo.DemoPlant;
import org.potlife.planning.BareSearch.Found;
import org.potlife.sheet.PlanSheet;
import org.potlife.simulation.DryerEvaluator;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/**
 * What is simulated from a checkpoint, or of the dryers that a change gets to, equals what is
 * simulated from the start.
 */
class IncrementalScoreTest {

  private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
  private static final int MOVES = 20_000;

  @Test
  void everyRandomMoveOnTheDemoPlantScoresAsIfSimulatedFromTheStart() {
    assertThat(randomMoves(BareSearch.problem(eveningBefore()), MOVES)).isGreaterThan(MOVES);
  }

  @Test
  void soItDoesWhenThePlanOfTheMorningIsUnderWay() {
    PlanSheet published = new SearchPlanner().earliestDueDate(eveningBefore());
    Problem problem =
        BareSearch.problem(request(Instant.parse("2026-12-01T09:30:00Z"), Optional.of(published)));
    assertThat(problem.runs().length).isGreaterThan(problem.movable());
    assertThat(randomMoves(problem, MOVES / 4)).isGreaterThan(MOVES / 4);
  }

  @Test
  void theSolverFindsNoCorruptScoreWithAllItsAssertionsOn() {
    Problem problem = BareSearch.problem(eveningBefore());
    Found start = BareSearch.earliestDueDate(problem);
    Found found = BareSearch.asserted(problem, start, 1, 1_500);
    assertThat(found.outcome()).isLessThanOrEqualTo(start.outcome());
  }

  private static PlanRequest eveningBefore() {
    return request(Instant.parse("2026-11-30T13:00:00Z"), Optional.empty());
  }

  private static PlanRequest request(Instant plannedAt, Optional<PlanSheet> published) {
    return new PlanRequest(
        DemoPlant.shop(), DemoPlant.orders(DAY), DAY, plannedAt, published, 1, 1);
  }

  /** Keeps one move in four, which then becomes the base; tells how often it was compared. */
  private static long randomMoves(Problem problem, int moves) {
    SequenceEvaluator evaluator = new SequenceEvaluator(problem, true);
    Found start = BareSearch.dispatched(problem);
    int[][] sequences = start.sequences();
    int[] lengths = start.lengths();
    Random random = new Random(1);
    evaluator.evaluate(sequences, lengths);
    DryerEvaluator dryers = new DryerEvaluator(problem.withoutInk(), true);
    dryers.giveScreens(evaluator.screensReady());
    dryers.evaluateAsBase(sequences, lengths);
    long tried = 0;
    while (tried < moves) {
      int from = random.nextInt(lengths.length);
      int to = random.nextInt(lengths.length);
      int at = lengths[from] == 0 ? -1 : random.nextInt(lengths[from]);
      if (at < 0 || !problem.runs()[sequences[from][at]].presses()[to]) {
        continue;
      }
      int run = take(sequences, lengths, from, at);
      int place = random.nextInt(lengths[to] + 1);
      tried++;
      put(sequences, lengths, to, place, run);
      evaluator.evaluate(sequences, lengths);
      dryers.evaluate(sequences, lengths);
      if (random.nextInt(4) == 0) {
        evaluator.evaluateAsBase(sequences, lengths);
        dryers.evaluateAsBase(sequences, lengths);
      } else {
        take(sequences, lengths, to, place);
        put(sequences, lengths, from, at, run);
      }
    }
    return evaluator.evaluations();
  }

  private static int take(int[][] sequences, int[] lengths, int press, int at) {
    int run = sequences[press][at];
    System.arraycopy(sequences[press], at + 1, sequences[press], at, lengths[press] - at - 1);
    lengths[press]--;
    return run;
  }

  private static void put(int[][] sequences, int[] lengths, int press, int at, int run) {
    System.arraycopy(sequences[press], at, sequences[press], at + 1, lengths[press] - at);
    sequences[press][at] = run;
    lengths[press]++;
  }
}
