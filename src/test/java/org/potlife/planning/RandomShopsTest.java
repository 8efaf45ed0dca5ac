package org.potlife.planning;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.potlife.audit.Finding;
import org.potlife.order.Order;
import org.potlife.sheet.PlanSheet;
import org.potlife.shop.ShopCheck;
import org.potlife.simulation.DryerEvaluator;
import org.potlife.simulation.Problem;
import org.potlife.simulation.SequenceEvaluator;

/**
 * Plans for shops that chance has made pass the audit. More of them with {@code
 * -Dpotlife.randomShops=20000 -Dpotlife.firstShop=5000}; a failure names the shop by its number and
 * shows it with as few orders as it takes.
 */
class RandomShopsTest {

  private static final int SHOPS = Integer.getInteger("potlife.randomShops", 1000);
  private static final long FIRST = Long.getLong("potlife.firstShop", 0);

  private static List<Long> every(int nth) {
    List<Long> seeds = new ArrayList<>();
    for (long seed = FIRST; seed < FIRST + SHOPS; seed += nth) {
      seeds.add(seed);
    }
    return seeds;
  }

  @Test
  void whatChanceMakesIsAShopThatThePlatformAccepts() {
    try (ValidatorFactory factory = Validation.buildDefaultValidatorFactory()) {
      Validator validator = factory.getValidator();
      for (long seed : every(25)) {
        RandomCase shop = RandomCase.of(seed);
        assertThat(validator.validate(shop.shop())).as("shop %d", seed).isEmpty();
        assertThat(ShopCheck.check(shop.shop())).as("shop %d", seed).isEmpty();
        for (Order order : shop.orders()) {
          assertThat(validator.validate(order)).as("shop %d", seed).isEmpty();
        }
      }
    }
  }

  @Test
  void everyPlanPassesTheAudit() {
    for (long seed : every(1)) {
      holds(RandomCase.of(seed));
    }
  }

  @Test
  void everyPlanThatWasSearchedPassesTheAuditAndIsNoWorse() {
    for (long seed : every(60)) {
      RandomCase shop = RandomCase.of(seed);
      assertThat(worth(holds(shop.searched())))
          .as("shop %d", seed)
          .isLessThanOrEqualTo(worth(shop.plan()));
    }
  }

  private static double worth(PlanSheet plan) {
    return plan.score().unplaced() * 1e12 + plan.score().weightedLateMinutes();
  }

  @Test
  void everyPlanThatFollowsAPublishedOnePassesTheAudit() {
    for (long seed : every(5)) {
      RandomCase shop = RandomCase.of(seed);
      PlanSheet published = shop.plan();
      for (int turn = 0; turn < 3; turn++) {
        shop = RandomChanges.later(shop, published, turn);
        published = holds(shop);
      }
    }
  }

  @Test
  void everyPlanThatFollowsTheDayAsItIsToldPassesTheAudit() {
    for (long seed : every(4)) {
      RandomCase shop = RandomCase.of(seed);
      PlanSheet published = shop.plan();
      for (int turn = 0; turn < 4; turn++) {
        shop = RandomChanges.laterAsTold(shop, published, turn);
        published = holds(shop);
      }
    }
  }

  @Test
  void theSameRequestGivesTheSamePlan() {
    for (long seed : every(20)) {
      assertThat(RandomCase.of(seed).plan())
          .as("shop %d", seed)
          .isEqualTo(RandomCase.of(seed).plan());
    }
  }

  @Test
  void simulatingWhatAMoveTouchesGivesWhatSimulatingAllGives() {
    for (long seed : every(4)) {
      RandomCase shop = RandomCase.of(seed);
      moveAbout(shop, 60);
      moveAbout(RandomChanges.later(shop, shop.plan(), 0), 60);
    }
  }

  /** Each move is compared; the evaluators throw where the two differ. */
  private static void moveAbout(RandomCase shop, int moves) {
    Problem problem = new ProblemMapper(shop.request()).map().problem();
    Dispatch.Plan plan = new Dispatch(problem).earliestDueDate();
    int[][] lines = plan.sequences();
    int[] lengths = plan.lengths();
    Random random = new Random(shop.seed());
    SequenceEvaluator evaluator = new SequenceEvaluator(problem, true, 1 + random.nextInt(4));
    evaluator.evaluate(lines, lengths);
    DryerEvaluator dryers = new DryerEvaluator(problem.withoutInk(), true);
    dryers.giveScreens(evaluator.screensReady());
    dryers.evaluateAsBase(lines, lengths);
    for (int i = 0; i < moves && problem.movable() > 1; i++) {
      int from = random.nextInt(lines.length);
      int to = random.nextInt(lines.length);
      int at = lengths[from] == 0 ? -1 : random.nextInt(lengths[from]);
      if (at >= 0 && problem.runs()[lines[from][at]].presses()[to]) {
        int run = take(lines[from], lengths, from, at);
        if (random.nextInt(4) == 0) {
          // the base knows nothing of a run that is put in then, as when an order is new
          dryers.evaluateAsBase(lines, lengths);
          evaluator.evaluateAsBase(lines, lengths);
        }
        int near = at + random.nextInt(5) - 2;
        int place = Math.max(0, Math.min(lengths[to], near));
        put(lines[to], lengths, to, place, run);
        evaluator.evaluate(lines, lengths);
        dryers.evaluate(lines, lengths);
        if (random.nextInt(3) == 0) {
          evaluator.evaluateAsBase(lines, lengths);
          dryers.evaluateAsBase(lines, lengths);
        } else {
          if (random.nextInt(3) == 0) {
            // a search that simulates several changes together makes them the base before it
            // refuses
            evaluator.evaluateAsBase(lines, lengths);
            dryers.evaluateAsBase(lines, lengths);
          }
          take(lines[to], lengths, to, place);
          put(lines[from], lengths, from, at, run);
        }
      }
    }
  }

  private static int take(int[] line, int[] lengths, int press, int at) {
    int run = line[at];
    lengths[press]--;
    System.arraycopy(line, at + 1, line, at, lengths[press] - at);
    return run;
  }

  private static void put(int[] line, int[] lengths, int press, int at, int run) {
    System.arraycopy(line, at, line, at + 1, lengths[press] - at);
    line[at] = run;
    lengths[press]++;
  }

  private static PlanSheet holds(RandomCase shop) {
    PlanSheet plan = shop.plan();
    List<Finding> findings = shop.audit(plan).findings();
    if (!findings.isEmpty()) {
      RandomCase small = shop.smallest(RandomCase::trouble);
      throw new AssertionError(
          "the plan for shop %d breaks the rules%n%s%nwith these orders alone%n%s%n%s"
              .formatted(
                  shop.seed(),
                  lines(findings),
                  String.join("\n", small.trouble()),
                  lines(small.orders())));
    }
    return plan;
  }

  private static String lines(List<?> things) {
    return things.stream().map(Object::toString).collect(Collectors.joining("\n"));
  }
}
