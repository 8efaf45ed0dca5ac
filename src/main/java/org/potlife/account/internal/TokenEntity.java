package org.potlife.account.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A row of the table access_token. */
@Entity
@Table(name = "access_token")
public class TokenEntity extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  /** SHA-256 of the token. */
  public String kept;

  public String plant;

  public String name;

  /** Words with a space between. */
  public String roles;

  @Column(name = "made_by")
  public String madeBy;

  @Column(name = "made_at")
  public Instant madeAt;

  @Column(name = "last_used_at")
  public Instant lastUsedAt;

  @Column(name = "revoked_at")
  public Instant revokedAt;

  AccessToken value() {
    return new AccessToken(
        id, plant, name, Account.words(roles), madeBy, madeAt, lastUsedAt, revokedAt);
  }
}
