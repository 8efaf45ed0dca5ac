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
import org.potlife.event.ShopEvent;

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

  /** What of the shop's state the event contradicts; null when it took effect. */
  public String parked;

  /** A person set it aside for good, though it is parked. */
  public boolean dismissed;

  LogState state() {
    if (parked == null) {
      return LogState.APPLIED;
    }
    return dismissed ? LogState.DISMISSED : LogState.PARKED;
  }

  static boolean isKnown(String plant, String source, String eventId) {
    return count("plant = ?1 and source = ?2 and eventId = ?3", plant, source, eventId) > 0;
  }

  static void record(ShopEvent event, String parked, Instant recordedAt) {
    ShopEventEntity row = new ShopEventEntity();
    row.plant = event.plant();
    row.source = event.source();
    row.eventId = event.id();
    row.type = ShopEvent.PREFIX + event.type();
    row.time = event.time();
    row.data = event.data().toString();
    row.recordedAt = recordedAt;
    row.parked = parked;
    row.persist();
  }
}
