package org.potlife.shop.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.ColumnTransformer;

/** A row of the table plant. */
@Entity
@Table(name = "plant")
public class PlantEntity extends PanacheEntityBase {

  @Id public String id;

  @ColumnTransformer(write = "cast(? as jsonb)")
  public String shop;

  public long version;

  @Column(name = "data_stamp")
  public long dataStamp;

  @Column(name = "changed_at")
  public Instant changedAt;
}
