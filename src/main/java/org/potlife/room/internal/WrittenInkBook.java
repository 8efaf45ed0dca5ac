package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.potlife.ink.InkReport;
import org.potlife.ink.LearnedGrams;
import org.potlife.ink.MarkedBatch;
import org.potlife.ink.StockInk;
import org.potlife.room.InkBook;
import org.potlife.room.InkContainer;
import org.potlife.shop.Recipes;

/** The ink room's book in the database. */
@ApplicationScoped
class WrittenInkBook implements InkBook {

  /** Longer than any pot life and any plan that may still name a batch. */
  private static final Duration BATCHES_KEPT = Duration.ofDays(14);

  private final EntityManager entities;
  private final InkDesk desk;
  private final InkLessons lessons;
  private final Recipes recipes;

  @Inject
  WrittenInkBook(EntityManager entities, InkDesk desk, InkLessons lessons, Recipes recipes) {
    this.entities = entities;
    this.desk = desk;
    this.lessons = lessons;
    this.recipes = recipes;
  }

  @Override
  @Transactional
  public Optional<InkContainer> find(String plant, String container) {
    return desk.find(plant, container).map(this::container);
  }

  @Override
  @Transactional
  public List<InkContainer> listBatches(String plant, Instant since) {
    return batches(plant, since).stream().map(this::container).toList();
  }

  @Override
  @Transactional
  public List<InkContainer> listStock(String plant) {
    return stock(plant).stream().map(this::container).toList();
  }

  @Override
  @Transactional
  public List<LearnedGrams> listLearned(String plant) {
    return lessons.rows(plant).stream().map(InkLearnedEntity::learned).toList();
  }

  @Override
  @Transactional
  public InkReport reportAt(String plant, Instant now) {
    return new InkReport(
        batches(plant, now.minus(BATCHES_KEPT)).stream()
            .filter(row -> row.mixedAt != null)
            .map(
                row ->
                    new MarkedBatch(
                        row.name, utc(row.activatedAt), row.goneAt != null, row.grams().leftG()))
            .toList(),
        stock(plant).stream()
            .filter(row -> !row.since.isAfter(now))
            .map(
                row ->
                    new StockInk(
                        row.name,
                        row.ink,
                        row.grams().leftG(),
                        utc(row.since),
                        row.lightOnly,
                        row.origin))
            .toList(),
        listLearned(plant),
        recipes.inForce(plant));
  }

  private List<InkContainerEntity> batches(String plant, Instant since) {
    return entities
        .createQuery(
            "select c from InkContainerEntity c where c.plant = :plant and c.stock = false"
                + " and c.since >= :since order by c.since desc, c.id desc",
            InkContainerEntity.class)
        .setParameter("plant", plant)
        .setParameter("since", since)
        .getResultList();
  }

  private List<InkContainerEntity> stock(String plant) {
    return entities
        .createQuery(
            "select c from InkContainerEntity c where c.plant = :plant and c.stock = true"
                + " and c.goneAt is null order by c.since, c.id",
            InkContainerEntity.class)
        .setParameter("plant", plant)
        .getResultStream()
        .filter(row -> row.grams().leftG() > 0)
        .toList();
  }

  private InkContainer container(InkContainerEntity row) {
    List<InkContainer.Mark> marks =
        entities
            .createQuery(
                "select m from InkMarkEntity m where m.plant = :plant and m.container = :name"
                    + " order by m.at, m.id",
                InkMarkEntity.class)
            .setParameter("plant", row.plant)
            .setParameter("name", row.name)
            .getResultStream()
            .map(InkMarkEntity::mark)
            .toList();
    return new InkContainer(
        row.name,
        row.ink,
        row.stock,
        row.lightOnly,
        row.origin,
        row.since,
        row.mixedAt,
        row.activatedAt,
        row.useBy,
        row.goneAt,
        row.grams(),
        marks);
  }

  private static OffsetDateTime utc(Instant time) {
    return time == null ? null : time.atOffset(ZoneOffset.UTC);
  }
}
