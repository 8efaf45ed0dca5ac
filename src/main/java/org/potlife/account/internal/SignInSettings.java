package org.potlife.account.internal;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import io.smallrye.config.WithParentName;
import java.time.Duration;

/** Settings of sign-in. */
@ConfigMapping(prefix = "potlife.sign-in")
interface SignInSettings {

  /** Whether one must sign in. */
  @WithParentName
  @WithDefault("auto")
  Mode mode();

  /** Ends a session that nobody used for so long. */
  @WithDefault("PT8H")
  Duration idle();

  /** Ends a session so long after sign-in. */
  @WithDefault("PT24H")
  Duration longest();

  /**
   * Marks the cookie Secure although the request came by http: for a reverse proxy with TLS that
   * does not say so.
   */
  @WithDefault("false")
  boolean secureCookie();

  /** Whether one must sign in. */
  enum Mode {
    /** Not while there is no account, and then only from this computer. */
    AUTO,
    /** Always. */
    REQUIRED,
    /** Never: whoever reaches the service may do everything. */
    OFF
  }
}
