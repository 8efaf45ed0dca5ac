package org.potlife.outbox.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;

/** A row of the table dead_letter: an event that a hook did not take. */
@Entity
@Table(name = "dead_letter")
public class DeadLetter {

  @EmbeddedId public Key key;

  public String type;

  public String event;

  public int tries;

  @Column(name = "last_failure")
  public String lastFailure;

  @Column(name = "last_try_at")
  public Instant lastTryAt;

  /** Whether somebody asked to try again. */
  public boolean redelivery;

  /** The hook and the number of the event. */
  @Embeddable
  public record Key(String plant, String name, long seq) implements Serializable {}
}
