package org.potlife.account.internal;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** What a request shows to say who it is from. */
final class Shown {

  private Shown() {}

  /** A token. */
  static final class Token extends BaseAuthenticationRequest {

    private final String secret;

    Token(String secret) {
      this.secret = secret;
    }

    String secret() {
      return secret;
    }
  }

  /** A session's cookie. */
  static final class Session extends BaseAuthenticationRequest {

    private final String secret;

    Session(String secret) {
      this.secret = secret;
    }

    String secret() {
      return secret;
    }
  }

  /** Nothing: it counts as this computer's user while the service is open. */
  static final class Nothing extends BaseAuthenticationRequest {}
}
