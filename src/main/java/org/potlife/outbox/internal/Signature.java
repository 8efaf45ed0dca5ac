package org.potlife.outbox.internal;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The signature of a delivery: HMAC-SHA256 (RFC 2104) under the hook's secret over the time, a dot
 * and the body, so that neither can be changed and an old delivery cannot be sent again as new.
 */
final class Signature {

  private static final String ALGORITHM = "HmacSHA256";

  private Signature() {}

  /**
   * @param epochSeconds time of the delivery, seconds since 1970
   * @return {@code v1=} and the code in lower-case hexadecimal digits
   */
  static String of(String secret, long epochSeconds, byte[] body) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), ALGORITHM));
      mac.update((epochSeconds + ".").getBytes(StandardCharsets.US_ASCII));
      return "v1=" + HexFormat.of().formatHex(mac.doFinal(body));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
