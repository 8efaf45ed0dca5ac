package org.potlife.plan.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.potlife.audit.AuditReport;
import org.potlife.audit.Finding;
import org.potlife.audit.RuleResult;
import org.potlife.plan.Stability;
import org.potlife.plan.list.ChangeList;
import org.potlife.plan.list.PromiseChange;
import org.potlife.shop.Following;
import org.potlife.shop.Following.Publish;

/** When a plan that was made by itself is published by itself. */
class PublicationRuleTest {

  private static final AuditReport SOUND =
      new AuditReport(List.of(new RuleResult("R14", "Dwell", 5, List.of())));

  private static Following fewerThan(int runs) {
    return new Following(true, null, null, null, Publish.WHEN_NO_PROMISE_GETS_WORSE, runs);
  }

  private static ChangeList changes(int runsMoved, PromiseChange... promises) {
    return new ChangeList(
        "p-1",
        new Stability(20, runsMoved, 0, 0, 0, 0),
        List.of(),
        List.of(),
        List.of(),
        List.of(promises),
        null,
        List.of());
  }

  private static PromiseChange promise(String order, boolean worse) {
    return new PromiseChange(order, null, null, null, 0, 0, worse, order + " changes.");
  }

  private static Optional<String> objection(ChangeList changes, int fewerThan) {
    return PublicationRule.objection(changes, SOUND, fewerThan(fewerThan));
  }

  @Test
  void aFewRunsMayMoveIfNoPromiseGetsWorse() {
    assertThat(objection(changes(4, promise("A-1", false)), 5)).isEmpty();
  }

  @Test
  void asManyAsThePlantSaysMayNot() {
    assertThat(objection(changes(5), 5))
        .contains("5 runs move; by itself the plant publishes when fewer than 5 do.");
  }

  @Test
  void aWorsePromiseWaitsForThePlannerWhoIsToldWhich() {
    assertThat(objection(changes(0, promise("A-1", true), promise("A-2", false)), 5))
        .contains("A-1 changes.");
  }

  @Test
  void ofManyWorsePromisesTheFirstFiveAreNamed() {
    PromiseChange[] all = new PromiseChange[7];
    for (int i = 0; i < all.length; i++) {
      all[i] = promise("A-" + i, true);
    }
    assertThat(objection(changes(0, all), 5).orElseThrow())
        .contains("A-4 changes.")
        .doesNotContain("A-5 changes.")
        .endsWith("And 2 more promises get worse.");
  }

  @Test
  void aBrokenRuleIsReasonEnough() {
    AuditReport unsound =
        new AuditReport(
            List.of(new RuleResult("R14", "Dwell", 5, List.of(new Finding("R14", "D1", "fast")))));
    assertThat(PublicationRule.objection(changes(0), unsound, fewerThan(5)))
        .contains("It breaks 1 times a rule of the shop.");
  }
}
