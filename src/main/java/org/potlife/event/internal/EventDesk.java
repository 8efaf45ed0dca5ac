package org.potlife.event.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.internal.SettlementBody.How;
import org.potlife.platform.problem.ProblemException;
import org.potlife.shop.Shops;

/** Where a person looks through the log and settles what is parked. */
@ApplicationScoped
class EventDesk {

  private final EntityManager entities;
  private final RecordedEvents log;
  private final EventIntake intake;
  private final Shops shops;
  private final Clock clock;

  @Inject
  EventDesk(
      EntityManager entities, RecordedEvents log, EventIntake intake, Shops shops, Clock clock) {
    this.entities = entities;
    this.log = log;
    this.intake = intake;
    this.shops = shops;
    this.clock = clock;
  }

  /**
   * Events in the order of their recording.
   *
   * @param state only those, or all
   * @param after number of the last one known; 0 to begin
   * @throws ProblemException 404 without such a plant
   */
  @Transactional
  LogEntry.Page list(String plant, Optional<LogState> state, long after, int limit) {
    ZoneId zone = shops.getShop(plant).shop().timeZone();
    List<ShopEventEntity> rows =
        entities
            .createQuery(
                "select e from ShopEventEntity e where e.plant = :plant and e.seq > :after"
                    + state.map(wanted -> " and " + wanted.condition()).orElse("")
                    + " order by e.seq",
                ShopEventEntity.class)
            .setParameter("plant", plant)
            .setParameter("after", after)
            .setMaxResults(limit + 1)
            .getResultList();
    boolean more = rows.size() > limit;
    List<ShopEventEntity> page = more ? rows.subList(0, limit) : rows;
    return new LogEntry.Page(
        entries(page, zone), more ? String.valueOf(page.get(limit - 1).seq) : null);
  }

  /**
   * Applies a parked event again, or dismisses it, and keeps who decided so.
   *
   * @throws ProblemException 404 when the plant has no such event, 409 when it is not parked
   */
  @Transactional
  LogEntry settle(String plant, long seq, SettlementBody asked) {
    ZoneId zone =
        shops
            .lockShop(plant)
            .orElseThrow(() -> ProblemException.notFound("There is no such plant."))
            .shop()
            .timeZone();
    ShopEventEntity row =
        ShopEventEntity.<ShopEventEntity>find("plant = ?1 and seq = ?2", plant, seq)
            .firstResultOptional()
            .orElseThrow(() -> ProblemException.notFound("The plant has no event " + seq + "."));
    if (row.state() != LogState.PARKED) {
      throw ProblemException.conflict(
          "Only a parked event is settled; this one is " + row.state().word() + ".");
    }
    EventSettlementEntity decided = new EventSettlementEntity();
    decided.plant = plant;
    decided.seq = seq;
    decided.how = asked.how().word();
    decided.person = asked.by();
    decided.note = asked.note();
    decided.at = clock.instant();
    decided.cause = row.parked;
    if (asked.how() == How.DISMISS) {
      row.dismissed = true;
    } else {
      applyAgain(row);
    }
    decided.outcome = row.state().word();
    decided.persist();
    return entries(List.of(row), zone).get(0);
  }

  private void applyAgain(ShopEventEntity row) {
    Verdict verdict = intake.applyAgain(log.event(row));
    row.parked = verdict.contradiction();
    if (verdict.movesPlan()) {
      shops.moveDataStamp(row.plant);
    }
  }

  private List<LogEntry> entries(List<ShopEventEntity> rows, ZoneId zone) {
    Map<Long, List<EventSettlementEntity>> decided =
        EventSettlementEntity.of(rows.stream().map(row -> row.seq).toList());
    return rows.stream()
        .map(
            row ->
                LogEntry.of(
                    row, log.event(row).data(), decided.getOrDefault(row.seq, List.of()), zone))
        .toList();
  }
}
