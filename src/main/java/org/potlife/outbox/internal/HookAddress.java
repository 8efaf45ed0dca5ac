package org.potlife.outbox.internal;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which addresses may be told: https anywhere, http on this machine only unless it is allowed. */
final class HookAddress {

  private static final int LONGEST = 1000;

  /** By name or number as written: what a name resolves to may change between look and use. */
  private static final Pattern LOOPBACK =
      Pattern.compile("localhost|127(?:\\.\\d{1,3}){3}|\\[::1]|\\[0:0:0:0:0:0:0:1]");

  private HookAddress() {}

  /**
   * What is wrong with an address.
   *
   * @param plainHttp whether http is allowed everywhere
   */
  static Optional<String> fault(String url, boolean plainHttp) {
    if (url == null || url.isBlank()) {
      return Optional.of("must be given");
    }
    if (url.length() > LONGEST) {
      return Optional.of("must have " + LONGEST + " characters at most");
    }
    URI uri;
    try {
      uri = new URI(url);
    } catch (URISyntaxException e) {
      return Optional.of("must be an absolute http or https address");
    }
    String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
    if (uri.getHost() == null || !(scheme.equals("https") || scheme.equals("http"))) {
      return Optional.of("must be an absolute http or https address");
    }
    if (uri.getRawUserInfo() != null || uri.getRawFragment() != null) {
      return Optional.of("must contain no user, password or fragment");
    }
    boolean loopback = LOOPBACK.matcher(uri.getHost().toLowerCase(Locale.ROOT)).matches();
    if (scheme.equals("http") && !loopback && !plainHttp) {
      return Optional.of(
          "must be https, or http on this machine; potlife.webhooks.plain-http=true allows http"
              + " elsewhere");
    }
    return Optional.empty();
  }
}
