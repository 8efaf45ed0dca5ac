package org.potlife.account.internal;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a password must be: long, and not what everybody tries first. No rules of composition and no
 * expiry, after NIST SP 800-63B, section 5.1.1.2 (revision 4: 3.1.1.2), which asks for both, for at
 * least 64 allowed characters, and for a list of refused words.
 */
final class PasswordRule {

  static final int LEAST = 12;
  static final int MOST = 128;

  private static final List<String> TRIED_FIRST =
      List.of(
          "password",
          "passwort",
          "potlife",
          "letmein",
          "iloveyou",
          "welcome",
          "administrator",
          "changeme",
          "qwertyuiop",
          "qwertzuiop",
          "1234567890",
          "0987654321",
          "abcdefghijkl");

  /** What is left of a password without what everybody tries must still be this long. */
  private static final int LEAST_OWN = 8;

  private PasswordRule() {}

  /**
   * What is wrong with a password.
   *
   * @param name of the account
   * @return empty when it can be taken
   */
  static Optional<String> wrong(String password, String name) {
    String composed = Normalizer.normalize(password, Normalizer.Form.NFKC);
    int length = composed.codePointCount(0, composed.length());
    if (length < LEAST) {
      return Optional.of("must have " + LEAST + " characters at least; it has " + length);
    }
    if (length > MOST) {
      return Optional.of("must have " + MOST + " characters at most; it has " + length);
    }
    if (composed.codePoints().distinct().count() < 5) {
      return Optional.of("repeats the same few characters");
    }
    String rest = composed.toLowerCase(Locale.ROOT).replace(name.toLowerCase(Locale.ROOT), "");
    for (String word : TRIED_FIRST) {
      rest = rest.replace(word, "");
    }
    if (rest.length() < LEAST_OWN) {
      return Optional.of(
          "is among the first that anybody tries; take a few words that do not belong together");
    }
    return Optional.empty();
  }
}
