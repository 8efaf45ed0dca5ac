package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/**
 * Lets somebody in who has shown who it is: a new session, and a browser that is known from now.
 */
@ApplicationScoped
class Welcome {

  private final Accounts accounts;
  private final Sessions sessions;
  private final SessionCookie cookie;
  private final KnownBrowser browsers;

  @Inject
  Welcome(Accounts accounts, Sessions sessions, SessionCookie cookie, KnownBrowser browsers) {
    this.accounts = accounts;
    this.sessions = sessions;
    this.cookie = cookie;
    this.browsers = browsers;
  }

  /** Leads to a page of the service with both cookies. */
  Response to(String page, Account account, RoutingContext request) {
    Response.ResponseBuilder answer =
        Response.seeOther(URI.create(page))
            .cookie(cookie.of(sessions.begin(account.id()), request));
    accounts
        .findActive(account.name())
        .ifPresent(known -> answer.cookie(browsers.cookie(known, request)));
    return answer.build();
  }
}
