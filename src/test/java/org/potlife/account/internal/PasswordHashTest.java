package org.potlife.account.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PasswordHashTest {

  /**
   * Source: test.c of the Argon2 reference implementation (version 0x13, Argon2id, t=2, m=2^16,
   * p=1), the form given there in its encoding.
   */
  private static final String REFERENCE =
      "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";

  @Test
  void theReferencesHashIsThatOfItsPasswordAndOfNoOther() {
    assertThat(PasswordHash.matches("password", REFERENCE)).isTrue();
    assertThat(PasswordHash.matches("passwore", REFERENCE)).isFalse();
  }

  @Test
  void aPasswordIsKeptSaltedInTheUsualForm() {
    String kept = PasswordHash.of("belts turn at seven");

    assertThat(kept).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain("belts");
    assertThat(PasswordHash.of("belts turn at seven")).isNotEqualTo(kept);
    assertThat(PasswordHash.matches("belts turn at seven", kept)).isTrue();
    assertThat(PasswordHash.matches("belts turn at Seven", kept)).isFalse();
  }

  @Test
  void aLetterTypedAsTwoSignsIsTheSameLetter() {
    String kept = PasswordHash.of("gru\u0308ne Siebe im Regal");

    assertThat(PasswordHash.matches("gr\u00fcne Siebe im Regal", kept)).isTrue();
  }

  @Test
  void aDamagedHashIsNeverTakenForRight() {
    assertThatThrownBy(() -> PasswordHash.matches("x", "plain"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PasswordHash.matches("x", REFERENCE.replace("m=65536", "m=9999999")))
        .hasMessageContaining("more memory");
  }
}
