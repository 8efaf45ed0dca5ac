package org.potlife.outbox.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;

/** A row of the table webhook: an address that gets the events of a plant. */
@Entity
@Table(name = "webhook")
public class Webhook {

  @EmbeddedId public Key key;

  public String url;

  /** Names of types separated by commas; empty for all. */
  public String types;

  /** Key of the signature. Never shown and never logged. */
  public String secret;

  public long version;

  /** Number up to which all is delivered or set aside. */
  public long position;

  /** How often the next event failed. */
  public int tries;

  @Column(name = "last_failure")
  public String lastFailure;

  @Column(name = "last_delivered_at")
  public Instant lastDeliveredAt;

  /** A hook's name within its plant. */
  @Embeddable
  public record Key(String plant, String name) implements Serializable {

    /** Both in one, as the job library wants it; neither part can contain a slash. */
    String instance() {
      return plant + "/" + name;
    }

    static Key ofInstance(String instance) {
      List<String> parts = List.of(instance.split("/", 2));
      return new Key(parts.get(0), parts.get(1));
    }
  }
}
