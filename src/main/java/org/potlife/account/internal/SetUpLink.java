package org.potlife.account.internal;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.potlife.platform.access.Roles;

/**
 * The link under which the first account is made. It stands in the log: who can read that runs the
 * service. Every start without an account makes one; the first account ends them all.
 */
@ApplicationScoped
class SetUpLink {

  private static final Logger LOG = Logger.getLogger(SetUpLink.class);
  private static final Duration GOOD_FOR = Duration.ofDays(7);

  private final EntityManager entities;
  private final Accounts accounts;
  private final Clock clock;
  private final SignInSettings settings;
  private final String address;

  @Inject
  SetUpLink(
      EntityManager entities,
      Accounts accounts,
      Clock clock,
      SignInSettings settings,
      @ConfigProperty(name = "quarkus.http.host") String host,
      @ConfigProperty(name = "quarkus.http.port") int port) {
    this.entities = entities;
    this.accounts = accounts;
    this.clock = clock;
    this.settings = settings;
    this.address = "http://" + (host.equals("0.0.0.0") ? "127.0.0.1" : host) + ":" + port;
  }

  void tell(@Observes StartupEvent event) {
    if (settings.mode() == SignInSettings.Mode.OFF || accounts.isAny()) {
      return;
    }
    LOG.warnf(
        "There is no account yet. Make the first one: %s/set-up/%s (good for %d days)",
        address, make(), GOOD_FOR.toDays());
  }

  /** Makes a link. */
  @Transactional
  String make() {
    String secret = Secret.fresh();
    entities
        .createNativeQuery("insert into set_up_link (kept, made_at) values (?1, ?2)")
        .setParameter(1, Secret.kept(secret))
        .setParameter(2, clock.instant())
        .executeUpdate();
    return secret;
  }

  /** Whether the first account can be made under this link. */
  @Transactional
  boolean isGood(String secret) {
    return !accounts.isAny()
        && !entities
            .createNativeQuery("select 1 from set_up_link where kept = ?1 and made_at > ?2")
            .setParameter(1, Secret.kept(secret))
            .setParameter(2, clock.instant().minus(GOOD_FOR))
            .getResultList()
            .isEmpty();
  }

  /**
   * Makes the first account, a planner who can make accounts, and ends all links.
   *
   * @return empty when the link is not good
   */
  @Transactional
  Optional<Account> use(String secret, String name, String fullName, String password) {
    if (!isGood(secret)) {
      return Optional.empty();
    }
    Optional<Account> first =
        accounts.createFirst(name, fullName, Set.of(Roles.PLANNER, Roles.ADMINISTRATOR), password);
    if (first.isPresent()) {
      entities.createNativeQuery("delete from set_up_link").executeUpdate();
    }
    return first;
  }
}
