package org.potlife.floor.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.floor.DayRun;
import org.potlife.floor.RunReport;
import org.potlife.floor.RunTally;
import org.potlife.sheet.PlanSheet.RunLine;

/** Reads back what was told of runs. */
@ApplicationScoped
class ToldRuns {

  private final EntityManager entities;
  private final ObjectMapper mapper;

  @Inject
  ToldRuns(EntityManager entities, ObjectMapper mapper) {
    this.entities = entities;
    this.mapper = mapper;
  }

  /** What was told of the runs of these orders and happened before a moment, by run. */
  List<RunReport> list(String plant, List<String> orders, Instant before) {
    if (orders.isEmpty()) {
      return List.of();
    }
    Map<String, List<RunTally.Mark>> marks = new HashMap<>();
    entities
        .createQuery(
            "select m from FloorMarkEntity m where m.plant = :plant and m.at < :before"
                + " and m.run in (select r.run from FloorRunEntity r where r.plant = :plant"
                + " and r.order in :orders) order by m.at, m.id",
            FloorMarkEntity.class)
        .setParameter("plant", plant)
        .setParameter("before", before)
        .setParameter("orders", orders)
        .getResultStream()
        .forEach(
            row ->
                marks.computeIfAbsent(row.run, run -> new ArrayList<>()).add(FloorDesk.mark(row)));
    return entities
        .createQuery(
            "select r from FloorRunEntity r where r.plant = :plant and r.order in :orders"
                + " order by r.run",
            FloorRunEntity.class)
        .setParameter("plant", plant)
        .setParameter("orders", orders)
        .getResultStream()
        .flatMap(row -> report(row, marks.getOrDefault(row.run, List.of())).stream())
        .toList();
  }

  /** Runs of which something was told that happened in a time, by their beginning. */
  List<DayRun> listBetween(String plant, Instant from, Instant to, Instant before) {
    List<FloorRunEntity> rows =
        entities
            .createQuery(
                "select r from FloorRunEntity r where r.plant = :plant and r.run in (select m.run"
                    + " from FloorMarkEntity m where m.plant = :plant and m.at >= :from"
                    + " and m.at < :to)",
                FloorRunEntity.class)
            .setParameter("plant", plant)
            .setParameter("from", from)
            .setParameter("to", to)
            .getResultList();
    Map<String, RunReport> told = new HashMap<>();
    list(plant, rows.stream().map(row -> row.order).distinct().toList(), before)
        .forEach(report -> told.put(report.run(), report));
    return rows.stream()
        .filter(row -> told.containsKey(row.run))
        .map(row -> new DayRun(told.get(row.run), planned(row)))
        .sorted(Comparator.comparing((DayRun run) -> run.told().firstToldAt().toInstant()))
        .toList();
  }

  private Optional<RunReport> report(FloorRunEntity row, List<RunTally.Mark> marks) {
    return RunTally.of(marks)
        .map(
            tally ->
                new RunReport(
                    row.run,
                    row.order,
                    row.design,
                    row.position,
                    row.lot,
                    row.press,
                    planned(row).quantity(),
                    utc(tally.first()),
                    utc(tally.started()),
                    utc(tally.approved()),
                    utc(tally.counted()),
                    tally.good(),
                    tally.spoiled(),
                    utc(tally.ended())));
  }

  /** The line that the run had on the plan when the first thing was told of it. */
  RunLine planned(FloorRunEntity row) {
    try {
      return mapper.readValue(row.planned, RunLine.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Run " + row.run + " is unreadable", e);
    }
  }

  private static OffsetDateTime utc(Instant time) {
    return time == null ? null : time.atOffset(ZoneOffset.UTC);
  }
}
