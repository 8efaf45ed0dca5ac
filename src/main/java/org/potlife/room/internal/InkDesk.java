package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.Optional;
import org.potlife.event.EventEffect.Verdict;
import org.potlife.event.ShopEvent;
import org.potlife.ink.InkLedger;
import org.potlife.ink.InkSystem;
import org.potlife.room.KnownBatches;
import org.potlife.sheet.PlanSheet.BatchLine;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Where what is told of batches and containers is written into the book. */
@ApplicationScoped
class InkDesk {

  private final EntityManager entities;
  private final KnownBatches batches;
  private final Shops shops;

  @Inject
  InkDesk(EntityManager entities, KnownBatches batches, Shops shops) {
    this.entities = entities;
    this.batches = batches;
    this.shops = shops;
  }

  /** Whether the plant has this ink and stirs an agent into it. */
  boolean takesAgent(Shop shop, String ink) {
    return shop.findInk(ink)
        .flatMap(found -> shop.findInkSystem(found.system()))
        .filter(InkSystem::activated)
        .isPresent();
  }

  /** What is done to a container, unless it refuses. */
  interface Booking {
    Verdict book(InkContainerEntity container);
  }

  /** The container of this name, if it is in the book. */
  Optional<InkContainerEntity> find(String plant, String name) {
    return entities
        .createQuery(
            "select c from InkContainerEntity c where c.plant = :plant and c.name = :name",
            InkContainerEntity.class)
        .setParameter("plant", plant)
        .setParameter("name", name)
        .getResultStream()
        .findFirst();
  }

  /** The batch of this id on the plan in force. */
  Optional<BatchLine> findPlanned(String plant, String batch) {
    return batches.findBatch(plant, batch).filter(line -> !line.fromStock());
  }

  /**
   * Books on a batch or container that serves. One that is only on the plan comes into the book;
   * one that nobody knows, or that is gone, is a contradiction. So is a booking of more than is
   * left.
   */
  Verdict book(ShopEvent event, String name, Booking booking) {
    Optional<InkContainerEntity> known = find(event.plant(), name);
    if (known.isEmpty()) {
      Optional<BatchLine> planned = findPlanned(event.plant(), name);
      if (planned.isEmpty()) {
        return Verdict.parked(
            "Neither the plan in force nor the ink room's book has a batch " + name + ".");
      }
      return attempt(opened(event, planned.get()), booking);
    }
    if (known.get().goneAt != null) {
      Shop shop = shops.getShop(event.plant()).shop();
      return Verdict.parked(
          "%s is gone since %s.".formatted(name, WallTimes.of(shop, known.get().goneAt)));
    }
    return attempt(known.get(), booking);
  }

  private Verdict attempt(InkContainerEntity container, Booking booking) {
    Verdict verdict;
    try {
      verdict = booking.book(container);
    } catch (IllegalArgumentException e) {
      return Verdict.parked(
          "%s: %s. By the book %d g are left; tell a count if that is wrong."
              .formatted(container.name, e.getMessage(), container.grams().leftG()));
    }
    if (verdict.contradiction() == null && container.id == null) {
      entities.persist(container);
    }
    return verdict;
  }

  private static InkContainerEntity opened(ShopEvent event, BatchLine line) {
    InkContainerEntity container = new InkContainerEntity();
    container.plant = event.plant();
    container.name = line.id();
    container.ink = line.ink();
    container.since = event.time();
    container.book(InkLedger.planned(line.massG()));
    return container;
  }

  /** Puts a container on the shelf; a name that is in the book already is a contradiction. */
  Verdict stock(ShopEvent event, String name, String ink, int massG, boolean light, String origin) {
    if (find(event.plant(), name).isPresent() || findPlanned(event.plant(), name).isPresent()) {
      return Verdict.parked(
          "The name " + name + " is given already; tell a count, or give the container another.");
    }
    InkContainerEntity container = new InkContainerEntity();
    container.plant = event.plant();
    container.name = name;
    container.ink = ink;
    container.stock = true;
    container.lightOnly = light;
    container.origin = origin;
    container.since = event.time();
    container.book(InkLedger.stocked(massG));
    entities.persist(container);
    return Verdict.noted();
  }

  /** Weighing in was not told: it must have been, before anything else. */
  void mixedAtLatest(InkContainerEntity container, Instant at) {
    if (container.mixedAt == null && !container.stock) {
      container.mixedAt = at;
      container.book(container.grams().mixed(container.plannedG));
    }
  }

  /** Who did what. */
  void mark(
      ShopEvent event,
      String container,
      String mark,
      String person,
      Integer massG,
      String run,
      String remark) {
    InkMarkEntity row = new InkMarkEntity();
    row.plant = event.plant();
    row.container = container;
    row.mark = mark;
    row.at = event.time();
    row.person = person;
    row.massG = massG;
    row.run = run;
    row.remark = remark;
    entities.persist(row);
  }

  /** Whether the plan in force still counts on the batch after this moment. */
  boolean isWantedAfter(String plant, String batch, Instant at) {
    return batches
        .findBatch(plant, batch)
        .map(line -> line.uses().stream().anyMatch(use -> use.to().toInstant().isAfter(at)))
        .orElse(false);
  }
}
