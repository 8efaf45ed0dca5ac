package org.potlife.account.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Random secrets that the service hands out, and what it keeps of them. 256 random bits cannot be
 * guessed, so a plain hash suffices; what people choose goes through {@link PasswordHash}.
 */
final class Secret {

  /** Tokens begin with it, so that people and scanners of source code recognise a lost one. */
  static final String TOKEN_PREFIX = "potlife_";

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;

  /** No letters or digits that look alike. */
  private static final String READABLE = "abcdefghijkmnpqrstuvwxyz23456789";

  private Secret() {}

  /** For a session or a link: 43 characters that need no quoting in addresses and headers. */
  static String fresh() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  static String freshToken() {
    return TOKEN_PREFIX + fresh();
  }

  /** A first password to be told or written down: four groups of four characters, 80 bits. */
  static String freshPassword() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 16; i++) {
      text.append(i > 0 && i % 4 == 0 ? "-" : "");
      text.append(READABLE.charAt(RANDOM.nextInt(READABLE.length())));
    }
    return text.toString();
  }

  /** What is kept: SHA-256 in hexadecimal. */
  static String kept(String secret) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
