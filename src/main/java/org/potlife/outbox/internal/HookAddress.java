package org.potlife.outbox.internal;

import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which addresses may be told: https anywhere, http on this machine only unless it is allowed. The
 * shop's own network is allowed, for its ERP stands there; addresses that only machines beside this
 * one can answer without being asked for by name (link-local, as used for the secrets of hosted
 * machines) are not.
 */
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
    if (scheme.equals("http") && !isNamedLoopback(uri.getHost()) && !plainHttp) {
      return Optional.of(
          "must be https, or http on this machine; potlife.webhooks.plain-http=true allows http"
              + " elsewhere");
    }
    return Optional.empty();
  }

  /** Why nothing is sent to what the host of an address is found at just now. */
  static Optional<String> barred(URI uri) {
    InetAddress[] found;
    try {
      found = InetAddress.getAllByName(uri.getHost());
    } catch (UnknownHostException e) {
      return Optional.of("no such host");
    }
    boolean loopback = isNamedLoopback(uri.getHost());
    for (InetAddress address : found) {
      if (isBarred(address, loopback)) {
        return Optional.of("the host is found at an address that is not told anything");
      }
    }
    return Optional.empty();
  }

  /**
   * @param loopback whether the address names this machine as such
   */
  static boolean isBarred(InetAddress address, boolean loopback) {
    return address.isLinkLocalAddress()
        || address.isAnyLocalAddress()
        || address.isMulticastAddress()
        || address.isLoopbackAddress() && !loopback;
  }

  private static boolean isNamedLoopback(String host) {
    return LOOPBACK.matcher(host.toLowerCase(Locale.ROOT)).matches();
  }
}
