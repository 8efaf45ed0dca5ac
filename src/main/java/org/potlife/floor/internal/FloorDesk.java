package org.potlife.floor.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.floor.KnownRuns;
import org.potlife.floor.RunTally;
import org.potlife.floor.RunTally.Kind;
import org.potlife.sheet.PlanSheet.RunLine;

/** Where what is told of runs is written down. */
@ApplicationScoped
class FloorDesk {

  /** So far from the plan, and less is how people tell the time: no plan is stale by it. */
  private static final Duration NO_NEWS = Duration.ofMinutes(5);

  private final EntityManager entities;
  private final KnownRuns known;
  private final StartedOrders orders;
  private final ToldRuns runs;
  private final ObjectMapper mapper;

  @Inject
  FloorDesk(
      EntityManager entities,
      KnownRuns known,
      StartedOrders orders,
      ToldRuns runs,
      ObjectMapper mapper) {
    this.runs = runs;
    this.entities = entities;
    this.known = known;
    this.orders = orders;
    this.mapper = mapper;
  }

  /** What is to be written. */
  record Entry(Kind kind, String run, Integer good, Integer spoiled, String cause, String person) {}

  /**
   * Writes a mark of a run of the plan in force, or of an earlier one of which something was told.
   * What is said to have happened after the end of a run contradicts it, save that pieces were
   * found spoiled.
   */
  Verdict book(ShopEvent event, Entry entry) {
    Optional<FloorRunEntity> found = find(event.plant(), entry.run());
    Optional<RunLine> planned =
        found.map(runs::planned).or(() -> known.findRun(event.plant(), entry.run()));
    if (planned.isEmpty()) {
      return Verdict.parked(
          "Neither the plan in force has a run %s, nor was one told of before."
              .formatted(entry.run()));
    }
    Optional<RunTally> before = tally(event.plant(), entry.run());
    Optional<Instant> ended = before.map(RunTally::ended);
    if (ended.isPresent() && !event.time().isBefore(ended.get()) && entry.kind() != Kind.SPOILED) {
      return Verdict.parked(
          "%s is ended since %s; tell run.spoiled for what was found later."
              .formatted(entry.run(), ended.get()));
    }
    if (entry.kind() == Kind.SPOILED && before.map(RunTally::counted).isEmpty()) {
      return Verdict.parked(
          entry.run() + " has no count yet; tell run.counted with good and spoiled pieces.");
    }
    if (ended.isEmpty() && !orders.isOpen(event.plant(), planned.get().order())) {
      return Verdict.parked(
          "Order %s is not open; place it anew if it is wanted.".formatted(planned.get().order()));
    }
    if (found.isEmpty()) {
      entities.persist(opened(event.plant(), planned.get()));
    }
    write(event, entry);
    entities.flush();
    orders.follow(event.plant(), planned.get().order());
    Optional<RunLine> inForce = known.findRun(event.plant(), entry.run());
    RunTally after = tally(event.plant(), entry.run()).orElseThrow();
    return Verdict.movesPlan(isNews(entry, inForce.orElse(planned.get()), after));
  }

  private boolean isNews(Entry entry, RunLine now, RunTally after) {
    return switch (entry.kind()) {
      case STARTED -> isOff(after.started(), now.setUpStart().toInstant());
      case APPROVED -> isOff(after.approved(), now.printStart().toInstant());
      case COUNTED -> isCountOff(now, after);
      case SPOILED -> true;
      case ENDED ->
          isOff(after.ended(), now.printEnd().toInstant())
              || after.good() + after.spoiled() < now.quantity();
    };
  }

  private static boolean isOff(Instant real, Instant planned) {
    return real == null || Duration.between(real, planned).abs().compareTo(NO_NEWS) > 0;
  }

  /** Whether the pieces are by more than five minutes of printing other than planned by then. */
  private static boolean isCountOff(RunLine line, RunTally tally) {
    if (line.ratePerHour() <= 0) {
      return true;
    }
    double planned = line.trialPieces();
    for (var rate : line.rates()) {
      Instant from = rate.from().toInstant();
      Instant to = rate.to().toInstant();
      Instant until = tally.counted().isBefore(to) ? tally.counted() : to;
      if (until.isAfter(from)) {
        planned += Duration.between(from, until).toSeconds() * rate.ratePerHour() / 3600.0;
      }
    }
    double minutes = Math.abs(planned - tally.good() - tally.spoiled()) * 60 / line.ratePerHour();
    return minutes > NO_NEWS.toMinutes();
  }

  private void write(ShopEvent event, Entry entry) {
    FloorMarkEntity row = new FloorMarkEntity();
    row.plant = event.plant();
    row.run = entry.run();
    row.mark = entry.kind().name().toLowerCase(Locale.ROOT);
    row.at = event.time();
    row.good = entry.good();
    row.spoiled = entry.spoiled();
    row.cause = entry.cause();
    row.person = entry.person();
    entities.persist(row);
  }

  private FloorRunEntity opened(String plant, RunLine line) {
    FloorRunEntity row = new FloorRunEntity();
    row.plant = plant;
    row.run = line.id();
    row.order = line.order();
    row.design = line.design();
    row.position = line.position();
    row.lot = line.lot();
    row.press = line.press();
    try {
      row.planned = mapper.writeValueAsString(line);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
    return row;
  }

  private Optional<FloorRunEntity> find(String plant, String run) {
    return entities
        .createQuery(
            "select r from FloorRunEntity r where r.plant = :plant and r.run = :run",
            FloorRunEntity.class)
        .setParameter("plant", plant)
        .setParameter("run", run)
        .getResultStream()
        .findFirst();
  }

  private Optional<RunTally> tally(String plant, String run) {
    List<RunTally.Mark> marks =
        entities
            .createQuery(
                "select m from FloorMarkEntity m where m.plant = :plant and m.run = :run"
                    + " order by m.at, m.id",
                FloorMarkEntity.class)
            .setParameter("plant", plant)
            .setParameter("run", run)
            .getResultStream()
            .map(FloorDesk::mark)
            .toList();
    return RunTally.of(marks);
  }

  static RunTally.Mark mark(FloorMarkEntity row) {
    return new RunTally.Mark(
        Kind.valueOf(row.mark.toUpperCase(Locale.ROOT)),
        row.at,
        row.good == null ? 0 : row.good,
        row.spoiled == null ? 0 : row.spoiled);
  }
}
