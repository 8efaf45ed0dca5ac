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
  void theSameRequestGivesTheSamePlan() {
    for (long seed : every(20)) {
      assertThat(RandomCase.of(seed).plan())
          .as("shop %d", seed)
          .isEqualTo(RandomCase.of(seed).plan());
    }
  }

  @Test
  void simulatingFromACheckpointGivesWhatSimulatingAllGives() {
    for (long seed : every(20)) {
      Problem problem = new ProblemMapper(RandomCase.of(seed).request()).map().problem();
      Dispatch.Plan plan = new Dispatch(problem).earliestDueDate();
      // throws where the two differ
      SequenceEvaluator evaluator = new SequenceEvaluator(problem, true);
      evaluator.evaluate(plan.sequences(), plan.lengths());
      Random random = new Random(seed);
      for (int i = 0; i < 20; i++) {
        int press = random.nextInt(plan.lengths().length);
        int length = plan.lengths()[press];
        if (length > 1) {
          int[] line = plan.sequences()[press];
          int at = random.nextInt(length - 1);
          int run = line[at];
          line[at] = line[at + 1];
          line[at + 1] = run;
        }
        evaluator.evaluate(plan.sequences(), plan.lengths());
        // twice in a row makes it the base
        if (random.nextInt(3) == 0) {
          evaluator.evaluate(plan.sequences(), plan.lengths());
        }
      }
    }
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
