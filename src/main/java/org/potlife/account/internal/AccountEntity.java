package org.potlife.account.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A row of the table account. */
@Entity
@Table(name = "account")
public class AccountEntity extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  public String name;

  @Column(name = "full_name")
  public String fullName;

  @Column(name = "password_hash")
  public String passwordHash;

  @Column(name = "must_change")
  public boolean mustChange;

  /** Words with a space between. */
  public String roles;

  public boolean active;

  @Column(name = "made_at")
  public Instant madeAt;

  @Column(name = "changed_at")
  public Instant changedAt;

  @Column(name = "password_at")
  public Instant passwordAt;

  static Optional<AccountEntity> byName(String name) {
    return find("name", name).firstResultOptional();
  }

  static List<AccountEntity> all() {
    return list("order by active desc, name");
  }

  Account value() {
    return new Account(id, name, fullName, Account.words(roles), active, mustChange);
  }
}
