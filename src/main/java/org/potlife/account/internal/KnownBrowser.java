package org.potlife.account.internal;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.NewCookie;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A cookie that says that somebody signed in to an account with this browser before. It opens
 * nothing: it only has the browser's failures counted by themselves, so that a stranger who knows
 * the account's name cannot keep its owner out.
 *
 * <p>It is signed with what is kept of the password, so it needs no key of the service and no
 * table, and a new password ends it.
 */
@ApplicationScoped
class KnownBrowser {

  /** Begins the cookie's name; the rest stands for the account, so that several can share one. */
  static final String NAME = "potlife-browser-";

  /** So long after the last sign-in a browser is known. */
  static final Duration KNOWN_FOR = Duration.ofDays(180);

  private static final int NAME_DIGITS = 16;

  private final Clock clock;
  private final boolean alwaysSecure;

  @Inject
  KnownBrowser(Clock clock, SignInSettings settings) {
    this.clock = clock;
    this.alwaysSecure = settings.secureCookie();
  }

  /** The cookie for a browser in which this account has just signed in. */
  NewCookie cookie(Accounts.Known account, RoutingContext request) {
    long since = clock.instant().getEpochSecond();
    return new NewCookie.Builder(name(account.account().name()))
        .value(since + "." + sign(account, since))
        .path("/")
        .maxAge((int) KNOWN_FOR.toSeconds())
        .httpOnly(true)
        .sameSite(NewCookie.SameSite.STRICT)
        .secure(alwaysSecure || "https".equals(request.request().scheme()))
        .build();
  }

  /** What the browser shows of this account, if it is genuine and not too old. */
  Optional<String> find(Accounts.Known account, RoutingContext request) {
    return Optional.ofNullable(request.request().getCookie(name(account.account().name())))
        .map(Cookie::getValue)
        .filter(value -> isGood(account, value));
  }

  private boolean isGood(Accounts.Known account, String value) {
    int dot = value.indexOf('.');
    if (dot < 1) {
      return false;
    }
    try {
      long since = Long.parseLong(value.substring(0, dot));
      byte[] shown = value.substring(dot + 1).getBytes(StandardCharsets.UTF_8);
      byte[] right = sign(account, since).getBytes(StandardCharsets.UTF_8);
      return MessageDigest.isEqual(shown, right)
          && clock.instant().isBefore(Instant.ofEpochSecond(since).plus(KNOWN_FOR));
    } catch (NumberFormatException e) {
      return false;
    }
  }

  static String name(String account) {
    return NAME + Secret.kept("browser of " + account).substring(0, NAME_DIGITS);
  }

  private static String sign(Accounts.Known account, long since) {
    String text = "browser of " + account.account().name() + " since " + since;
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      byte[] key = account.passwordHash().getBytes(StandardCharsets.UTF_8);
      mac.init(new SecretKeySpec(key, mac.getAlgorithm()));
      return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
