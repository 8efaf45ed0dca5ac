package org.potlife.event.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.ColumnTransformer;

/** A row of the table shop_event. */
@Entity
@Table(name = "shop_event")
public class ShopEventEntity extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long seq;

  public String plant;

  public String source;

  @Column(name = "event_id")
  public String eventId;

  public String type;

  public Instant time;

  @ColumnTransformer(write = "cast(? as jsonb)")
  public String data;

  @Column(name = "recorded_at")
  public Instant recordedAt;
}
