package org.potlife.event.internal;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A row of the table event_settlement: what a person decided about a parked event. */
@Entity
@Table(name = "event_settlement")
public class EventSettlementEntity extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  public String plant;

  public long seq;

  public String how;

  public String person;

  public String note;

  public Instant at;

  /** What the event was parked for. */
  public String cause;

  public String outcome;

  /** What was decided about these events, each in order. */
  static Map<Long, List<EventSettlementEntity>> of(Collection<Long> seqs) {
    return EventSettlementEntity.<EventSettlementEntity>list("seq in ?1 order by id", seqs).stream()
        .collect(Collectors.groupingBy(decided -> decided.seq));
  }
}
