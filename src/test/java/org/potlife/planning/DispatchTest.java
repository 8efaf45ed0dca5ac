package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.testing.SmallShop.at;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.potlife.demo.DemoPlant;
import org.potlife.outside.BareShop;
import org.potlife.simulation.DispatchTimes;
import org.potlife.simulation.Outcome;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;
import org.potlife.simulation.StaffedTime;
import org.potlife.testing.SmallShop;

/** The dispatch rules, of which the best makes the first plan. */
class DispatchTest {

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void theRuleThatIsBestWithoutTheRoomsIsBestWithThem(int dayAhead) {
    // given the demo plant's orders for a day
    LocalDate day = SmallShop.DAY.plusDays(dayAhead);
    Problem problem =
        BareSearch.problem(
            new PlanRequest(
                DemoPlant.shop(),
                DemoPlant.orders(day),
                day,
                at(dayAhead - 1, "14:00").toInstant(),
                Optional.empty(),
                0,
                7));
    // when the best rule is looked for
    Dispatch dispatch = new Dispatch(problem);
    Outcome best = dispatch.best().outcome();
    // then none of them comes to less in the whole shop
    Outcome least =
        dispatch.rehearsed().stream()
            .map(plan -> dispatch.judged(plan).outcome())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    assertThat(best).isEqualByComparingTo(least);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 70, 100, 300, 440, 500, 1000, 1435, 1440, 1480, 1600, 1930, 5000})
  void aSetUpBeginsAsSoonAsItsFirstPieceFindsTheGarments(int garmentsFromMinute) {
    // given a press with 40 min of set-up, of which 10 for the first piece, and three short days
    BareShop shop =
        BareShop.presses(new BareShop.SetUpMinutes(30, 0, 0, 0, 0, 10, 0))
            .shifts(60, 480, 1440, 1920, 2880, 3360);
    shop.run(shop.order(400, 1), 90).from(garmentsFromMinute);
    Problem problem = shop.problem();
    DispatchTimes times = new DispatchTimes(problem);
    // when it is dispatched and simulated, with nothing else to wait for
    int end = times.endOf(-1, 0, 0, times.openAt(0));
    SequenceEvaluator simulated = new SequenceEvaluator(problem, false);
    int unplaced = simulated.evaluateAsBase(new int[][] {{0}}, new int[] {1}).unplaced();
    // then both end it at the same minute, or find that it has no place
    assertThat(end == StaffedTime.NEVER).isEqualTo(unplaced == 1);
    if (unplaced == 0) {
      assertThat(end).isEqualTo(simulated.endOf(0));
    }
  }

  @Test
  void aPressTakesTheRunWithTheHighestIndex() {
    for (long seed = 0; seed < 300; seed++) {
      // given a press in some shop, some of whose runs are dispatched
      Problem problem = new ProblemMapper(RandomCase.of(seed).request()).map().problem();
      if (problem.movable() == 0) {
        continue;
      }
      DispatchTimes times = new DispatchTimes(problem);
      Random chance = new Random(seed);
      int press = chance.nextInt(problem.presses().length);
      RunQueue queue = new RunQueue(problem, times, press);
      queue.fill();
      boolean[] done = new boolean[problem.movable()];
      for (int run = 0; run < done.length; run++) {
        if (chance.nextInt(4) == 0) {
          done[run] = true;
          queue.remove(run);
        }
      }
      int last = chance.nextInt(problem.movable() + 1) - 1;
      int now = chance.nextInt(200_000);
      Dispatch.Rule rule =
          new Dispatch.Rule(600 + chance.nextInt(40_000), 60 + chance.nextInt(3_000));
      IntPredicate isOpen = run -> run % 5 != 0;
      // when it takes its next run
      int next = queue.mostUrgent(rule, now, last, isOpen);
      // then no other that is open has a higher index
      double highest =
          next < 0 ? Double.NEGATIVE_INFINITY : index(problem, times, press, next, rule, now, last);
      assertThat(next >= 0 && (done[next] || !isOpen.test(next))).as("shop %d", seed).isFalse();
      for (int run = 0; run < done.length; run++) {
        if (!done[run] && isOpen.test(run) && problem.runs()[run].presses()[press]) {
          assertThat(index(problem, times, press, run, rule, now, last))
              .as("run %d of shop %d", run, seed)
              .isLessThanOrEqualTo(highest + 1e-9);
        }
      }
    }
  }

  private static double index(
      Problem problem,
      DispatchTimes times,
      int press,
      int run,
      Dispatch.Rule rule,
      int now,
      int last) {
    var order = problem.orders()[problem.runs()[run].order()];
    double printS = times.printS(run, press);
    // ln of w/p exp(-slack/look-ahead) exp(-loss/weight), after Lee, Bhaskaran and Pinedo, IIE
    // Transactions 29, 1997 (from memory); of the loss see Dispatch
    int setUpS = times.setUpS(last, run, press);
    int from = times.beginOf(run, press, now, setUpS);
    double slack = Math.max(0, order.dueAt() - from - setUpS - printS);
    StaffedTime staffed = problem.presses()[press].staffed();
    int work = (int) Math.ceil(setUpS + printS);
    int end = staffed.addInSpan(from, work);
    if (end == StaffedTime.NEVER) {
      return Double.NEGATIVE_INFINITY;
    }
    int idleS = staffed.workAt(staffed.subtract(end, work)) - staffed.workAt(now);
    double loss = times.avoidableSetUpS(last, run, press) + idleS;
    return Math.log(Math.max(1, order.weight()) / printS)
        - slack / rule.lookAheadS()
        - loss / rule.lossWeightS();
  }
}
