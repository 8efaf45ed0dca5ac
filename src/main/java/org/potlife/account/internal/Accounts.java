package org.potlife.account.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.potlife.platform.problem.ProblemException;

/** The accounts. They are never removed, so that the trail keeps its meaning; only closed. */
@ApplicationScoped
class Accounts {

  private final EntityManager entities;
  private final Sessions sessions;
  private final Clock clock;

  @Inject
  Accounts(EntityManager entities, Sessions sessions, Clock clock) {
    this.entities = entities;
    this.sessions = sessions;
    this.clock = clock;
  }

  @Transactional
  boolean isAny() {
    return AccountEntity.count() > 0;
  }

  @Transactional
  List<Account> list() {
    return AccountEntity.all().stream().map(AccountEntity::value).toList();
  }

  /**
   * @throws ProblemException 404
   */
  @Transactional
  Account get(long id) {
    return entity(id).value();
  }

  /**
   * Makes an account.
   *
   * @param password its first one
   * @param mustChange whether somebody else chose the password
   * @return empty when the name is taken
   */
  @Transactional
  Optional<Account> create(
      String name, String fullName, Set<String> roles, String password, boolean mustChange) {
    lock();
    return AccountEntity.byName(name).isPresent()
        ? Optional.empty()
        : Optional.of(store(name, fullName, roles, password, mustChange));
  }

  /**
   * Makes the first account.
   *
   * @return empty when there is one already
   */
  @Transactional
  Optional<Account> createFirst(String name, String fullName, Set<String> roles, String password) {
    lock();
    return AccountEntity.count() > 0
        ? Optional.empty()
        : Optional.of(store(name, fullName, roles, password, false));
  }

  /**
   * Changes name, roles and whether it can sign in.
   *
   * @throws ProblemException 404, 409 when nobody would be left who can make accounts
   */
  @Transactional
  Account change(long id, String fullName, Set<String> roles, boolean active) {
    lock();
    AccountEntity account = entity(id);
    boolean administered = account.value().administers();
    account.fullName = fullName;
    account.roles = Account.text(roles);
    account.active = active;
    account.changedAt = clock.instant();
    if (administered
        && AccountEntity.all().stream().map(AccountEntity::value).noneMatch(Account::administers)) {
      throw ProblemException.conflict(
          "Nobody would be left who can make accounts. Make another administrator first.");
    }
    if (!active) {
      sessions.endAll(id);
    }
    return account.value();
  }

  /**
   * Sets a password and ends all sessions of the account.
   *
   * @param mustChange whether somebody else chose it
   */
  @Transactional
  Account setPassword(long id, String password, boolean mustChange) {
    AccountEntity account = entity(id);
    account.passwordHash = PasswordHash.of(password);
    account.mustChange = mustChange;
    account.passwordAt = clock.instant();
    sessions.endAll(id);
    return account.value();
  }

  /** The hash of an account that can sign in. */
  @Transactional
  Optional<Known> findActive(String name) {
    // PostgreSQL knows no text with this sign
    return AccountEntity.byName(name.replace('\0', '?'))
        .filter(account -> account.active)
        .map(account -> new Known(account.value(), account.passwordHash));
  }

  /** An account with what is kept of its password. */
  record Known(Account account, String passwordHash) {}

  private Account store(
      String name, String fullName, Set<String> roles, String password, boolean mustChange) {
    Instant now = clock.instant();
    AccountEntity account = new AccountEntity();
    account.name = name;
    account.fullName = fullName;
    account.roles = Account.text(roles);
    account.passwordHash = PasswordHash.of(password);
    account.mustChange = mustChange;
    account.active = true;
    account.madeAt = now;
    account.changedAt = now;
    account.passwordAt = now;
    account.persist();
    return account.value();
  }

  private static AccountEntity entity(long id) {
    AccountEntity account = AccountEntity.findById(id);
    if (account == null) {
      throw ProblemException.notFound("There is no such account.");
    }
    return account;
  }

  /** Two that make the first account, or close the last administrator, must not cross. */
  private void lock() {
    entities.createNativeQuery("lock table account in share row exclusive mode").executeUpdate();
  }
}
