package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRuleTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "twelve signs",
        "only small letters here",
        "\u5e03\u5370\u5237\u7684\u65e5\u8ba1\u5212\u8868\u5f88\u597d\u7684\u5e03",
        "Mara likes wet screens"
      })
  void lengthIsEnough(String password) {
    assertThat(PasswordRule.wrong(password, "mara")).isEmpty();
  }

  @Test
  void elevenSignsAreTooFewAndAHundredAndTwentyNineTooMany() {
    assertThat(PasswordRule.wrong("eleven sign", "mara").orElseThrow()).contains("12", "11");
    String most = "ab c!".repeat(26);
    assertThat(PasswordRule.wrong(most.substring(0, 128), "mara")).isEmpty();
    assertThat(PasswordRule.wrong(most.substring(0, 129), "mara").orElseThrow()).contains("128");
  }

  @Test
  void aSignOfTwoCharsCountsOnce() {
    // eleven signs of two chars each
    assertThat(PasswordRule.wrong("\uD83D\uDC55".repeat(11), "mara").orElseThrow())
        .contains("it has 11");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "aaaaaaaaaaaaaaaa",
        "121212121212121212",
        "password1234",
        "Potlife-2026!",
        "maramaramara1",
        "qwertyuiop123"
      })
  void whatEverybodyTriesFirstIsRefused(String password) {
    assertThat(PasswordRule.wrong(password, "mara")).isPresent();
  }
}
