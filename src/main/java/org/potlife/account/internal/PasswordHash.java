package org.potlife.account.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * What is kept of a password: Argon2id (RFC 9106) in its usual text form, {@code
 * $argon2id$v=19$m=19456,t=2,p=1$salt$hash}. Memory, passes and lanes are those of the OWASP
 * Password Storage Cheat Sheet (19 MiB, 2, 1). A hash names its own parameters, so they can be
 * raised later.
 */
final class PasswordHash {

  private static final int MEMORY_KIB = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;

  /** A stored hash that asks for more is damaged, or somebody wants our memory. */
  private static final int MOST_MEMORY_KIB = 256 * 1024;

  private static final int MOST_PASSES = 16;

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final Pattern FORM =
      Pattern.compile(
          "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})"
              + "\\$([A-Za-z0-9+/]{11,86})\\$([A-Za-z0-9+/]{22,86})");

  private PasswordHash() {}

  static String of(String password) {
    byte[] salt = new byte[SALT_BYTES];
    RANDOM.nextBytes(salt);
    byte[] hash = hash(password, salt, MEMORY_KIB, PASSES, LANES, HASH_BYTES);
    return "$argon2id$v=19$m="
        + MEMORY_KIB
        + ",t="
        + PASSES
        + ",p="
        + LANES
        + "$"
        + text(salt)
        + "$"
        + text(hash);
  }

  /** Whether the password is the one of which this was kept; takes the same time either way. */
  static boolean matches(String password, String kept) {
    Matcher form = FORM.matcher(kept);
    if (!form.matches()) {
      throw new IllegalArgumentException("Not a password hash of this service");
    }
    int memory = Integer.parseInt(form.group(1));
    int passes = Integer.parseInt(form.group(2));
    int lanes = Integer.parseInt(form.group(3));
    if (memory > MOST_MEMORY_KIB || passes > MOST_PASSES) {
      throw new IllegalArgumentException(
          "A password hash asks for more memory or time than allowed");
    }
    byte[] salt = Base64.getDecoder().decode(form.group(4));
    byte[] wanted = Base64.getDecoder().decode(form.group(5));
    byte[] given = hash(password, salt, memory, passes, lanes, wanted.length);
    return MessageDigest.isEqual(wanted, given);
  }

  private static byte[] hash(
      String password, byte[] salt, int memoryKib, int passes, int lanes, int bytes) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(memoryKib)
            .withIterations(passes)
            .withParallelism(lanes)
            .withSalt(salt)
            .build());
    byte[] hash = new byte[bytes];
    // the same characters typed on two keyboards may be composed differently (NIST SP 800-63B)
    String composed = Normalizer.normalize(password, Normalizer.Form.NFKC);
    generator.generateBytes(composed.getBytes(StandardCharsets.UTF_8), hash);
    return hash;
  }

  private static String text(byte[] bytes) {
    return Base64.getEncoder().withoutPadding().encodeToString(bytes);
  }
}
