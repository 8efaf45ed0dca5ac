package org.potlife.account.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;

/** A row of the table account_session. */
@Entity
@Table(name = "account_session")
public class SessionEntity extends PanacheEntityBase {

  /** SHA-256 of what the cookie has. */
  @Id public String kept;

  @ManyToOne(fetch = FetchType.EAGER)
  @JoinColumn(name = "account")
  public AccountEntity account;

  @Column(name = "begun_at")
  public Instant begunAt;

  @Column(name = "last_used_at")
  public Instant lastUsedAt;
}
