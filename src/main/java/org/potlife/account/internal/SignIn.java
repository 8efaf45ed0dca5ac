package org.potlife.account.internal;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/** Checks who somebody says to be. The answer tells nobody whether an account exists. */
@ApplicationScoped
class SignIn {

  /** Each check takes 19 MiB and a processor for some tens of milliseconds. */
  private static final int CHECKS_AT_ONCE = 4;

  /** Stands for accounts that do not exist, so that these take as long as others. */
  private static final String NOBODYS = PasswordHash.of(Secret.fresh());

  private final Semaphore checks = new Semaphore(CHECKS_AT_ONCE);
  private final Accounts accounts;
  private final Failures failures;
  private final KnownBrowser browsers;

  @Inject
  SignIn(Accounts accounts, Failures failures, KnownBrowser browsers) {
    this.accounts = accounts;
    this.failures = failures;
    this.browsers = browsers;
  }

  /**
   * What came of an attempt.
   *
   * @param account who it is; empty when name or password is wrong or one has to wait
   * @param toWait how long nobody may try again; zero when the password was looked at
   */
  record Attempt(Optional<Accounts.Known> account, Duration toWait) {}

  /**
   * Looks at name and password.
   *
   * @param typed name as it was typed in
   * @param request whose sender and cookies say who tries
   */
  Attempt attempt(String typed, String password, RoutingContext request) {
    String name = Account.plainName(typed);
    Optional<Accounts.Known> known = accounts.findActive(name);
    Counted counted =
        known
            .flatMap(account -> browsers.find(account, request))
            .map(shown -> Counted.ofKnown(name, shown))
            .orElseGet(() -> Counted.ofStranger(name, ClientAddress.of(request)));
    Duration wait = failures.book(counted);
    if (!wait.isZero()) {
      return new Attempt(Optional.empty(), wait);
    }
    boolean right = check(password, known.map(Accounts.Known::passwordHash).orElse(NOBODYS));
    if (!right || known.isEmpty()) {
      return new Attempt(Optional.empty(), Duration.ZERO);
    }
    failures.succeed(counted);
    return new Attempt(known, Duration.ZERO);
  }

  private boolean check(String password, String hash) {
    // what is longer than any password can be is not worth the work of hashing it
    String bounded = password.length() > 4 * PasswordRule.MOST ? "" : password;
    checks.acquireUninterruptibly();
    try {
      return PasswordHash.matches(bounded, hash);
    } finally {
      checks.release();
    }
  }
}
