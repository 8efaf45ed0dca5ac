package org.potlife.account.internal;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which writes may come from a browser: those that a page of this service sends.
 *
 * <p>Browsers say where a request comes from in {@code Sec-Fetch-Site} (W3C Fetch Metadata) and,
 * with every write, in {@code Origin} (RFC 6454; WHATWG Fetch); no page can forge either. Programs
 * that are no browser send neither and are let through unless they show a cookie.
 */
final class OriginRule {

  private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

  private OriginRule() {}

  /**
   * Why a request is refused.
   *
   * @param fetchSite value of Sec-Fetch-Site, or null
   * @param origin value of Origin, or null
   * @param authority host and port that the request asks for, or null
   * @param cookie whether it brings a session's cookie
   * @return empty when it may go on
   */
  static Optional<String> refusal(
      String method, String fetchSite, String origin, String authority, boolean cookie) {
    if (READS.contains(method)) {
      return Optional.empty();
    }
    if (fetchSite != null && !fetchSite.equals("same-origin") && !fetchSite.equals("none")) {
      return Optional.of("The browser says that a page of another site sent this.");
    }
    if (origin != null && !sameAuthority(origin, authority)) {
      return Optional.of(
          "The browser says that a page of "
              + printable(origin)
              + " sent this, not one of this"
              + " service. A reverse proxy must pass the Host header on.");
    }
    if (cookie && fetchSite == null && origin == null) {
      return Optional.of(
          "A write with a session's cookie must say where it comes from: send Origin, or use a token.");
    }
    return Optional.empty();
  }

  private static boolean sameAuthority(String origin, String authority) {
    if (authority == null) {
      return false;
    }
    try {
      URI uri = URI.create(origin);
      return uri.getRawAuthority() != null
          && bare(uri.getRawAuthority(), uri.getScheme()).equals(bare(authority, uri.getScheme()));
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** Host and port without the port that the scheme has anyway. */
  private static String bare(String authority, String scheme) {
    String usual = "https".equalsIgnoreCase(scheme) ? ":443" : ":80";
    String lower = authority.toLowerCase(Locale.ROOT);
    return lower.endsWith(usual) ? lower.substring(0, lower.length() - usual.length()) : lower;
  }

  private static String printable(String origin) {
    return origin.length() <= 100 && origin.matches("[\\w.:/\\[\\]-]+") ? origin : "another site";
  }
}
