package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OriginRuleTest {

  private static final String HERE = "127.0.0.1:8080";

  private static boolean passes(String fetchSite, String origin, String host, boolean cookie) {
    return OriginRule.refusal("POST", fetchSite, origin, host, cookie).isEmpty();
  }

  @Test
  void aReadMayComeFromAnywhere() {
    assertThat(OriginRule.refusal("GET", "cross-site", "https://elsewhere.example", HERE, true))
        .isEmpty();
  }

  @Test
  void aFormOfOurOwnMayWrite() {
    assertThat(passes("same-origin", "http://127.0.0.1:8080", HERE, true)).isTrue();
    assertThat(passes(null, "http://127.0.0.1:8080", HERE, true)).isTrue();
    assertThat(passes("same-origin", null, HERE, true)).isTrue();
  }

  @Test
  void aFormOfAnotherSiteMayNot() {
    assertThat(passes("cross-site", "https://elsewhere.example", HERE, false)).isFalse();
    assertThat(passes("same-site", "http://127.0.0.1:9090", HERE, false)).isFalse();
    assertThat(passes(null, "https://elsewhere.example", HERE, false)).isFalse();
    assertThat(passes("same-origin", "https://elsewhere.example", HERE, false)).isFalse();
    assertThat(passes(null, "http://127.0.0.1:9090", HERE, false)).isFalse();
    assertThat(passes(null, "null", HERE, false)).isFalse();
    assertThat(passes(null, "http://127.0.0.1:8080", null, false)).isFalse();
  }

  @Test
  void aPortThatTheSchemeHasAnywayMakesNoDifference() {
    assertThat(passes(null, "https://plan.example", "plan.example:443", true)).isTrue();
    assertThat(passes(null, "https://plan.example:443", "plan.example", true)).isTrue();
    assertThat(passes(null, "http://PLAN.example", "plan.example", true)).isTrue();
    assertThat(passes(null, "https://plan.example", "plan.example:80", true)).isFalse();
  }

  @Test
  void aProgramSaysNothingAndMayWriteUnlessItShowsACookie() {
    assertThat(passes(null, null, HERE, false)).isTrue();
    assertThat(passes(null, null, HERE, true)).isFalse();
  }

  @Test
  void aRefusalDoesNotRepeatWhatMightBeMarkup() {
    assertThat(OriginRule.refusal("POST", null, "http://<b>", HERE, false).orElseThrow())
        .doesNotContain("<b>");
  }
}
