package org.potlife.order.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hibernate.annotations.ColumnTransformer;
import org.potlife.order.OrderQuery;

/** A row of the table customer_order. */
@Entity
@Table(name = "customer_order")
public class OrderEntity extends PanacheEntityBase {

  @EmbeddedId public Key key;

  @ColumnTransformer(write = "cast(? as jsonb)")
  public String body;

  @Column(name = "due_at")
  public Instant dueAt;

  public int priority;

  public String state;

  public long version;

  @Column(name = "content_hash")
  public String contentHash;

  @Column(name = "created_at")
  public Instant createdAt;

  @Column(name = "changed_at")
  public Instant changedAt;

  @Column(name = "told_at")
  public Instant toldAt;

  /** A reference is the ERP's and unique within a plant. */
  @Embeddable
  public record Key(String plant, String reference) {}

  static List<OrderEntity> listOpen(String plant) {
    return list(
        "key.plant = ?1 and state in ('open', 'started') order by dueAt, key.reference", plant);
  }

  static List<OrderEntity> listFinishedSince(String plant, Instant since) {
    return list(
        "key.plant = ?1 and state = 'finished' and changedAt >= ?2 order by dueAt, key.reference",
        plant,
        since);
  }

  static List<OrderEntity> listPage(String plant, OrderQuery query) {
    StringBuilder where = new StringBuilder("key.plant = :plant");
    Map<String, Object> values = new HashMap<>(Map.of("plant", plant));
    query
        .state()
        .ifPresent(
            state -> {
              where.append(" and state = :state");
              values.put("state", state.word());
            });
    query
        .dueBefore()
        .ifPresent(
            due -> {
              where.append(" and dueAt < :before");
              values.put("before", due);
            });
    query
        .after()
        .ifPresent(
            after -> {
              where.append(" and (dueAt > :due or (dueAt = :due and key.reference > :last))");
              values.put("due", after.dueAt());
              values.put("last", after.reference());
            });
    where.append(" order by dueAt, key.reference");
    return OrderEntity.<OrderEntity>find(where.toString(), values).page(0, query.limit()).list();
  }
}
