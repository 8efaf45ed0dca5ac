package org.potlife.event.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.potlife.event.EventLog;
import org.potlife.event.ShopEvent;

/** The log in the table shop_event. */
@ApplicationScoped
class RecordedEvents implements EventLog {

  private final EntityManager entities;
  private final ObjectMapper mapper;

  @Inject
  RecordedEvents(EntityManager entities, ObjectMapper mapper) {
    this.entities = entities;
    this.mapper = mapper;
  }

  @Override
  @Transactional
  public List<ShopEvent> list(String plant, Set<String> types, Instant since) {
    return entities
        .createQuery(
            "select e from ShopEventEntity e where e.plant = :plant and e.type in :types"
                + " and e.time >= :since and e.parked is null order by e.time, e.seq",
            ShopEventEntity.class)
        .setParameter("plant", plant)
        .setParameter("types", types.stream().map(type -> ShopEvent.PREFIX + type).toList())
        .setParameter("since", since)
        .getResultStream()
        .map(this::event)
        .toList();
  }

  @Override
  @Transactional
  @SuppressWarnings("unchecked")
  public List<ShopEvent> latestBefore(String plant, String type, String field, Instant before) {
    List<ShopEventEntity> rows =
        entities
            .createNativeQuery(
                "select distinct on (e.named) e.* from (select s.*, s.data ->> :field as named"
                    + " from shop_event s where s.plant = :plant and s.type = :type"
                    + " and s.time < :before and s.parked is null) e"
                    + " order by e.named, e.time desc, e.seq desc",
                ShopEventEntity.class)
            .setParameter("field", field)
            .setParameter("plant", plant)
            .setParameter("type", ShopEvent.PREFIX + type)
            .setParameter("before", before)
            .getResultList();
    return rows.stream().map(this::event).toList();
  }

  /** A row as an event. */
  ShopEvent event(ShopEventEntity row) {
    try {
      return new ShopEvent(
          row.plant,
          row.source,
          row.eventId,
          row.type.substring(ShopEvent.PREFIX.length()),
          row.time,
          mapper.readTree(row.data));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Event " + row.seq + " is unreadable", e);
    }
  }
}
