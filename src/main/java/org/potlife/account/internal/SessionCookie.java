package org.potlife.account.internal;

import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.NewCookie;
import java.util.Optional;

/** The cookie with a session's secret. No script can read it, and it ends with the browser. */
@ApplicationScoped
class SessionCookie {

  static final String NAME = "potlife-session";

  private final boolean alwaysSecure;

  @Inject
  SessionCookie(SignInSettings settings) {
    this.alwaysSecure = settings.secureCookie();
  }

  /** What the cookies of an OpenID session begin with. */
  static final String OF_ORGANISATION = "q_session";

  /** Whether a browser's sign-in comes along, with us or with an OpenID provider. */
  static boolean isAnyIn(RoutingContext request) {
    return request.request().cookies().stream()
        .anyMatch(
            sent -> sent.getName().equals(NAME) || sent.getName().startsWith(OF_ORGANISATION));
  }

  static Optional<String> in(RoutingContext request) {
    return Optional.ofNullable(request.request().getCookie(NAME)).map(Cookie::getValue);
  }

  NewCookie of(String secret, RoutingContext request) {
    return cookie(secret, request).build();
  }

  NewCookie gone(RoutingContext request) {
    return cookie("", request).maxAge(0).build();
  }

  private NewCookie.Builder cookie(String value, RoutingContext request) {
    return new NewCookie.Builder(NAME)
        .value(value)
        .path("/")
        .httpOnly(true)
        // a link in a message may lead into the service; writes are held by OriginRule
        .sameSite(NewCookie.SameSite.LAX)
        .secure(alwaysSecure || "https".equals(request.request().scheme()));
  }
}
