package org.potlife.floor.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.ColumnTransformer;

/** A row of the table floor_run. */
@Entity
@Table(name = "floor_run")
public class FloorRunEntity {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  public String plant;

  public String run;

  @Column(name = "order_ref")
  public String order;

  public String design;

  public String position;

  public int lot;

  public String press;

  /** Its line on the plan in force when the first thing was told of it. */
  @ColumnTransformer(write = "cast(? as jsonb)")
  public String planned;
}
