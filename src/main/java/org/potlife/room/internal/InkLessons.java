package org.potlife.room.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.potlife.event.ShopEvent;
import org.potlife.ink.InkPerPiece;
import org.potlife.ink.LearnedGrams;
import org.potlife.order.Colour;
import org.potlife.order.GramsPerPiece;
import org.potlife.order.Print;
import org.potlife.room.KnownBatches;
import org.potlife.shop.Shop;
import org.potlife.shop.Shops;

/** Learns grams per piece from what closed runs took. */
@ApplicationScoped
class InkLessons {

  private final EntityManager entities;
  private final KnownBatches batches;
  private final Shops shops;

  @Inject
  InkLessons(EntityManager entities, KnownBatches batches, Shops shops) {
    this.entities = entities;
    this.batches = batches;
    this.shops = shops;
  }

  /** All rows of a plant. */
  List<InkLearnedEntity> rows(String plant) {
    return entities
        .createQuery(
            "select l from InkLearnedEntity l where l.plant = :plant"
                + " order by l.design, l.position, l.ink, l.id",
            InkLearnedEntity.class)
        .setParameter("plant", plant)
        .getResultList();
  }

  /**
   * One close-out. Where several stations carry the ink, each is corrected in the same proportion:
   * one weighing cannot tell them apart. A run that the plan in force does not have teaches
   * nothing.
   *
   * @param massG ink on the garments, handling loss included, g
   */
  void learn(ShopEvent event, String run, String ink, int massG, int pieces) {
    Optional<Print> found = batches.findPrint(event.plant(), run);
    Shop shop = shops.getShop(event.plant()).shop();
    if (found.isEmpty() || shop.findInk(ink).isEmpty()) {
      return;
    }
    Print print = found.get();
    List<InkLearnedEntity> rows = rows(event.plant());
    GramsPerPiece reckoned =
        new GramsPerPiece(shop, rows.stream().map(InkLearnedEntity::learned).toList());
    // two stations may carry the same artwork on the same mesh: one lesson for both
    Map<InkPerPiece.Inputs, Double> grams = new LinkedHashMap<>();
    double sum = 0;
    for (Colour colour : print.colours()) {
      if (colour.ink().equals(ink)) {
        InkPerPiece perPiece = reckoned.of(print, colour);
        grams.put(perPiece.inputs(), perPiece.grams());
        sum += perPiece.grams();
      }
    }
    double observed = massG / (1 + shop.inkRoom().lossPercent() / 100) / pieces;
    if (sum > 0) {
      double ofReckoned = observed / sum;
      grams.forEach((inputs, each) -> learn(event, rows, print, ink, inputs, each * ofReckoned));
    }
  }

  private void learn(
      ShopEvent event,
      List<InkLearnedEntity> rows,
      Print print,
      String ink,
      InkPerPiece.Inputs inputs,
      double observedG) {
    Optional<InkLearnedEntity> known =
        rows.stream()
            .filter(row -> row.learned().isOf(print.design(), print.position(), ink, inputs))
            .findFirst();
    if (known.isPresent()) {
      known.get().learn(known.get().learned().next(observedG), event.time());
      return;
    }
    InkLearnedEntity row = new InkLearnedEntity();
    row.plant = event.plant();
    row.learn(
        LearnedGrams.first(print.design(), print.position(), ink, inputs, observedG), event.time());
    entities.persist(row);
  }
}
