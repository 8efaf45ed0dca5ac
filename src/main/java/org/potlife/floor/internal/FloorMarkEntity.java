package org.potlife.floor.internal;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A row of the table floor_mark. */
@Entity
@Table(name = "floor_mark")
public class FloorMarkEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  public String plant;

  public String run;

  /** started, approved, counted, spoiled or ended. */
  public String mark;

  public Instant at;

  /** Good pieces, cumulative; null where the mark has none. */
  public Integer good;

  /** Spoiled pieces: cumulative for a count or an end, further ones for spoiled. */
  public Integer spoiled;

  public String cause;

  public String person;
}
