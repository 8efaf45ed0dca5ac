package org.potlife.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.potlife.audit.GoodPlan.WAVE_2;

import org.junit.jupiter.api.Test;

/** Breaks that cannot be had alone, each with the reason. */
class TwoRulesAtOnceTest {

  @Test
  void aGarmentWiderThanTheBeltHasNoLaneSoItsShareOfTheBeltIsWrongToo() {
    Audited wide = Audited.good().dryer("beltWidthMm", 500);
    assertThat(wide.brokenRules()).contains("R1", "R15");
  }

  @Test
  void aScreenSetCannotBeOnTwoPressesAndTheOtherPressHasToBeSetUpForIt() {
    Audited elsewhere = Audited.good().run(WAVE_2, "press", "P2");
    assertThat(elsewhere.brokenRules()).contains("R2", "R4");
    assertThat(elsewhere.report().findings())
        .anySatisfy(finding -> assertThat(finding.detail()).contains("is with run GS-2.wave"));
  }
}
