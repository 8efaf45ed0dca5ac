package org.potlife.order.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;

/** A row of the table idempotency_key: a request that was carried out, and its answer. */
@Entity
@Table(name = "idempotency_key")
public class IdempotencyEntity extends PanacheEntityBase {

  @EmbeddedId public Key id;

  @Column(name = "body_hash")
  public String bodyHash;

  public int status;

  public String response;

  @Column(name = "created_at")
  public Instant createdAt;

  /** Keys are the client's own and unique within a plant. */
  @Embeddable
  public record Key(String plant, String key) {}
}
